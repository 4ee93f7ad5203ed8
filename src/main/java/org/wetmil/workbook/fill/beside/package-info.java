/** What stands beside the estimator's own cells: filled columns, notes, marks, rules of colour. */
package org.wetmil.workbook.fill.beside;
