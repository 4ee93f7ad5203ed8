package org.wetmil.workbook.opc;

/** What XML writes in the place of characters that it would read as something else. */
final class XmlEscapes {
  /** Whether a character may have to be escaped, up to the last that may. */
  private static final boolean[] SPECIAL = new boolean['>' + 1];

  static {
    "&<>\r\"\t\n".chars().forEach(c -> SPECIAL[c] = true);
  }

  private XmlEscapes() {}

  /** The escape of a character; null for one that stands as it is. Asked for every character. */
  static String of(char c, boolean inAttribute) {
    return c < SPECIAL.length && SPECIAL[c] ? escape(c, inAttribute) : null;
  }

  private static String escape(char c, boolean inAttribute) {
    return switch (c) {
      case '&' -> "&amp;";
      case '<' -> "&lt;";
      case '>' -> "&gt;";
      case '\r' -> "&#13;";
      case '"' -> inAttribute ? "&quot;" : null;
      case '\t' -> inAttribute ? "&#9;" : null;
      case '\n' -> inAttribute ? "&#10;" : null;
      default -> null;
    };
  }
}
