package org.wetmil.estimate;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.wetmil.catalogue.Tables;
import org.wetmil.formula.Place;
import org.wetmil.formula.TextFormula;

/** Random lines, computed a second time from the functions of the trade. */
@Tag("long")
class SweepTest {
  private static final int LINES = 6000;

  @Test
  void everyFigureAgreesWithTheFunctionsOfTheTrade() {
    RandomBids bids = new RandomBids(1);
    Set<FilledColumn> seen = EnumSet.noneOf(FilledColumn.class);
    int planned = 0;
    int without = 0;
    for (int i = 0; i < LINES; i++) {
      RandomBids.Sample sample = bids.next();
      FilledLine filled = sample.fill();
      planned += filled.followed() == filled.recommended() ? 0 : 1;
      without += filled.followed().isTip() ? 0 : 1;
      PlainLine plainly = new PlainLine(sample.catalogue(), sample.line());
      // openings that take nearly all of an area leave only its last bits
      double loss = Math.max(1, plainly.grossFt2() / plainly.netFt2());
      double tolerance = Double.isFinite(loss) ? 1e-12 * loss : 1e-12;
      plainly
          .figures(filled.followed())
          .forEach(
              (column, plain) -> {
                assertThat(off(filled.base(column), plain))
                    .as("%s plainly %s of %s", column, plain, sample.line())
                    .isLessThan(tolerance);
                seen.add(column);
              });
    }
    assertThat(seen).hasSizeGreaterThanOrEqualTo(13);
    assertThat(planned).isGreaterThan(LINES / 20);
    assertThat(without).isGreaterThan(LINES / 100);
  }

  private static double off(double actual, double plain) {
    return plain == 0 ? Math.abs(actual) : Math.abs(actual / plain - 1);
  }

  /** Each formula as printed, computed from the cells that it names. */
  @Test
  void everyPrintedFormulaComputesToItsFigure() {
    RandomBids bids = new RandomBids(2);
    for (int i = 0; i < LINES / 3; i++) {
      RandomBids.Sample sample = bids.next();
      FilledLine filled = sample.fill();
      filled
          .figures()
          .forEach(
              (column, figure) -> {
                if (figure instanceof Figure.Live live) {
                  Cells cells = new Cells(sample, filled);
                  String text = live.formula().print(cells::name);

                  assertThat(TextFormula.number(text, cells.values))
                      .as("%s = %s", column, text)
                      .isEqualTo(figure.number());
                }
              });
    }
  }

  /** The cells that a formula names, with what a workbook would hold in them. */
  private static final class Cells {
    private final RandomBids.Sample sample;
    private final FilledLine filled;
    private final Map<String, Object> values = new HashMap<>();

    Cells(RandomBids.Sample sample, FilledLine filled) {
      this.sample = sample;
      this.filled = filled;
    }

    String name(Place place) {
      String name = place.toString().replaceAll("[^A-Za-z0-9]+", "_");
      Object value;
      if (place instanceof InputColumn column) {
        InputValue cell = filled.line().get(column);
        value = cell.isLive() ? (Object) cell.cellNumber() : cell.raw();
      } else if (place instanceof FilledColumn column) {
        value = filled.figures().get(column).number();
      } else if (place instanceof UnitFactor factor) {
        value = factor.value(sample.basis());
      } else {
        EntryPlace entry = (EntryPlace) place;
        var table = Tables.find(entry.table()).orElseThrow();
        var stated = sample.catalogue().table(table).get(entry.row()).get(entry.heading());
        name = "Basis_" + (entry.row() + "_" + entry.heading()).replaceAll("[^A-Za-z0-9]+", "_");
        value = stated.quantity().shown(stated.number(), sample.basis());
      }
      values.put(name, value);
      return name;
    }
  }
}
