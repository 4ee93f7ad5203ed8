/** The sheets that follow the estimator's, a class for each and for each block on one. */
package org.wetmil.workbook.fill.page;
