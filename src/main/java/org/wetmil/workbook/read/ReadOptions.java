package org.wetmil.workbook.read;

/**
 * How a workbook is read.
 *
 * @param mostRowsComputed rows up to which formulas without a stored result are computed here
 * @param refresh whether numbers typed over formulas of an earlier fill give way to the formulas
 */
public record ReadOptions(int mostRowsComputed, boolean refresh) {
  /** The spreadsheet library needs about 100 KB for each row that it opens as a whole. */
  public static final ReadOptions USUAL = new ReadOptions(20_000, false);

  /** Keeps what was typed over formulas. */
  public ReadOptions(int mostRowsComputed) {
    this(mostRowsComputed, false);
  }

  /** The same, with or without keeping what was typed over formulas. */
  public ReadOptions refreshing(boolean wanted) {
    return new ReadOptions(mostRowsComputed, wanted);
  }
}
