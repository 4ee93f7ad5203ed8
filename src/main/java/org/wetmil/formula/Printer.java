package org.wetmil.formula;

import java.math.BigDecimal;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Prints expressions with no more brackets than it takes for the text to be computed in the order
 * in which the expression computes itself, to the last bit.
 */
final class Printer {
  private static final int SUM = 1;
  private static final int PRODUCT = 2;
  private static final int ATOM = 3;

  private Printer() {}

  static String print(Expr expr, Function<Place, String> names) {
    StringBuilder out = new StringBuilder();
    new Run(names, out).write(expr, SUM);
    return out.toString();
  }

  /** A number as a spreadsheet reads it back, never in a program's own notation. */
  static String number(double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("a formula cannot hold " + value);
    }
    if (value == Math.rint(value) && Math.abs(value) < 1e15) {
      return Long.toString((long) value);
    }
    BigDecimal exact = new BigDecimal(Double.toString(value)).stripTrailingZeros();
    String plain = exact.toPlainString();
    return plain.length() <= 24 ? plain : exact.toString();
  }

  private record Run(Function<Place, String> names, StringBuilder out) {

    void write(Expr expr, int least) {
      if (rank(expr) < least) {
        out.append('(');
        write(expr);
        out.append(')');
      } else {
        write(expr);
      }
    }

    private static int rank(Expr expr) {
      if (expr instanceof Expr.Part part) {
        return rank(part.of());
      }
      if (expr instanceof Expr.Sum || expr instanceof Expr.Difference) {
        return SUM;
      }
      if (expr instanceof Expr.Product || expr instanceof Expr.Quotient) {
        return PRODUCT;
      }
      if (expr instanceof Expr.Num num && num.value() < 0) {
        return SUM;
      }
      return ATOM;
    }

    private void write(Expr expr) {
      if (expr instanceof Expr.Num num) {
        out.append(number(num.value()));
      } else if (expr instanceof Expr.At at) {
        out.append(names.apply(at.place()));
      } else if (expr instanceof Expr.Part part) {
        write(part.of());
      } else if (expr instanceof Expr.Sum sum) {
        join(sum.terms(), "+", SUM, PRODUCT);
      } else if (expr instanceof Expr.Difference difference) {
        write(difference.left(), SUM);
        out.append('-');
        write(difference.right(), PRODUCT);
      } else if (expr instanceof Expr.Product product) {
        join(product.factors(), "*", PRODUCT, ATOM);
      } else if (expr instanceof Expr.Quotient quotient) {
        write(quotient.left(), PRODUCT);
        out.append('/');
        write(quotient.right(), ATOM);
      } else if (expr instanceof Expr.Call call) {
        out.append(call.op().name()).append('(');
        join(call.arguments(), ",", SUM, SUM);
        out.append(')');
      } else if (expr instanceof Expr.IfAtMost test) {
        out.append("IF(");
        write(test.left(), SUM);
        out.append("<=");
        write(test.right(), SUM);
        branches(test.then(), test.otherwise());
      } else if (expr instanceof Expr.IfWord test) {
        String cell = "LOWER(TRIM(" + names.apply(test.place()) + "))";
        out.append("IF(OR(");
        out.append(
            test.words().stream()
                .map(word -> cell + "=\"" + word + "\"")
                .collect(Collectors.joining(",")));
        out.append(')');
        branches(test.then(), test.otherwise());
      }
    }

    private void branches(Expr then, Expr otherwise) {
      out.append(',');
      join(List.of(then, otherwise), ",", SUM, SUM);
      out.append(')');
    }

    /** What follows the first part keeps brackets of its own, so that it is computed as built. */
    private void join(List<Expr> parts, String separator, int first, int rest) {
      for (int i = 0; i < parts.size(); i++) {
        if (i > 0) {
          out.append(separator);
        }
        write(parts.get(i), i == 0 ? first : rest);
      }
    }
  }
}
