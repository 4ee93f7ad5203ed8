/** The audit as a use case: a folder of bids and a list of actuals in, an audited workbook out. */
package org.wetmil.jobs.audit;
