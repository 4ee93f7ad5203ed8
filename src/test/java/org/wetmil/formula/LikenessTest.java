package org.wetmil.formula;

import static org.assertj.core.api.Assertions.assertThat;
import static org.wetmil.formula.Expr.at;
import static org.wetmil.formula.Expr.ifAtMost;
import static org.wetmil.formula.Expr.ifWord;
import static org.wetmil.formula.Expr.max;
import static org.wetmil.formula.Expr.min;
import static org.wetmil.formula.Expr.num;
import static org.wetmil.formula.Expr.sqrt;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Formulas that print alike are alike, whatever their cells hold. */
class LikenessTest {
  private enum Cell implements Place {
    A,
    B
  }

  @Test
  void valuesOfCellsDoNotMatter() {
    assertThat(at(Cell.A, 1).times(at(Cell.B, 2)).likeness())
        .isEqualTo(at(Cell.A, 3).times(at(Cell.B, 4)).likeness());
  }

  @Test
  void whateverPrintsOtherwiseIsUnlike() {
    Expr a = at(Cell.A, 1);
    Expr b = at(Cell.B, 1);
    List<Expr> all =
        List.of(
            a,
            b,
            num(1),
            num(2),
            a.plus(b),
            b.plus(a),
            a.minus(b),
            b.minus(a),
            a.times(b),
            a.over(b),
            b.over(a),
            a.over(num(1)),
            a.over(num(2)),
            min(a, b),
            max(a, b),
            sqrt(a),
            ifAtMost(a, b, num(1), num(2)),
            ifAtMost(a, b, num(2), num(1)),
            ifWord(Cell.A, "no", List.of("no"), num(0), num(1)),
            ifWord(Cell.B, "no", List.of("no"), num(0), num(1)),
            ifWord(Cell.A, "no", List.of("no", "n"), num(0), num(1)),
            a.plus(b).times(b),
            a.plus(b.times(b)));

    assertThat(all).extracting(Expr::likeness).doesNotHaveDuplicates();
    assertThat(Stream.of(all).flatMap(List::stream).map(each -> each.print(Place::toString)))
        .doesNotHaveDuplicates();
  }
}
