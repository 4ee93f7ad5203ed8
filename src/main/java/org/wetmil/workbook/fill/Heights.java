package org.wetmil.workbook.fill;

/**
 * Heights of rows with wrapped text, estimated from its length: not every program fits rows to
 * their text by itself.
 */
final class Heights {
  /** A line of the usual font of 11 points. */
  private static final double LINE_PT = 15;

  /** A column is measured in digits, which are wider than letters; words leave the end free. */
  private static final double LETTERS_PER_DIGIT = 1.1;

  /** The most that a row can be high. */
  private static final double MOST_PT = 409;

  private Heights() {}

  /** Lines that a text takes in a column so many characters wide. */
  static int lines(String text, int width) {
    int lines = 0;
    for (String part : text.split("\n", -1)) {
      lines += Math.max(1, (int) Math.ceil(part.length() / (width * LETTERS_PER_DIGIT)));
    }
    return lines;
  }

  static double points(int lines) {
    return Math.min(MOST_PT, lines * LINE_PT);
  }
}
