package org.wetmil.workbook.stream;

/** The name of a sheet as a formula or a person writes it before a cell. */
public final class SheetReference {
  private SheetReference() {}

  public static String quoted(String name) {
    return "'" + name.replace("'", "''") + "'";
  }

  /** A whole column, from 0, as formulas of any sheet write it. */
  public static String column(String sheet, int column) {
    String letters = CellAddress.letters(column);
    return quoted(sheet) + "!$" + letters + ":$" + letters;
  }

  /** The name itself; one without quotes as it is. */
  public static String unquoted(String written) {
    boolean quoted = written.length() > 2 && written.startsWith("'") && written.endsWith("'");
    return quoted ? written.substring(1, written.length() - 1).replace("''", "'") : written;
  }
}
