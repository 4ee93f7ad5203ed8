/** Sheets by which the bookkeeper names items and states settings. */
package org.wetmil.workbook.read.items;
