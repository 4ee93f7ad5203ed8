/**
 * Headings as estimators write them: which column they name, in which unit, and where they stand.
 */
package org.wetmil.workbook.read.heading;
