package org.wetmil.workbook.read.earlier;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import org.wetmil.workbook.stream.CellAddress;
import org.wetmil.workbook.stream.SheetReference;

/** A formula taken apart into references and what stands between them. */
record FormulaText(List<Piece> pieces) {
  /** Programs write constants anew with 15 digits. */
  private static final MathContext DIGITS = new MathContext(12);

  /** A constant that a spreadsheet can hold has no more digits in its exponent. */
  private static final int LONGEST_EXPONENT = 3;

  /** A piece of a formula; {@code text} is what stands there. */
  sealed interface Piece {
    String text();
  }

  record Plain(String text) implements Piece {}

  /** A constant. */
  record Constant(String text) implements Piece {}

  /**
   * A reference to one cell; a range is two of them.
   *
   * @param sheet empty for the formula's own
   */
  record Ref(String text, String sheet, CellAddress at, boolean columnFixed, boolean rowFixed)
      implements Piece {}

  static FormulaText of(String formula) {
    return new Scanner(formula).all();
  }

  /**
   * The same whoever wrote it down: without spaces, in capitals, with constants rounded, and with
   * references named by their role.
   */
  String shape(Function<Ref, String> role) {
    StringBuilder shape = new StringBuilder();
    for (Piece piece : pieces) {
      if (piece instanceof Ref ref) {
        shape.append(role.apply(ref));
      } else if (piece instanceof Constant constant) {
        shape.append(
            new BigDecimal(constant.text()).round(DIGITS).stripTrailingZeros().toPlainString());
      } else if (!piece.text().isBlank()) {
        shape.append(piece.text());
      }
    }
    return shape.toString().toUpperCase(Locale.ROOT);
  }

  /** The formula as it reads in another cell that shares it. */
  String movedBy(int rows, int columns) {
    StringBuilder moved = new StringBuilder();
    for (Piece piece : pieces) {
      if (piece instanceof Ref ref) {
        String name = ref.text().substring(0, ref.text().lastIndexOf('!') + 1);
        int column = ref.at().column() + (ref.columnFixed() ? 0 : columns);
        int row = ref.at().row() + (ref.rowFixed() ? 0 : rows);
        moved
            .append(name)
            .append(ref.columnFixed() ? "$" : "")
            .append(CellAddress.letters(column))
            .append(ref.rowFixed() ? "$" : "")
            .append(row + 1);
      } else {
        moved.append(piece.text());
      }
    }
    return moved.toString();
  }

  private static final class Scanner {
    private final String formula;
    private final List<Piece> pieces = new ArrayList<>();
    private int at;

    private Scanner(String formula) {
      this.formula = formula;
    }

    private FormulaText all() {
      while (at < formula.length()) {
        char next = formula.charAt(at);
        if (next == '"') {
          plain(closing(at, '"'));
        } else if (next == '\'' || isWordStart(next)) {
          word();
        } else if (isDigit(next) || (next == '.' && isDigit(peek(at + 1)))) {
          constant();
        } else if (next == '[' || next == '{') {
          int end = formula.indexOf(next == '[' ? ']' : '}', at);
          plain(end < 0 ? formula.length() : end + 1);
        } else {
          plain(at + 1);
        }
      }
      return new FormulaText(pieces);
    }

    private void plain(int end) {
      pieces.add(new Plain(formula.substring(at, end)));
      at = end;
    }

    /** Behind the quote that closes; a doubled one does not. */
    private int closing(int from, char quote) {
      int end = from + 1;
      while (end < formula.length()) {
        if (formula.charAt(end) == quote) {
          if (peek(end + 1) != quote) {
            return end + 1;
          }
          end++;
        }
        end++;
      }
      return end;
    }

    /** A name, a function, a reference, or the sheet before one. */
    private void word() {
      int start = at;
      boolean elsewhere = start > 0 && formula.charAt(start - 1) == ']';
      String sheet = "";
      int end = wordEnd(start);
      if (peek(end) == '!') {
        sheet = SheetReference.unquoted(formula.substring(start, end));
        int name = end + 1;
        end = isWordStart(peek(name)) ? wordEnd(name) : name;
        reference(start, name, end, elsewhere ? "[" + sheet : sheet);
      } else {
        reference(start, start, end, sheet);
      }
      at = end;
    }

    private void reference(int start, int from, int end, String sheet) {
      String text = formula.substring(start, end);
      String name = formula.substring(from, end);
      char after = peek(end);
      Optional<CellAddress> address =
          after == '(' || after == '!' ? Optional.empty() : CellAddress.find(name.replace("$", ""));
      pieces.add(
          address
              .<Piece>map(
                  cell ->
                      new Ref(text, sheet, cell, name.startsWith("$"), name.lastIndexOf('$') > 0))
              .orElseGet(() -> new Plain(text)));
    }

    private int wordEnd(int start) {
      if (formula.charAt(start) == '\'') {
        return closing(start, '\'');
      }
      int end = start;
      while (end < formula.length()
          && (isWordStart(formula.charAt(end))
              || isDigit(formula.charAt(end))
              || formula.charAt(end) == '.'
              || formula.charAt(end) == '?')) {
        end++;
      }
      return end;
    }

    private void constant() {
      int end = at;
      int exponent = 0;
      while (isDigit(peek(end)) || peek(end) == '.') {
        end++;
      }
      if (peek(end) == 'E' || peek(end) == 'e') {
        int digits = peek(end + 1) == '-' || peek(end + 1) == '+' ? end + 2 : end + 1;
        if (isDigit(peek(digits))) {
          end = digits;
          while (isDigit(peek(end))) {
            end++;
            exponent++;
          }
        }
      }
      String text = formula.substring(at, end);
      boolean number =
          text.indexOf('.') == text.lastIndexOf('.')
              && !text.endsWith(".")
              && exponent <= LONGEST_EXPONENT;
      pieces.add(number ? new Constant(text) : new Plain(text));
      at = end;
    }

    private char peek(int index) {
      return index < formula.length() ? formula.charAt(index) : '\0';
    }

    private static boolean isWordStart(char c) {
      return Character.isLetter(c) || c == '_' || c == '$' || c == '\\';
    }

    private static boolean isDigit(char c) {
      return c >= '0' && c <= '9';
    }
  }
}
