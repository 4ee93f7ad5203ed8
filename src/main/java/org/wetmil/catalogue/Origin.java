package org.wetmil.catalogue;

import org.wetmil.quantity.Unit;

/** Where a figure was stated. */
public sealed interface Origin {

  /** What Basis prints under "where from". */
  String text();

  /** One of the tables that come with the program. */
  record BuiltIn() implements Origin {
    @Override
    public String text() {
      return "built in";
    }
  }

  /** Taken from the class of the coating. */
  record FromClass(String name) implements Origin {
    @Override
    public String text() {
      return "class " + name;
    }
  }

  /** Typed by the estimator over a value on the Basis sheet of an earlier fill. */
  record OnBasis() implements Origin {
    public static final String TEXT = "Basis (yours)";

    @Override
    public String text() {
      return TEXT;
    }
  }

  /** Whether the estimator stated it. */
  default boolean isYours() {
    return this instanceof Cell || this instanceof OnBasis;
  }

  /**
   * A cell of the estimator's workbook.
   *
   * @param sheet the sheet's name
   * @param address the cell, as in {@code C4}
   * @param unit the unit the cell is written in
   * @param cellNumber the true number the cell holds; NaN when it holds text
   */
  record Cell(String sheet, String address, Unit unit, double cellNumber) implements Origin {
    @Override
    public String text() {
      return sheet + "!" + address;
    }

    /** The name of a sheet of another workbook; no sheet's own name can hold a bracket. */
    public static String elsewhere(String file, String sheet) {
      return "[" + file + "]" + sheet;
    }

    /** Whether the cell is in another workbook, so that no formula may point at it. */
    public boolean isElsewhere() {
      return sheet.startsWith("[");
    }
  }
}
