package org.wetmil.workbook.read;

/**
 * How a workbook is read.
 *
 * @param mostRowsComputed rows up to which formulas without a stored result are computed here
 */
public record ReadOptions(int mostRowsComputed) {
  /** The spreadsheet library needs about 100 KB for each row that it opens as a whole. */
  public static final ReadOptions USUAL = new ReadOptions(20_000);
}
