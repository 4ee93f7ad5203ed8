package org.wetmil.workbook.look;

/**
 * Heights of rows with wrapped text, estimated from its length: not every program fits rows to
 * their text by itself.
 */
public final class Heights {
  /** A line of the usual font of 11 points. */
  private static final double LINE_PT = 15;

  /** A column is measured in digits, which are wider than letters; words leave the end free. */
  private static final double LETTERS_PER_DIGIT = 1.2;

  /** Headings of two lines. */
  public static final float HEADING_PT = 32;

  /** The most that a row can be high. */
  private static final double MOST_PT = 409;

  private Heights() {}

  /** Lines that a text takes in a column so many characters wide. */
  public static int lines(String text, int width) {
    int lines = 0;
    for (String part : text.split("\n", -1)) {
      lines += Math.max(1, (int) Math.ceil(part.length() / (width * LETTERS_PER_DIGIT)));
    }
    return lines;
  }

  /**
   * The height of a text in a font of so many points.
   *
   * @param width of the column in characters of the usual font of 11 points
   */
  public static double of(String text, int width, int fontPt) {
    int fitting = Math.max(1, (int) (width * 11.0 / fontPt));
    return Math.min(MOST_PT, lines(text, fitting) * fontPt * LINE_PT / 11 + 3);
  }

  public static double points(int lines) {
    return Math.min(MOST_PT, lines * LINE_PT);
  }
}
