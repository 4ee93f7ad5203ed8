package org.wetmil.workbook.read.earlier;

import java.util.List;

/** Headings on the Basis sheet, by which the next fill finds its lists again. */
public final class BasisWords {
  /** The list of fills. */
  public static final List<String> FILLS =
      List.of("Filled on", "Program", "Input", "SHA-256 of input");

  public static final String TABLE = "Table";
  public static final String ROW = "Row";
  public static final String FIGURE = "Figure";
  public static final String VALUE = "Value";
  public static final String UNIT = "Unit";
  public static final String WHERE_FROM = "Where from";

  /** The value as the fill wrote it, so that a changed one is seen. */
  public static final String AS_FILLED = "As filled";

  /** The list of figures. */
  public static final List<String> FIGURES =
      List.of(TABLE, ROW, FIGURE, VALUE, UNIT, "Kind", "Source", WHERE_FROM, "Meaning", AS_FILLED);

  private BasisWords() {}
}
