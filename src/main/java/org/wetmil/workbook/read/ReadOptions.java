package org.wetmil.workbook.read;

import java.util.List;
import java.util.Map;
import org.wetmil.catalogue.StatedRow;
import org.wetmil.catalogue.Tables;
import org.wetmil.workbook.opc.Passwords;

/**
 * How a workbook is read.
 *
 * @param mostRowsComputed rows up to which formulas without a stored result are computed here
 * @param refresh whether numbers typed over formulas of an earlier fill give way to the formulas
 * @param under rows of another workbook's tables, over which those of the workbook itself are laid
 * @param passwords that may open the workbook
 */
public record ReadOptions(
    int mostRowsComputed,
    boolean refresh,
    Map<Tables, List<StatedRow>> under,
    Passwords passwords) {
  /** The spreadsheet library needs about 100 KB for each row that it opens as a whole. */
  public static final ReadOptions USUAL = new ReadOptions(20_000);

  /** Keeps what was typed over formulas, and lays no other tables under. */
  public ReadOptions(int mostRowsComputed) {
    this(mostRowsComputed, false, Map.of(), Passwords.NONE);
  }

  /** The same, with or without keeping what was typed over formulas. */
  public ReadOptions refreshing(boolean wanted) {
    return new ReadOptions(mostRowsComputed, wanted, under, passwords);
  }

  /** The same, over the tables of another workbook. */
  public ReadOptions over(Map<Tables, List<StatedRow>> tables) {
    return new ReadOptions(mostRowsComputed, refresh, tables, passwords);
  }

  /** The same for workbooks that these passwords may open. */
  public ReadOptions with(Passwords words) {
    return new ReadOptions(mostRowsComputed, refresh, under, words);
  }
}
