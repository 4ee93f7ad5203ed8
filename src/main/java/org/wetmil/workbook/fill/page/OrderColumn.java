package org.wetmil.workbook.fill.page;

import org.apache.poi.ss.util.CellReference;
import org.wetmil.workbook.stream.SheetReference;

/** The columns of the order, in order. */
public enum OrderColumn {
  PAINT("Paint", 20),
  COLOUR("Colour", 14),
  SHEEN("Sheen", 10),
  ON_LINES("On lines", 11),
  IN_HOSES("In hoses", 11),
  ALLOWANCE("Allowance", 11),
  NEED("Need", 11),
  SIZE("Container size", 11),
  UNIT("Unit", 7),
  COUNT("Containers", 12),
  VOLUME("Volume", 11),
  LEFT_OVER("Left over", 11),
  UNIT_PRICE("Unit price", 11),
  AMOUNT("Amount", 12),
  CURRENCY("Currency", 10),
  LINES("Lines", 8),
  KEY("Order key", 28);

  private final String heading;
  private final int width;

  OrderColumn(String heading, int width) {
    this.heading = heading;
    this.width = width;
  }

  String heading() {
    return heading;
  }

  int width() {
    return width;
  }

  /** Whether it is a volume in the unit of the job. */
  boolean isVolume() {
    return switch (this) {
      case ON_LINES, IN_HOSES, ALLOWANCE, NEED, VOLUME, LEFT_OVER -> true;
      default -> false;
    };
  }

  /** The column as formulas of other sheets write it. */
  String whole(String sheet) {
    return SheetReference.column(sheet, ordinal());
  }

  /** A cell of the column in the same row. */
  String in(int row) {
    return CellReference.convertNumToColString(ordinal()) + row;
  }
}
