package org.wetmil.jobs.explain;

/** Reckons a line of an explanation anew from its text alone, as a reader with a calculator. */
final class PocketCalculator {
  private final String text;
  private int at;
  private double largest;

  private PocketCalculator(String text) {
    this.text = text;
  }

  /**
   * What it comes to.
   *
   * @param slack how far six digits of each number may lead: of a difference, as far as its terms
   */
  record Reckoned(double value, double slack) {}

  /** The value of numbers with units, as in {@code 2 × (24 ft + 18 ft) × 9 ft − 74 ft²}. */
  static Reckoned reckon(String line) {
    String lesser =
        line.replaceAll("the lesser of ([^()]+|\\([^()]*\\)) and ([^()]+?)(\\)|$)", "m($1;$2)$3");
    String bare =
        lesser
            .replaceAll("(\\d) (?:per |[A-Z]{3}/)?[A-Za-zµ%°][A-Za-zµ²³·/]*", "$1")
            .replaceAll("[\\s]+", "");
    PocketCalculator calculator = new PocketCalculator(bare);
    double value = calculator.sum();
    if (calculator.at < bare.length()) {
      throw new IllegalArgumentException(line + " read as " + bare + " up to " + calculator.at);
    }
    return new Reckoned(value, 3e-5 * Math.max(Math.abs(value), calculator.largest));
  }

  private double sum() {
    double value = product();
    while (is('+') || is('−')) {
      largest = text.charAt(at) == '−' ? Math.max(largest, value) : largest;
      value += text.charAt(at++) == '+' ? product() : -product();
    }
    return value;
  }

  private double product() {
    double value = power();
    while (is('×') || is('÷')) {
      value = text.charAt(at++) == '×' ? value * power() : value / power();
    }
    return value;
  }

  private double power() {
    double value = atom();
    if (is('²')) {
      at++;
      return value * value;
    }
    if (is('³')) {
      at++;
      return value * value * value;
    }
    if (is('⁴')) {
      at++;
      return value * value * value * value;
    }
    return value;
  }

  private double atom() {
    if (is('m')) {
      at += 2;
      double one = sum();
      at++;
      double other = sum();
      at++;
      return Math.min(one, other);
    }
    if (is('√')) {
      at++;
      return Math.sqrt(atom());
    }
    if (is('(')) {
      at++;
      double value = sum();
      at++;
      return value;
    }
    if (is('-')) {
      // as in mathematics: a sign stands in front of a sum, and a power is taken before it
      if (at > 0 && "(;".indexOf(text.charAt(at - 1)) < 0) {
        throw new IllegalArgumentException(text + ": a sign behind an operator");
      }
      at++;
      return -power();
    }
    int from = at;
    while (at < text.length() && (Character.isDigit(text.charAt(at)) || is('.'))) {
      at++;
    }
    return Double.parseDouble(text.substring(from, at));
  }

  private boolean is(char c) {
    return at < text.length() && text.charAt(at) == c;
  }
}
