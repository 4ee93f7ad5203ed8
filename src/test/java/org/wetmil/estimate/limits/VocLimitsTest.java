package org.wetmil.estimate.limits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.wetmil.estimate.InputColumn.AREA;
import static org.wetmil.estimate.InputColumn.COATING;
import static org.wetmil.estimate.InputColumn.INCLUDE;
import static org.wetmil.estimate.InputColumn.SURFACE;
import static org.wetmil.estimate.InputColumn.THINNER;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wetmil.Published;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.StatedRow;
import org.wetmil.catalogue.TableProblem;
import org.wetmil.catalogue.Tables;
import org.wetmil.estimate.BidLine;
import org.wetmil.estimate.Bids;
import org.wetmil.estimate.Estimator;
import org.wetmil.quantity.Unit;
import org.wetmil.quantity.UnitSystem;

class VocLimitsTest {

  static List<Published.Row> limits() {
    return Published.rows("voc-limits-lb-per-gal.csv");
  }

  @ParameterizedTest
  @MethodSource("limits")
  void builtInLimitsComeToThePoundsPrintedBesideThem(Published.Row row) {
    double limit =
        Catalogue.builtIn().table(Tables.VOC_LIMITS).get(row.text("category")).number("Limit");

    row.check(Unit.GRAM_PER_LITRE.to(Unit.POUND_PER_GALLON, limit));
  }

  @Test
  void everyLimitSaysItsRuleItsDayAndWhereItWasSeen() {
    assertThat(Catalogue.builtIn().rows(Tables.VOC_LIMITS))
        .hasSize(69)
        .allSatisfy(
            row -> {
              assertThat(row.text("Rule")).isIn("40 CFR 59 subpart D", "2004/42/CE");
              assertThat(row.text("From")).matches("\\d{4}-\\d\\d-\\d\\d.*");
              assertThat(row.text("Source")).isNotBlank();
              assertThat(row.text("Counted")).isIn("less water", "ready to use");
            });
  }

  @Test
  void coatingIsJudgedAsThinnedMostOnAnyLineThatCounts() {
    List<VocUse> uses =
        uses(
            Map.of(),
            List.of("VOC", 350, "VOC category", "US nonflat"),
            wall(THINNER, 0.05),
            wall(THINNER, 0.1),
            wall(THINNER, 0.2, INCLUDE, "no"));

    assertThat(uses).hasSize(1);
    assertThat(uses.get(0).thinnerShare()).isEqualTo(0.1);
    // oil-based paint is thinned with a solvent of 800 g/L
    assertThat(uses.get(0).thinnedGL()).isCloseTo((350 + 80) / 1.1, within(1e-9));
    assertThat(uses.get(0).isOver()).isTrue();
  }

  @Test
  void eachCategoryCountsInItsOwnWay() {
    List<VocUse> uses =
        uses(
            Map.of(),
            List.of(
                "VOC",
                370,
                "VOC ready",
                280,
                "VOC category",
                "US nonflat; EU d trim and cladding paint solvent-borne"),
            wall());

    assertThat(uses).extracting(VocUse::suppliedGL).containsExactly(370.0, 280.0);
    assertThat(uses).extracting(VocUse::limitGL).containsExactly(380.0, 300.0);
    assertThat(uses).noneMatch(VocUse::isOver);
  }

  @Test
  void rowOfOnesOwnIsALimitToo() {
    StatedRow county =
        Bids.row(0, "Category", "county nonflat", "Limit", 100, "Counted", "less water");
    List<VocUse> uses =
        uses(
            Map.of(Tables.VOC_LIMITS, List.of(county)),
            List.of("VOC", 120, "VOC category", "US nonflat; County nonflat"),
            wall());

    assertThat(uses).extracting(VocUse::isOver).containsExactly(false, true);
  }

  @Test
  void coatingWithoutACategoryIsNotJudged() {
    assertThat(uses(Map.of(), List.of("VOC", 900), wall())).isEmpty();
  }

  private static List<VocUse> uses(
      Map<Tables, List<StatedRow>> more, List<Object> coating, BidLine... lines) {
    List<Object> cells = new ArrayList<>(List.of("Coating", "oil-based"));
    cells.addAll(coating);
    Map<Tables, List<StatedRow>> stated = new EnumMap<>(Tables.class);
    stated.putAll(more);
    stated.put(Tables.COATINGS, List.of(Bids.row(1, cells.toArray())));
    List<TableProblem> problems = new ArrayList<>();
    Catalogue catalogue = Catalogue.builtIn().with(stated, UnitSystem.US, problems);
    assertThat(problems).isEmpty();
    return VocUse.all(Estimator.fill(Bids.bid(catalogue, UnitSystem.US, lines)));
  }

  private static BidLine wall(Object... more) {
    List<Object> cells =
        new ArrayList<>(List.of(SURFACE, "walls", COATING, "oil-based", AREA, 800));
    cells.addAll(List.of(more));
    return Bids.line(cells.toArray());
  }
}
