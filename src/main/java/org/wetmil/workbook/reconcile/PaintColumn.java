package org.wetmil.workbook.reconcile;

import java.util.Arrays;
import org.apache.poi.ss.util.CellReference;
import org.wetmil.ledger.LineKind;

/** The columns of paint on the page and on the lists of groups, in order after the names. */
enum PaintColumn {
  BID("Bid", null),
  OPENING("Opening stock", LineKind.OPENING_STOCK),
  BOUGHT("Bought", LineKind.PURCHASE),
  MOVED_IN("Moved in", LineKind.TRANSFER_IN),
  RETURNED("Returned", LineKind.RETURN),
  MOVED_OUT("Moved out", LineKind.TRANSFER_OUT),
  LEFT_OVER("Left over", LineKind.LEFT_OVER),
  WASTE("Waste", LineKind.WASTE),
  USED("Used", null),
  VARIANCE("Variance", null),
  SHARE("Variance (%)", null);

  private final String heading;
  private final LineKind kind;

  PaintColumn(String heading, LineKind kind) {
    this.heading = heading;
    this.kind = kind;
  }

  /** The heading with the unit of volume. */
  String heading(String unit) {
    return this == SHARE ? heading : heading + " (" + unit + ")";
  }

  /** The kind of ledger line that it sums; null for none. */
  LineKind kind() {
    return kind;
  }

  /** Its cell in a row whose paint begins at a column, as in K12. */
  String at(int firstColumn, int row) {
    return CellReference.convertNumToColString(firstColumn + ordinal()) + row;
  }

  /** Used = what went in less what came out again. */
  static String used(int firstColumn, int row) {
    StringBuilder formula = new StringBuilder();
    Arrays.stream(values())
        .filter(column -> column.kind != null)
        .forEach(
            column -> {
              String sign = column.kind.sign() < 0 ? "-" : formula.length() == 0 ? "" : "+";
              formula.append(sign).append(column.at(firstColumn, row));
            });
    return formula.toString();
  }

  static String variance(int firstColumn, int row) {
    return USED.at(firstColumn, row) + "-" + BID.at(firstColumn, row);
  }

  static String share(int firstColumn, int row) {
    return VARIANCE.at(firstColumn, row) + "/" + BID.at(firstColumn, row) + "*100";
  }
}
