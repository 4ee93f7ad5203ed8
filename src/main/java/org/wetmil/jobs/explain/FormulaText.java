package org.wetmil.jobs.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.wetmil.estimate.explain.Ingredient;
import org.wetmil.estimate.explain.Ingredients;
import org.wetmil.formula.Expr;

/** Writes formulas for a reader with a pocket calculator: in words, or with the numbers put in. */
final class FormulaText {
  private static final int SUM = 1;
  private static final int PRODUCT = 2;
  private static final int ATOM = 3;

  private final Ingredients ingredients;
  private final Function<Ingredient, String> leaf;

  private FormulaText(Ingredients ingredients, Function<Ingredient, String> leaf) {
    this.ingredients = ingredients;
    this.leaf = leaf;
  }

  /** With the names of what enters. */
  static FormulaText words(Ingredients ingredients) {
    return new FormulaText(ingredients, ingredient -> ingredient.name().replace(" ", Numbers.TIED));
  }

  /** With the numbers of what enters. */
  static FormulaText numbers(Ingredients ingredients) {
    return new FormulaText(ingredients, Numbers::of);
  }

  String write(Expr expr) {
    return write(expr, SUM);
  }

  private String write(Expr expr, int least) {
    if (expr instanceof Expr.At at) {
      return signed(leaf.apply(ingredients.of(at)), least);
    } else if (expr instanceof Expr.Part part) {
      return signed(leaf.apply(ingredients.of(part)), least);
    } else if (expr instanceof Expr.IfAtMost test) {
      return write(test.applies(), least);
    } else if (expr instanceof Expr.IfWord test) {
      return write(test.applies(), least);
    }
    String text = open(expr);
    return rank(expr) < least ? "(" + text + ")" : text;
  }

  /** No sign stands behind an operator. */
  private static String signed(String leaf, int least) {
    return least > SUM && leaf.startsWith("-") ? "(" + leaf + ")" : leaf;
  }

  private static int rank(Expr expr) {
    if (expr instanceof Expr.Sum || expr instanceof Expr.Difference) {
      return SUM;
    }
    if (expr instanceof Expr.Product product) {
      return product.factors().stream().distinct().count() == 1 ? ATOM : PRODUCT;
    }
    if (expr instanceof Expr.Quotient) {
      return PRODUCT;
    }
    boolean words = expr instanceof Expr.Call call && isInWords(call.op());
    return words || (expr instanceof Expr.Num num && num.value() < 0) ? SUM : ATOM;
  }

  private static boolean isInWords(Expr.Op op) {
    return op == Expr.Op.MIN || op == Expr.Op.MAX;
  }

  private String open(Expr expr) {
    if (expr instanceof Expr.Num num) {
      return Numbers.exact(num.value());
    } else if (expr instanceof Expr.Sum sum) {
      return sum.terms().stream()
          .map(term -> write(term, PRODUCT))
          .collect(Collectors.joining(" + "));
    } else if (expr instanceof Expr.Difference difference) {
      return write(difference.left(), SUM) + " − " + write(difference.right(), PRODUCT);
    } else if (expr instanceof Expr.Product product) {
      return product(product.factors());
    } else if (expr instanceof Expr.Quotient quotient) {
      return write(quotient.left(), PRODUCT) + " ÷ " + write(quotient.right(), ATOM);
    } else if (expr instanceof Expr.Call call) {
      return call(call);
    }
    throw new IllegalArgumentException(expr.toString());
  }

  /** Factors that are one and the same as a power. */
  private String product(List<Expr> factors) {
    List<String> texts = new ArrayList<>();
    for (int i = 0; i < factors.size(); ) {
      int end = i + 1;
      while (end < factors.size() && factors.get(end).equals(factors.get(i))) {
        end++;
      }
      int power = end - i;
      Expr factor = factors.get(i);
      String text = write(factor, i == 0 && power == 1 ? PRODUCT : ATOM);
      boolean bare = text.contains(Numbers.TIED) && !text.startsWith("(");
      texts.add(power == 1 ? text : (bare ? "(" + text + ")" : text) + exponent(power));
      i = end;
    }
    return String.join(" × ", texts);
  }

  private static String exponent(int power) {
    return switch (power) {
      case 2 -> "²";
      case 3 -> "³";
      case 4 -> "⁴";
      default -> throw new IllegalArgumentException("power " + power);
    };
  }

  private String call(Expr.Call call) {
    List<Expr> of = call.arguments();
    Held held = Held.find(call);
    if (held != null) {
      return write(held.inner(), SUM) + ", but " + limits(held);
    }
    List<String> texts = of.stream().map(each -> write(each, SUM)).toList();
    return switch (call.op()) {
      case SQRT -> "√(" + texts.get(0) + ")";
      case LN -> "ln(" + texts.get(0) + ")";
      case ROUNDUP -> texts.get(0) + ", rounded up";
      case MIN -> "the lesser of " + String.join(" and ", texts);
      case MAX -> "the greater of " + String.join(" and ", texts);
    };
  }

  /** What is said of a figure that its limits leave as it is; nothing of one that is no loss. */
  String inside(Held held) {
    return held.most() == null
        ? ""
        : ", between " + write(held.least(), SUM) + " and " + write(held.most(), SUM);
  }

  /** How far a figure may go. */
  String limits(Held held) {
    String least = "not under " + write(held.least(), SUM);
    return held.most() == null ? least : least + " or over " + write(held.most(), SUM);
  }

  /**
   * A figure held between limits.
   *
   * @param most null when there is none
   */
  record Held(Expr least, Expr most, Expr inner) {

    /** Null when a formula is no such figure. */
    static Held find(Expr expr) {
      if (!(expr instanceof Expr.Call max) || max.op() != Expr.Op.MAX) {
        return null;
      }
      Expr rest = max.arguments().get(1);
      return rest instanceof Expr.Call min && min.op() == Expr.Op.MIN
          ? new Held(max.arguments().get(0), min.arguments().get(0), min.arguments().get(1))
          : new Held(max.arguments().get(0), null, rest);
    }
  }
}
