package org.wetmil.workbook.stream;

/**
 * An Excel table on a sheet.
 *
 * @param name the name within the file
 * @param displayName the name that formulas use
 * @param range including header and totals
 * @param headerRows 0 or 1
 * @param totalsRows 0 or 1
 */
public record TableRef(
    String name, String displayName, CellRange range, int headerRows, int totalsRows) {}
