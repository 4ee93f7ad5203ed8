package org.wetmil.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.StatedRow;
import org.wetmil.catalogue.Tables;
import org.wetmil.quantity.UnitSystem;

/** In which order tips are told, and why those at the edges of a rule were not taken. */
class TipOrderTest {
  private static BidLine line(String surface, Object... more) {
    List<Object> cells = new ArrayList<>();
    cells.addAll(List.of(InputColumn.SURFACE, surface, InputColumn.COATING, "latex"));
    cells.addAll(List.of(more));
    return Bids.line(cells.toArray());
  }

  private static List<TipComparison.Tip> tips(Catalogue tables, BidLine line) {
    return TipComparison.of(tables, Bids.fill(tables, line)).tips();
  }

  private static Map<String, WhyNot> lost(Catalogue tables, BidLine line) {
    return tips(tables, line).stream()
        .filter(tip -> tip.lost().isPresent())
        .collect(Collectors.toMap(tip -> tip.code().code(), tip -> tip.lost().orElseThrow()));
  }

  /**
   * The rules of the choice as numbers, each deciding where those before are alike: inside the
   * range, off the target (half percents, 5 % is on it), wide fan, off the easy pace, orifice.
   */
  private static double[] rank(Setup setup, double targetMil, double easyInPerS) {
    double film = Math.abs(Math.log(setup.wetMil() / targetMil));
    double pace = Math.abs(Math.log(setup.speedInPerS() / easyInPerS));
    return new double[] {
      setup.inside() ? 0 : 1,
      film <= 0.05 ? 0 : Math.round(film / 0.005),
      -setup.tip().fanDigit(),
      Math.round(pace / 0.005),
      setup.tip().orificeThou()
    };
  }

  @ParameterizedTest
  @CsvSource({
    "walls, AREA, 590, 4.5, 30",
    "doors, COUNT, 6, 4.5, 20",
    "ceiling, SPECIFIED_FILM, 2.52, 3.5, 30"
  })
  void theRecommendedTipComesFirstThenThoseComparedBestFirst(
      String surface, InputColumn column, double value, double targetMil, double easyInPerS) {
    List<TipComparison.Tip> tips =
        tips(
            Catalogue.builtIn(),
            line(surface, column, value, InputColumn.LENGTH, 20, InputColumn.WIDTH, 15));
    List<TipComparison.Tip> compared =
        tips.stream().filter(tip -> tip.lost().stream().anyMatch(WhyNot::isCompared)).toList();
    List<TipComparison.Tip> others = tips.subList(1 + compared.size(), tips.size());

    assertThat(tips.get(0).lost()).isEmpty();
    assertThat(tips.subList(1, 1 + compared.size())).isEqualTo(compared);
    assertThat(compared).hasSizeGreaterThan(5);
    assertThat(
            Stream.concat(Stream.of(tips.get(0)), compared.stream())
                .map(tip -> rank(tip.setup(), targetMil, easyInPerS)))
        .isSortedAccordingTo(Arrays::compare);
    assertThat(others)
        .isNotEmpty()
        .noneMatch(tip -> tip.lost().orElseThrow().isCompared())
        .isSortedAccordingTo(
            Comparator.comparing((TipComparison.Tip tip) -> tip.lost().orElseThrow())
                .thenComparing(tip -> tip.code().fanDigit())
                .thenComparing(tip -> tip.code().orificeThou()));
  }

  /** Film and pace are compared last; what falls out before has none to compare. */
  @ParameterizedTest
  @EnumSource(WhyNot.class)
  void onlyFilmFanPaceAndOrificeAreCompared(WhyNot why) {
    assertThat(why.isCompared())
        .isEqualTo(
            List.of(
                    WhyNot.FILM_OUTSIDE,
                    WhyNot.FILM_FURTHER,
                    WhyNot.FINER_NO_NEARER,
                    WhyNot.NARROWER_FAN,
                    WhyNot.PACE_FURTHER,
                    WhyNot.LARGER_ORIFICE)
                .contains(why));
  }

  /** Latex takes 15 to 19 thou on broad work and passes 11 at the least. */
  @Test
  void bothEndsOfTheUsualOrificesAreUsual() {
    Map<String, WhyNot> lost = lost(Catalogue.builtIn(), line("walls", InputColumn.AREA, 590));

    assertThat(lost.get("515")).isEqualTo(WhyNot.PACE_FURTHER);
    assertThat(lost.get("519").isCompared()).isTrue();
    assertThat(lost.get("513")).isEqualTo(WhyNot.FINER_NOT_NEEDED);
    assertThat(lost.get("511")).isEqualTo(WhyNot.FINER_NOT_NEEDED);
    assertThat(lost.get("409")).isEqualTo(WhyNot.BELOW_LEAST);
    assertThat(lost.get("521")).isEqualTo(WhyNot.ABOVE_GREATEST);
  }

