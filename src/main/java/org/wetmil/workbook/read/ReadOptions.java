package org.wetmil.workbook.read;

import java.util.List;
import java.util.Map;
import org.wetmil.catalogue.StatedRow;
import org.wetmil.catalogue.Tables;

/**
 * How a workbook is read.
 *
 * @param mostRowsComputed rows up to which formulas without a stored result are computed here
 * @param refresh whether numbers typed over formulas of an earlier fill give way to the formulas
 * @param under rows of another workbook's tables, over which those of the workbook itself are laid
 */
public record ReadOptions(
    int mostRowsComputed, boolean refresh, Map<Tables, List<StatedRow>> under) {
  /** The spreadsheet library needs about 100 KB for each row that it opens as a whole. */
  public static final ReadOptions USUAL = new ReadOptions(20_000);

  /** Keeps what was typed over formulas, and lays no other tables under. */
  public ReadOptions(int mostRowsComputed) {
    this(mostRowsComputed, false, Map.of());
  }

  /** The same, with or without keeping what was typed over formulas. */
  public ReadOptions refreshing(boolean wanted) {
    return new ReadOptions(mostRowsComputed, wanted, under);
  }

  /** The same, over the tables of another workbook. */
  public ReadOptions over(Map<Tables, List<StatedRow>> tables) {
    return new ReadOptions(mostRowsComputed, refresh, tables);
  }
}
