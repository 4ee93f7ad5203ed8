/** The audited workbook: a page, charts and lists. */
package org.wetmil.workbook.audit;