  @ParameterizedTest
  @CsvSource({"walls, 515, false", "walls, 513, true", "trim, 411, false", "trim, 409, true"})
  void aTipUnderTheUsualOrificesIsSaidToBe(String surface, String tip, boolean below) {
    FilledLine filled =
        Bids.fill(
            line(surface, InputColumn.TIP, tip, InputColumn.LENGTH, 9, InputColumn.GIRTH, 30));

    assertThat(filled.planned().belowUsual()).isEqualTo(below);
  }

  /** Latex takes 3.5 to 7 mil wet: one coat of 1.26 or 2.52 mil dry is just that. */
  @ParameterizedTest
  @CsvSource({"1.26, true", "2.52, true"})
  void aFilmAtAnEndOfTheRangeIsInside(double dryMil, boolean inside) {
    FilledLine filled =
        Bids.fill(
            line(
                "walls",
                InputColumn.AREA,
                590,
                InputColumn.COATS,
                1,
                InputColumn.SPECIFIED_FILM,
                dryMil));

    assertThat(filled.recommended().inside()).isEqualTo(inside);
    assertThat(filled.recommended().wetMil()).isCloseTo(dryMil / 0.36, within(1e-9));
  }

  private static Catalogue onHand(StatedRow... tips) {
    return Bids.with(Tables.TIPS_ON_HAND, List.of(tips));
  }

  /** Work of 10 in wants a fan of 8 in: 4 and 6 in do not cover it, and the wider is taken. */
  @Test
  void whereNoFanCoversNarrowWorkTheWidestIsTaken() {
    Catalogue tables =
        onHand(Bids.row(0, "Tip", "211"), Bids.row(1, "Tip", "311"), Bids.row(2, "Tip", "313"));
    BidLine trim = line("trim", InputColumn.LENGTH, 20, InputColumn.GIRTH, 10);
    FilledLine filled = Bids.fill(tables, trim);

    assertThat(filled.recommended().tip().fanDigit()).isEqualTo(3);
    assertThat(lost(tables, trim)).containsEntry("211", WhyNot.NOT_WIDEST);
  }

  /**
   * Work of 5 in wants a fan of 4 in: 4 in covers it, 6 in is wider than needed, 2 in too narrow.
   */
  @Test
  void theNarrowestFanThatCoversNarrowWorkIsTaken() {
    Catalogue tables =
        onHand(Bids.row(0, "Tip", "113"), Bids.row(1, "Tip", "213"), Bids.row(2, "Tip", "313"));
    BidLine trim = line("trim", InputColumn.LENGTH, 20, InputColumn.GIRTH, 5);

    assertThat(Bids.fill(tables, trim).recommended().tip().code()).isEqualTo("213");
    assertThat(lost(tables, trim))
        .containsEntry("113", WhyNot.DOES_NOT_COVER)
        .containsEntry("313", WhyNot.WIDER_THAN_NEEDED);
  }

  /** Listed twice, none left of one and no guard for the other: a guard is what is wanting. */
  @Test
  void aTipListedTwiceLacksItsGuardWhereThereIsOneLeft() {
    Catalogue tables =
        Catalogue.builtIn()
            .with(
                Map.of(
                    Tables.TIPS_ON_HAND,
                    List.of(
                        Bids.row(0, "Tip", "415", "Count", 0, "Fit", "A"),
                        Bids.row(1, "Tip", "415", "Count", 1, "Fit", "A"),
                        Bids.row(2, "Tip", "417", "Count", 0),
                        Bids.row(3, "Tip", "417", "Count", 0),
                        Bids.row(4, "Tip", "517")),
                    Tables.GUARDS_ON_HAND,
                    List.of(Bids.row(0, "Guard", "one", "Fits taken", "B"))),
                UnitSystem.US,
                new ArrayList<>());
    Map<String, WhyNot> lost = lost(tables, line("walls", InputColumn.AREA, 590));

    assertThat(lost)
        .containsEntry("415", WhyNot.NO_GUARD)
        .containsEntry("417", WhyNot.NOT_AT_HAND)
        .containsEntry("519", WhyNot.NOT_AT_HAND)
        .doesNotContainKey("517");
  }

  /**
   * 1.25 x 0.2704587746 gpm of 517 are 0.33807347 gpm, and 517 is the greatest of a rating of 17.
   */
  @Test
  void aSprayerDrivesWhatItIsJustRatedFor() {
    StatedRow just =
        Bids.row(0, "Sprayer", "Just", "Greatest flow", 0.3381, "Greatest orifice", 17);
    StatedRow under = Bids.row(1, "Sprayer", "Under", "Greatest flow", 0.3380);
    Catalogue tables = Bids.with(Tables.SPRAYERS, List.of(just, under));
    BidLine walls = line("walls", InputColumn.AREA, 590, InputColumn.SPRAYER, "just");

    assertThat(Bids.fill(tables, walls).recommended().tip().code()).isEqualTo("517");
    assertThat(lost(tables, walls)).containsEntry("519", WhyNot.ABOVE_SPRAYER);
    assertThat(lost(tables, line("walls", InputColumn.AREA, 590, InputColumn.SPRAYER, "under")))
        .containsEntry("517", WhyNot.PAST_PUMP);
  }
}
