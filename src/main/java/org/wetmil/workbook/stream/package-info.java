/** The cells of a workbook as a stream, row by row, as they are stored. */
package org.wetmil.workbook.stream;
