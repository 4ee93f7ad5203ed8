package org.wetmil.formula;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Computes the text of a formula as a spreadsheet would: for tests, knowing nothing of how the text
 * was made. Numbers, cells, + - * / with their usual order, {@code <=} and {@code =}, and the
 * functions MIN MAX SQRT PI IF OR LOWER TRIM.
 */
public final class TextFormula {
  private final String text;
  private final Map<String, Object> cells;
  private int at;

  private TextFormula(String text, Map<String, Object> cells) {
    this.text = text;
    this.cells = cells;
  }

  /**
   * @param cells a number or a text by the name that the formula uses
   */
  public static double number(String text, Map<String, Object> cells) {
    TextFormula formula = new TextFormula(text, cells);
    Object value = formula.comparison();
    if (formula.at != text.length()) {
      throw new IllegalArgumentException("left over at " + formula.at + ": " + text);
    }
    return (Double) value;
  }

  private Object comparison() {
    Object left = sum();
    if (take("<=")) {
      double most = (Double) sum();
      double least = (Double) left;
      // spreadsheet programs hold numbers equal that agree in 15 digits
      return least <= most || Math.abs(least - most) < 3e-15 * Math.abs(most);
    }
    if (take("=")) {
      return left.equals(sum());
    }
    return left;
  }

  private Object sum() {
    Object value = product();
    while (true) {
      if (take("+")) {
        value = (Double) value + (Double) product();
      } else if (take("-")) {
        value = (Double) value - (Double) product();
      } else {
        return value;
      }
    }
  }

  private Object product() {
    Object value = atom();
    while (true) {
      if (take("*")) {
        value = (Double) value * (Double) atom();
      } else if (take("/")) {
        value = (Double) value / (Double) atom();
      } else {
        return value;
      }
    }
  }

  private Object atom() {
    if (take("-")) {
      return -(Double) atom();
    }
    if (take("(")) {
      Object inside = comparison();
      expect(")");
      return inside;
    }
    if (take("\"")) {
      int end = text.indexOf('"', at);
      String quoted = text.substring(at, end);
      at = end + 1;
      return quoted;
    }
    char next = text.charAt(at);
    return Character.isDigit(next) || next == '.' ? literal() : named();
  }

  private Double literal() {
    int from = at;
    while (at < text.length() && (Character.isDigit(text.charAt(at)) || text.charAt(at) == '.')) {
      at++;
    }
    if (at < text.length() && text.charAt(at) == 'E') {
      at += 2;
      while (at < text.length() && Character.isDigit(text.charAt(at))) {
        at++;
      }
    }
    return Double.valueOf(text.substring(from, at));
  }

  private Object named() {
    int from = at;
    while (at < text.length() && (Character.isLetterOrDigit(text.charAt(at)) || ofName())) {
      at++;
    }
    String name = text.substring(from, at);
    if (take("(")) {
      List<Object> arguments = new ArrayList<>();
      if (!take(")")) {
        do {
          arguments.add(comparison());
        } while (take(","));
        expect(")");
      }
      return call(name, arguments);
    }
    if (!cells.containsKey(name)) {
      throw new IllegalArgumentException("no cell " + name + " in " + text);
    }
    return cells.get(name);
  }

  private boolean ofName() {
    return text.charAt(at) == '_' || text.charAt(at) == '!';
  }

  private static Object call(String name, List<Object> arguments) {
    return switch (name) {
      case "PI" -> Math.PI;
      case "SQRT" -> Math.sqrt((Double) arguments.get(0));
      case "MIN" -> arguments.stream().mapToDouble(v -> (Double) v).min().orElseThrow();
      case "MAX" -> arguments.stream().mapToDouble(v -> (Double) v).max().orElseThrow();
      case "OR" -> arguments.contains(true);
      case "IF" -> (Boolean) arguments.get(0) ? arguments.get(1) : arguments.get(2);
      case "LOWER" -> arguments.get(0).toString().toLowerCase(Locale.ROOT);
      case "TRIM" -> arguments.get(0).toString().strip();
      default -> throw new IllegalArgumentException("no function " + name);
    };
  }

  private boolean take(String sign) {
    boolean here = text.startsWith(sign, at);
    at += here ? sign.length() : 0;
    return here;
  }

  private void expect(String sign) {
    if (!take(sign)) {
      throw new IllegalArgumentException(sign + " wanted at " + at + ": " + text);
    }
  }
}
