package org.wetmil.workbook.stream;

/**
 * A cell as it is stored, before anybody makes sense of it.
 *
 * @param row counted from 0
 * @param column counted from 0
 * @param kind of the stored value; BLANK with a formula means that no result was stored
 * @param text the stored value: a number as it was written, the characters of a text without
 *     phonetic hints, "1" or "0" of a boolean, the code of an error such as #N/A, "" when blank
 * @param formula without its equals sign, "" for a cell that shares another cell's formula, null
 *     for a cell without a formula
 * @param style index of the cell's format, see {@link NumberFormats}
 * @param shared what cells that share one formula have in common; null when it is not shared
 */
public record RawCell(
    int row, int column, CellKind kind, String text, String formula, int style, String shared) {

  /** A cell whose formula is its own. */
  public RawCell(int row, int column, CellKind kind, String text, String formula, int style) {
    this(row, column, kind, text, formula, style, null);
  }

  /** Whether nothing is seen there: no formula, and no text but spaces of any kind. */
  public boolean isEmpty() {
    boolean blank =
        kind == CellKind.BLANK || (kind == CellKind.TEXT && text.replace('\u00a0', ' ').isBlank());
    return blank && formula == null;
  }

  /** The same with a formula of its own. */
  public RawCell with(String own) {
    return new RawCell(row, column, kind, text, own, style);
  }
}
