/** One cell under a known heading becomes a value, or is said to be none. */
package org.wetmil.workbook.read.cell;
