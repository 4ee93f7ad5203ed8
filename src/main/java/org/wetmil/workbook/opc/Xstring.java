package org.wetmil.workbook.opc;

/**
 * Text as a workbook stores it (ST_Xstring of ECMA-376 part 1, 22.9.2.19): a character that XML
 * cannot hold is written as _xHHHH_, its UTF-16 code in four hexadecimal digits, and text that
 * looks like such an escape has its underscore escaped.
 */
public final class Xstring {
  private static final int ESCAPE_LENGTH = 7;

  private Xstring() {}

  /** Text as it is to be stored. */
  public static String encode(String text) {
    if (isPlain(text)) {
      return text;
    }
    StringBuilder out = null;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      boolean pair =
          Character.isHighSurrogate(c)
              && i + 1 < text.length()
              && Character.isLowSurrogate(text.charAt(i + 1));
      if (pair || (isXml(c) && !wouldRead(text, i))) {
        if (out != null) {
          out.append(c);
          if (pair) {
            out.append(text.charAt(i + 1));
          }
        }
        i += pair ? 1 : 0;
      } else {
        if (out == null) {
          out = new StringBuilder(text.length() + ESCAPE_LENGTH).append(text, 0, i);
        }
        out.append("_x").append(String.format("%04X", (int) c)).append('_');
      }
    }
    return out == null ? text : out.toString();
  }

  /** Text as the user sees it. */
  public static String decode(String stored) {
    int at = stored.indexOf("_x");
    if (at < 0) {
      return stored;
    }
    StringBuilder out = new StringBuilder(stored.length());
    for (int i = 0; i < stored.length(); i++) {
      if (isEscape(stored, i)) {
        out.append((char) Integer.parseInt(stored, i + 2, i + 6, 16));
        i += ESCAPE_LENGTH - 1;
      } else {
        out.append(stored.charAt(i));
      }
    }
    return out.toString();
  }

  /** Whether a text has nothing that could have to be escaped, as nearly all have. */
  private static boolean isPlain(String text) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if ((c < ' ' && c != '\n')
          || c >= Character.MIN_SURROGATE
          || (c == '_' && text.startsWith("_x", i))) {
        return false;
      }
    }
    return true;
  }

  /** Whether text from here on would be read as an escape once it is stored. */
  private static boolean wouldRead(String text, int at) {
    // A character that is escaped itself begins with the underscore that ends this one.
    return isOpening(text, at) && (text.charAt(at + 6) == '_' || !isXml(text.charAt(at + 6)));
  }

  private static boolean isEscape(String stored, int at) {
    return isOpening(stored, at) && stored.charAt(at + 6) == '_';
  }

  private static boolean isOpening(String text, int at) {
    if (at + ESCAPE_LENGTH > text.length()
        || text.charAt(at) != '_'
        || text.charAt(at + 1) != 'x') {
      return false;
    }
    for (int i = at + 2; i < at + 6; i++) {
      char c = text.charAt(i);
      boolean hex = (c >= '0' && c <= '9') || (c >= 'A' && c <= 'F') || (c >= 'a' && c <= 'f');
      if (!hex) {
        return false;
      }
    }
    return true;
  }

  private static boolean isXml(char c) {
    // A carriage return is allowed in XML but every reader turns it into a line feed.
    return c == '\t'
        || c == '\n'
        || (c >= ' ' && c < Character.MIN_SURROGATE)
        || (c > Character.MAX_SURROGATE && c < '\uFFFE');
  }
}
