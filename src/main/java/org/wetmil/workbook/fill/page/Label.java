package org.wetmil.workbook.fill.page;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.regex.Pattern;
import org.wetmil.estimate.InputValue;

/** The words of a bid line as formulas of the list of hours take them over. */
final class Label {
  /** Digits that a spreadsheet program keeps of a number. */
  private static final MathContext DIGITS = new MathContext(15);

  private static final Pattern CONTROLS = Pattern.compile("[\\x00-\\x1f]");
  private static final Pattern SPACES = Pattern.compile(" +");

  private Label() {}

  /** The formula that takes over cells in order: no control characters, single spaces. */
  static String formula(List<String> cells) {
    return "TRIM(CLEAN(" + String.join("&\" \"&", cells) + "))";
  }

  /** What that formula gives for a cell, whether it holds a text or a number. */
  static String text(InputValue cell) {
    if (cell.isLive()) {
      BigDecimal number = BigDecimal.valueOf(cell.cellNumber()).round(DIGITS).stripTrailingZeros();
      return number.toPlainString();
    }
    if (isPlain(cell.raw())) {
      return cell.raw();
    }
    String plain = CONTROLS.matcher(cell.raw()).replaceAll("");
    return SPACES.matcher(plain).replaceAll(" ").strip();
  }

  /** Whether the formula changes nothing, as with nearly every cell. */
  private static boolean isPlain(String text) {
    for (int i = 0; i < text.length(); i++) {
      if (text.charAt(i) < ' ') {
        return false;
      }
    }
    return text.equals(text.strip()) && !text.contains("  ");
  }
}
