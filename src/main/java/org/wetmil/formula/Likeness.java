package org.wetmil.formula;

import java.util.List;

/**
 * A number that formulas have in common which print alike: of thousands of lines only a few differ,
 * and to print each takes ten times as long as to look at it.
 */
final class Likeness {
  private Likeness() {}

  static long of(Expr expr) {
    if (expr instanceof Expr.Num num) {
      return mixed(1, Double.doubleToLongBits(num.value()));
    } else if (expr instanceof Expr.At at) {
      return mixed(2, at.place().hashCode());
    } else if (expr instanceof Expr.Part part) {
      return of(part.of());
    } else if (expr instanceof Expr.Sum sum) {
      return of(3, sum.terms());
    } else if (expr instanceof Expr.Difference difference) {
      return of(4, List.of(difference.left(), difference.right()));
    } else if (expr instanceof Expr.Product product) {
      return of(5, product.factors());
    } else if (expr instanceof Expr.Quotient quotient) {
      return of(6, List.of(quotient.left(), quotient.right()));
    } else if (expr instanceof Expr.Call call) {
      return of(mixed(7, call.op().ordinal()), call.arguments());
    } else if (expr instanceof Expr.IfAtMost test) {
      return of(8, List.of(test.left(), test.right(), test.then(), test.otherwise()));
    } else if (expr instanceof Expr.IfWord test) {
      long words = mixed(test.place().hashCode(), test.words().hashCode());
      return of(mixed(9, words), List.of(test.then(), test.otherwise()));
    }
    throw new IllegalArgumentException(expr.toString());
  }

  private static long of(long kind, List<Expr> parts) {
    long hash = mixed(kind, parts.size());
    for (Expr part : parts) {
      hash = mixed(hash, of(part));
    }
    return hash;
  }

  /** The finalizer of the SplitMix generator over both, so that no two orders agree by chance. */
  private static long mixed(long one, long other) {
    long z = one * 0x9E3779B97F4A7C15L + other;
    z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
    z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
    return z ^ (z >>> 31);
  }
}
