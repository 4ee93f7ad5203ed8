package org.wetmil.checks;

import org.wetmil.catalogue.Entry;
import org.wetmil.catalogue.Origin;
import org.wetmil.estimate.InputColumn;

/**
 * Where a finding points.
 *
 * @param sheet the sheet, or the ledger; empty when it is about the whole job
 * @param row the row of a bid line or the line of a ledger, from 1; 0 when it is about no line
 * @param column the input column of that line; null when it is about the line as a whole
 * @param address a cell of a table sheet, as in C4; empty otherwise
 */
public record Spot(String sheet, int row, InputColumn column, String address) {
  /** About the whole job. */
  static final Spot JOB = new Spot("", 0, null, "");

  /** Where the estimator stated a figure of the tables; the job where it is not theirs. */
  static Spot of(Entry entry) {
    return entry.origin() instanceof Origin.Cell cell && !cell.isElsewhere()
        ? new Spot(cell.sheet(), 0, null, cell.address())
        : JOB;
  }

  /** A line of a ledger, by the file's name. */
  static Spot ofLedger(String file, long line) {
    return new Spot(file, Math.toIntExact(line), null, "");
  }

  /** About a sheet as a whole. */
  static Spot ofSheet(String sheet) {
    return new Spot(sheet, 0, null, "");
  }
}
