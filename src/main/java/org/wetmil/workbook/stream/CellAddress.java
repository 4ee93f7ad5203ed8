package org.wetmil.workbook.stream;

import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The place of a cell, both counted from 0. Bounds are those of the file format: 1,048,576 rows and
 * 16,384 columns (A to XFD).
 */
public record CellAddress(int row, int column) {
  public static final int MAX_ROWS = 1 << 20;
  public static final int MAX_COLUMNS = 1 << 14;
  private static final int LETTERS = 26;

  /** The letters of the columns that bids have, since they are asked for with every cell. */
  private static final String[] USUAL =
      IntStream.range(0, LETTERS * LETTERS).mapToObj(CellAddress::spelt).toArray(String[]::new);

  /** Reads an address such as "B12"; empty when it is none or out of bounds. */
  public static Optional<CellAddress> find(String text) {
    int column = 0;
    int i = 0;
    for (; i < text.length() && letter(text.charAt(i)) > 0; i++) {
      column = column * LETTERS + letter(text.charAt(i));
      if (column > MAX_COLUMNS) {
        return Optional.empty();
      }
    }
    int row = 0;
    int digits = i;
    for (; i < text.length() && text.charAt(i) >= '0' && text.charAt(i) <= '9'; i++) {
      row = row * 10 + (text.charAt(i) - '0');
      if (row > MAX_ROWS) {
        return Optional.empty();
      }
    }
    if (column == 0 || row == 0 || i < text.length() || i == digits) {
      return Optional.empty();
    }
    return Optional.of(new CellAddress(row - 1, column - 1));
  }

  /** The letters of a column. */
  public static String letters(int column) {
    return column < USUAL.length ? USUAL[column] : spelt(column);
  }

  private static String spelt(int column) {
    StringBuilder out = new StringBuilder();
    for (int rest = column + 1; rest > 0; rest = (rest - 1) / LETTERS) {
      out.insert(0, (char) ('A' + (rest - 1) % LETTERS));
    }
    return out.toString();
  }

  /** As in a formula: "B12". */
  @Override
  public String toString() {
    return letters(column) + (row + 1);
  }

  private static int letter(char c) {
    if (c >= 'A' && c <= 'Z') {
      return c - 'A' + 1;
    }
    return c >= 'a' && c <= 'z' ? c - 'a' + 1 : 0;
  }
}
