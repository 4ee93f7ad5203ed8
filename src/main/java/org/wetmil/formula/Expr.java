package org.wetmil.formula;

import java.util.List;
import java.util.Locale;
import java.util.function.Function;

/**
 * A spreadsheet formula that can be evaluated and printed from one declaration, so that the value
 * stored in a cell and the formula shown there agree by construction.
 *
 * <p>Leaves carry the value they had when the formula was built; printing asks the caller for the
 * name of each place. Evaluation follows the printed order of operations, so that a spreadsheet
 * program that computes the text anew comes out within rounding of the stored value.
 */
public sealed interface Expr {

  double value();

  /** The parts that the value rests on: of a choice between two the one that applies. */
  default List<Expr> parts() {
    return Parts.of(this);
  }

  /** Prints the formula without a leading equals sign. */
  default String print(Function<Place, String> names) {
    return Printer.print(this, names);
  }

  /**
   * A number that is the same within one run for formulas that print alike, whatever the values of
   * their cells.
   */
  default long likeness() {
    return Likeness.of(this);
  }

  /** A constant written into the formula. */
  record Num(double value) implements Expr {}

  /** A cell that the formula follows, with the number that it holds now. */
  record At(Place place, double value) implements Expr {}

  /**
   * A part that has a name for whoever explains the formula: a number that no formula can point at,
   * or a figure that has no cell. It prints and computes as what it is.
   */
  record Part(Place place, Expr of) implements Expr {
    @Override
    public double value() {
      return of.value();
    }
  }

  /** {@code a + b + ...}. By index: an iterator for each would be a tenth of what a bid makes. */
  record Sum(List<Expr> terms) implements Expr {
    public Sum {
      terms = some(terms);
    }

    @Override
    public double value() {
      double sum = 0;
      for (int i = 0; i < terms.size(); i++) {
        sum += terms.get(i).value();
      }
      return sum;
    }
  }

  /** {@code a - b}. */
  record Difference(Expr left, Expr right) implements Expr {
    @Override
    public double value() {
      return left.value() - right.value();
    }
  }

  /** {@code a * b * ...}. */
  record Product(List<Expr> factors) implements Expr {
    public Product {
      factors = some(factors);
    }

    @Override
    public double value() {
      double product = 1;
      for (int i = 0; i < factors.size(); i++) {
        product *= factors.get(i).value();
      }
      return product;
    }
  }

  /** {@code a / b}. */
  record Quotient(Expr left, Expr right) implements Expr {
    @Override
    public double value() {
      return left.value() / right.value();
    }
  }

  /** One of the functions of the 2007 file format that formulas here use. */
  record Call(Op op, List<Expr> arguments) implements Expr {
    public Call {
      arguments = List.copyOf(arguments);
    }

    @Override
    public double value() {
      double[] values = new double[arguments.size()];
      for (int i = 0; i < values.length; i++) {
        values[i] = arguments.get(i).value();
      }
      return op.apply(values);
    }
  }

  /**
   * {@code IF(left <= right, then, otherwise)}. Spreadsheet programs take numbers that agree in 15
   * digits for equal, so that 4.2672 m is not above 14 ft; so does this.
   */
  record IfAtMost(Expr left, Expr right, Expr then, Expr otherwise) implements Expr {
    private static final double EQUAL = 3e-15;

    @Override
    public double value() {
      return applies().value();
    }

    /** Whether the left is at most the right. */
    public boolean holds() {
      double most = right.value();
      return left.value() <= most + EQUAL * Math.abs(most);
    }

    /** The one of the two that gives the value. */
    public Expr applies() {
      return holds() ? then : otherwise;
    }
  }

