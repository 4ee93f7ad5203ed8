package org.wetmil.workbook.fill.page;

import org.wetmil.estimate.FilledColumn;
import org.wetmil.estimate.InputColumn;
import org.wetmil.quantity.UnitSystem;
import org.wetmil.workbook.stream.CellAddress;
import org.wetmil.workbook.stream.SheetReference;

/** The columns of the list of hours, in order; totals elsewhere find theirs by name. */
public enum HoursColumn {
  SHEET("Sheet", 12),
  FLOOR("Floor", 11, InputColumn.FLOOR),
  ROOM("Room", 20, InputColumn.ROOM),
  SURFACE("Surface", 20, InputColumn.SURFACE),
  COATING("Coating", 15, FilledColumn.COATING_USED),
  COLOUR("Colour", 12, InputColumn.COLOUR),
  SHEEN("Sheen", 9, InputColumn.SHEEN),
  COUNTED("Counted", 9, FilledColumn.COUNTED),
  AREA("Net area", 11, FilledColumn.NET_AREA),
  PAINT("Paint", 10, FilledColumn.PAINT),
  SPRAY("Spray", 9, FilledColumn.SPRAY),
  ROLL("Back-roll", 9, FilledColumn.ROLL),
  MASK("Masking", 9, FilledColumn.MASK),
  PREPARE("Preparation", 12, FilledColumn.PREPARE),
  LABOUR("Labour", 9, FilledColumn.LABOUR),
  ROOM_KEY("Room key", 24),
  ORDER_KEY("Order key", 28);

  /** Between the parts of a key; with it no key reads as a number or a date. */
  static final String PART = " · ";

  private final String heading;
  private final int width;
  private final InputColumn label;
  private final FilledColumn figure;

  HoursColumn(String heading, int width) {
    this(heading, width, null, null);
  }

  HoursColumn(String heading, int width, InputColumn label) {
    this(heading, width, label, null);
  }

  HoursColumn(String heading, int width, FilledColumn figure) {
    this(heading, width, null, figure);
  }

  HoursColumn(String heading, int width, InputColumn label, FilledColumn figure) {
    this.heading = heading;
    this.width = width;
    this.label = label;
    this.figure = figure;
  }

  String heading(UnitSystem system) {
    String symbol = figure == null ? "" : figure.quantity().unit(system).symbol();
    return symbol.isEmpty() ? heading : heading + " (" + symbol + ")";
  }

  int width() {
    return width;
  }

  /** The column of words that it takes over; null when it takes over none. */
  InputColumn label() {
    return label;
  }

  /** The filled column that it takes over; null when it takes over none. */
  FilledColumn figure() {
    return figure;
  }

  /** Whether it holds numbers to be added up. */
  boolean isAmount() {
    return figure != null && this != COATING && this != COUNTED;
  }

  /** The column as formulas of other sheets write it. */
  String whole(String sheet) {
    return SheetReference.column(sheet, ordinal());
  }

  /** A cell of the column in the same row. */
  String in(int row) {
    return CellAddress.letters(ordinal()) + row;
  }

  static String key(String... parts) {
    return String.join(PART, parts);
  }

  /** The formula of a key over cells of the same row. */
  static String keyFormula(int row, HoursColumn... columns) {
    StringBuilder out = new StringBuilder();
    for (HoursColumn column : columns) {
      out.append(out.isEmpty() ? "" : "&\"" + PART + "\"&").append(column.in(row));
    }
    return out.toString();
  }
}
