package org.wetmil.checks;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Tables;
import org.wetmil.estimate.BidLine;
import org.wetmil.estimate.Bids;
import org.wetmil.estimate.FilledBid;
import org.wetmil.estimate.InputColumn;
import org.wetmil.quantity.UnitSystem;

/** Odd lines by the thousand (seed stated): none breaks a check, none fails in silence. */
@Tag("long")
class ChecksFuzzTest {
  private static final long SEED = 20_240_517;
  private static final Object[] NUMBERS = {
    "", 0, -3, 1, 2, 4, 9, 12.5, 20, 96, 630, 1000, 2000, 3810, 1e-9, 1e9
  };
  private static final Object[] SHARES = {"", 0, -0.1, 0.05, 0.5, 1.5, 40};
  private static final Object[] TIPS = {
    "", "517", "211", "635", "1219", "017", "517/519", "5/17/2024", "205", "299", "n/a"
  };
  private static final Object[] WORDS = {"", "no", "maybe", "=cmd()", "rig", "stucco", "bare"};

  @Test
  void everyLineWithoutFiguresIsStoppedAndEveryMessageIsASentence() {
    Random random = new Random(SEED);
    Catalogue catalogue =
        Case.tables(
            Tables.SPRAYERS,
            Case.row(
                "Sprayer",
                "rig",
                "Greatest flow",
                0.4,
                "Greatest orifice",
                19,
                "Guns",
                2,
                "Hose bore",
                0.2,
                "Hose length",
                300,
                "Rise",
                80,
                "Filter",
                30),
            Tables.COATINGS,
            Case.row("Coating", "glue", "Class", "elastomeric", "Viscosity", 20),
            Tables.TIPS_ON_HAND,
            Case.row("Tip", "517", "Paint sprayed", 35, "Fit", "A"),
            Tables.TIPS_ON_HAND,
            Case.row("Tip", "211", "Count", 1));
    for (UnitSystem system : UnitSystem.values()) {
      for (Catalogue tables : List.of(Catalogue.builtIn(), catalogue)) {
        List<BidLine> lines = new ArrayList<>();
        for (int i = 0; i < 500; i++) {
          lines.add(line(random, system, tables));
        }
        judge(Case.bid(tables, lines.toArray(BidLine[]::new)));
      }
    }
  }

  private static void judge(FilledBid bid) {
    List<Finding> findings = Checks.run(bid);
    Set<Integer> stopped = new HashSet<>();
    for (Finding finding : findings) {
      assertThat(finding.message())
          .matches("[^\\n]*[^.]\\.")
          .doesNotContain("NaN", "Infinity", "null");
      if (finding.severity() == Severity.STOP) {
        stopped.add(finding.spot().row());
      }
    }
    bid.lines()
        .filter(line -> line.work().isIncluded())
        .forEach(
            line ->
                assertThat(stopped.contains(line.line().row()))
                    .as("line %s", line.line())
                    .isEqualTo(!line.isFilled()));
    // one that is left out may wait for what it lacks
    bid.lines()
        .filter(line -> !line.work().isIncluded() && line.isFilled())
        .forEach(
            line ->
                assertThat(stopped).as("line %s", line.line()).doesNotContain(line.line().row()));
  }

  private static BidLine line(Random random, UnitSystem system, Catalogue catalogue) {
    List<Object> cells = new ArrayList<>();
    for (InputColumn column : InputColumn.values()) {
      cells.add(column);
      cells.add(
          switch (column) {
            case SURFACE -> name(random, catalogue, Tables.SURFACES);
            case COATING -> name(random, catalogue, Tables.COATINGS);
            case CONDITION -> name(random, catalogue, Tables.CONDITIONS);
            case TIP -> one(random, TIPS);
            case THINNER -> one(random, SHARES);
            case SPRAYER -> random.nextBoolean() ? "rig" : "";
            default -> column.quantity().isNumber() ? one(random, NUMBERS) : one(random, WORDS);
          });
    }
    return Bids.line(system, cells.toArray());
  }

  private static Object name(Random random, Catalogue catalogue, Tables table) {
    var rows = catalogue.rows(table);
    return random.nextInt(20) == 0
        ? one(random, WORDS)
        : rows.get(random.nextInt(rows.size())).name();
  }

  private static Object one(Random random, Object[] from) {
    return from[random.nextInt(from.length)];
  }
}
