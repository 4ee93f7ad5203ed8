/**
 * The only room with the spreadsheet library: finds headings, reads cells, writes columns and
 * sheets. No sheet, row or cell is handed out of it to the rooms below.
 */
package org.wetmil.workbook;