  /** {@code IF(OR(LOWER(TRIM(cell))="...",...), then, otherwise)}: whether a cell says a word. */
  record IfWord(Place place, String text, List<String> words, Expr then, Expr otherwise)
      implements Expr {
    public IfWord {
      words = List.copyOf(words);
    }

    @Override
    public double value() {
      return applies().value();
    }

    /** The one of the two that gives the value. */
    public Expr applies() {
      return words.contains(text.strip().toLowerCase(Locale.ROOT)) ? then : otherwise;
    }
  }

  /** The functions, each named as the file format names it. */
  enum Op {
    MIN,
    MAX,
    SQRT,
    /** Natural logarithm. */
    LN,
    /** Away from zero to a number of decimals, which are 0 here. */
    ROUNDUP;

    double apply(double[] values) {
      return switch (this) {
        case MIN -> {
          double least = values[0];
          for (double value : values) {
            least = Math.min(least, value);
          }
          yield least;
        }
        case MAX -> {
          double most = values[0];
          for (double value : values) {
            most = Math.max(most, value);
          }
          yield most;
        }
        case SQRT -> Math.sqrt(values[0]);
        case LN -> Math.log(values[0]);
        case ROUNDUP -> Math.copySign(Math.ceil(Math.abs(values[0])), values[0]);
      };
    }
  }

  static Expr num(double value) {
    return new Num(value);
  }

  static Expr at(Place place, double value) {
    return new At(place, value);
  }

  /** A number that stands in the formula for a place. */
  static Expr told(Place place, double value) {
    return new Part(place, num(value));
  }

  /** A sum; sums among the terms are opened, so that it reads without brackets. */
  static Expr sum(Expr... terms) {
    return new Sum(opened(terms, part -> part instanceof Sum sum ? sum.terms() : null));
  }

  /** A product; products among the factors are opened, so that it reads without brackets. */
  static Expr times(Expr... factors) {
    return new Product(
        opened(factors, part -> part instanceof Product product ? product.factors() : null));
  }

  /** Counted first, since formulas of every line are built so: one array, copied once. */
  private static List<Expr> opened(Expr[] parts, Function<Expr, List<Expr>> inside) {
    int count = 0;
    boolean flat = true;
    for (Expr part : parts) {
      List<Expr> within = inside.apply(part);
      count += within == null ? 1 : within.size();
      flat &= within == null;
    }
    if (flat) {
      return List.of(parts);
    }
    Expr[] opened = new Expr[count];
    int at = 0;
    for (Expr part : parts) {
      List<Expr> within = inside.apply(part);
      if (within == null) {
        opened[at++] = part;
      } else {
        for (Expr each : within) {
          opened[at++] = each;
        }
      }
    }
    return List.of(opened);
  }

  private static List<Expr> some(List<Expr> parts) {
    if (parts.isEmpty()) {
      throw new IllegalArgumentException("nothing to add or multiply");
    }
    return List.copyOf(parts);
  }

  default Expr plus(Expr other) {
    return sum(this, other);
  }

  default Expr minus(Expr other) {
    return new Difference(this, other);
  }

  default Expr times(Expr other) {
    return times(this, other);
  }

  default Expr over(Expr other) {
    return new Quotient(this, other);
  }

  static Expr min(Expr... of) {
    return new Call(Op.MIN, List.of(of));
  }

  static Expr max(Expr... of) {
    return new Call(Op.MAX, List.of(of));
  }

  static Expr sqrt(Expr of) {
    return new Call(Op.SQRT, List.of(of));
  }

  /** The natural logarithm. */
  static Expr ln(Expr of) {
    return new Call(Op.LN, List.of(of));
  }

  /** The next whole number away from zero. */
  static Expr roundUp(Expr of) {
    return new Call(Op.ROUNDUP, List.of(of, num(0)));
  }

  static Expr ifWord(Place place, String text, List<String> words, Expr then, Expr otherwise) {
    return new IfWord(place, text, words, then, otherwise);
  }

  static Expr ifAtMost(Expr left, Expr right, Expr then, Expr otherwise) {
    return new IfAtMost(left, right, then, otherwise);
  }
}
