package org.wetmil.workbook.read;

import java.util.List;
import java.util.Map;
import org.wetmil.catalogue.StatedRow;
import org.wetmil.catalogue.Tables;

/**
 * How a workbook is read.
 *
 * @param mostRowsComputed rows up to which formulas without a stored result are computed here
 * @param under rows of another workbook's tables, over which those of the workbook itself are laid
 */
public record ReadOptions(int mostRowsComputed, Map<Tables, List<StatedRow>> under) {
  /** The spreadsheet library needs about 100 KB for each row that it opens as a whole. */
  public static final ReadOptions USUAL = new ReadOptions(20_000, Map.of());

  public ReadOptions(int mostRowsComputed) {
    this(mostRowsComputed, Map.of());
  }

  /** The usual way, over the tables of another workbook. */
  public static ReadOptions over(Map<Tables, List<StatedRow>> under) {
    return new ReadOptions(USUAL.mostRowsComputed(), under);
  }
}
