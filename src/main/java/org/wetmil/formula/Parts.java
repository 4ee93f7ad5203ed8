package org.wetmil.formula;

import java.util.List;

/** The parts that the value of a formula rests on. */
final class Parts {
  private Parts() {}

  /** Of a choice between two: what is compared, and the one that applies. */
  static List<Expr> of(Expr expr) {
    if (expr instanceof Expr.Sum sum) {
      return sum.terms();
    } else if (expr instanceof Expr.Difference difference) {
      return List.of(difference.left(), difference.right());
    } else if (expr instanceof Expr.Product product) {
      return product.factors();
    } else if (expr instanceof Expr.Quotient quotient) {
      return List.of(quotient.left(), quotient.right());
    } else if (expr instanceof Expr.Call call) {
      return call.arguments();
    } else if (expr instanceof Expr.IfAtMost test) {
      return List.of(test.left(), test.right(), test.applies());
    } else if (expr instanceof Expr.IfWord test) {
      return List.of(test.applies());
    } else if (expr instanceof Expr.Part part) {
      return List.of(part.of());
    }
    return List.of();
  }
}
