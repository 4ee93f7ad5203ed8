package org.wetmil.workbook.look;

import java.util.stream.IntStream;

/**
 * Heights of rows with wrapped text, estimated from its length: not every program fits rows to
 * their text by itself.
 */
public final class Heights {
  /** A line of the usual font of 11 points. */
  private static final double LINE_PT = 15;

  /** What the edges of a cell take of its width, in digits. */
  private static final double EDGES = 1;

  /** Chinese, Japanese and Korean, and what follows them, are as wide as two digits. */
  private static final char FIRST_OF_EASTERN = 0x2E80;

  /** Headings of two lines. */
  public static final float HEADING_PT = 32;

  /** The most that a row can be high. */
  private static final double MOST_PT = 409;

  private static final double[] ASCII =
      IntStream.range(0, 0x80).mapToDouble(c -> digits((char) c)).toArray();

  private Heights() {}

  /** Lines that a text takes in a column so many characters wide, broken between words. */
  public static int lines(String text, int width) {
    return lines(text, Math.max(1, width - EDGES));
  }

  private static int lines(String text, double fits) {
    int lines = 0;
    for (String part : text.split("\n", -1)) {
      lines += wrapped(part, fits);
    }
    return lines;
  }

  private static int wrapped(String text, double fits) {
    int lines = 1;
    double line = 0;
    double word = 0;
    for (int i = 0; i < text.length(); i++) {
      char letter = text.charAt(i);
      double wide = letter < ASCII.length ? ASCII[letter] : digits(letter);
      if (letter == ' ') {
        line += word + wide;
        word = 0;
      } else if (line > 0 && line + word + wide > fits) {
        lines++;
        line = 0;
        word += wide;
      } else if (word + wide > fits) {
        // longer than a line, and broken anywhere
        lines++;
        word = wide;
      } else {
        word += wide;
      }
    }
    return lines;
  }

  /** How wide a letter of a usual font without serifs is, a digit being 1; rather too wide. */
  private static double digits(char letter) {
    if (" ijl.,:;'|!".indexOf(letter) >= 0) {
      return 0.5;
    }
    if ("frt()[]-/\"".indexOf(letter) >= 0) {
      return 0.7;
    }
    if ("mwMW@%".indexOf(letter) >= 0) {
      return 1.6;
    }
    if (letter >= FIRST_OF_EASTERN) {
      return 2;
    }
    return Character.isUpperCase(letter) ? 1.2 : 1;
  }

  /**
   * The height of a text in a font of so many points.
   *
   * @param width of the column in characters of the usual font of 11 points
   */
  public static double of(String text, int width, int fontPt) {
    double fits = Math.max(1, (width - EDGES) * 11 / fontPt);
    return Math.min(MOST_PT, lines(text, fits) * fontPt * LINE_PT / 11 + 3);
  }

  public static double points(int lines) {
    return Math.min(MOST_PT, lines * LINE_PT);
  }
}
