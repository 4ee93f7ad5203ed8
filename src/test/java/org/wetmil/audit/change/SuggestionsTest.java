package org.wetmil.audit.change;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.wetmil.audit.PastBids.line;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.wetmil.audit.PastBids;
import org.wetmil.audit.model.Change;
import org.wetmil.audit.model.LeaveOneOut;
import org.wetmil.audit.past.Measure;
import org.wetmil.audit.past.Observations;
import org.wetmil.audit.past.PastLine;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Coating;
import org.wetmil.catalogue.Surface;

class SuggestionsTest {
  private static final Catalogue TABLES = Catalogue.builtIn();
  private static final Surface WALLS = TABLES.surface("walls").orNull();
  private static final Coating LATEX = TABLES.coating("latex").orNull();

  @Test
  void aPaintFactorGoesToTheLossOfTheCoatingOnTheSurface() {
    Suggestion loss = paint(1.25, PaintTable.LOSS);
    assertThat(loss.table()).isEqualTo("Losses");
    assertThat(loss.coating()).isEqualTo("latex");
    assertThat(loss.surface()).isEqualTo("walls");
    assertThat(loss.now()).isEqualTo(WALLS.stick());
    assertThat(loss.suggested()).isCloseTo(WALLS.stick() / 1.25, within(1e-12));
    assertThat(loss.held()).isFalse();
  }

  @Test
  void noMorePaintCanStayOnTheWorkThanIsSprayed() {
    Suggestion loss = paint(0.60, PaintTable.LOSS);
    assertThat(loss.suggested() * WALLS.hit()).isCloseTo(0.95, within(1e-12));
    assertThat(loss.held()).isTrue();
  }

  @Test
  void theOwnerMayNameTheFilmInstead() {
    Suggestion film = paint(1.1, PaintTable.FILM);
    assertThat(film.table()).isEqualTo("Coatings");
    assertThat(film.suggested()).isCloseTo(1.1 * LATEX.wetTargetMil(), within(1e-12));
    assertThat(paint(3, PaintTable.FILM).suggested()).isEqualTo(LATEX.wetMaxMil());
  }

  @Test
  void theOwnerMayNameTheAreaInstead() {
    Suggestion area = paint(1.1, PaintTable.AREA);
    assertThat(area.table()).isEqualTo("Surfaces");
    assertThat(area.suggested()).isCloseTo(1.1 * WALLS.factor(), within(1e-12));
    assertThat(area.coating()).isEmpty();
  }

  @Test
  void aFactorOnHoursIsCarriedByTheSprayingAlone() {
    // Half the hours are spraying, so 20 % on all of them is 40 % on the spraying.
    Suggestion pace =
        only(Suggestions.of(Optional.empty(), hours(1, 1.2), TABLES, PaintTable.LOSS));
    assertThat(pace.column()).isEqualTo("Trigger share");
    assertThat(pace.suggested()).isCloseTo(WALLS.triggerShare() / 1.4, within(1e-12));
  }

  @Test
  void aPaintFactorWrittenAtTheSameTimeSlowsTheGunAlready() {
    List<Suggestion> both = Suggestions.of(paint(1.4), hours(1.4, 1.2), TABLES, PaintTable.LOSS);
    assertThat(both).hasSize(2);
    assertThat(both.get(1).suggested()).isCloseTo(WALLS.triggerShare(), within(1e-12));
  }

  @Test
  void hoursBelowWhatTheOtherTasksTakeAreHeldAtTheBound() {
    Suggestion pace =
        only(Suggestions.of(Optional.empty(), hours(1, 0.4), TABLES, PaintTable.LOSS));
    assertThat(pace.suggested()).isEqualTo(1);
    assertThat(pace.held()).isTrue();
  }

  @Test
  void aCrewsFactorIsPutOnByHand() {
    PastBids bids = new PastBids();
    List<PastLine> lines = List.of(line("latex", "walls", 10));
    for (int i = 0; i < 6; i++) {
      bids.byJob("Alder", lines, 1, 1.0 + i * 0.01).byJob("Birch", lines, 1, 1.3 + i * 0.01);
    }
    List<Suggestion> suggestions =
        Suggestions.of(
            Optional.empty(), proven(bids, Measure.HOURS, Change.BY_HAND), TABLES, PaintTable.LOSS);
    assertThat(suggestions)
        .filteredOn(Suggestion::isByHand)
        .extracting(Suggestion::crew)
        .containsExactly("Alder", "Birch");
    assertThat(suggestions).filteredOn(s -> s.crew().equals("Birch")).allMatch(s -> s.factor() > 1);
  }

  @Test
  void withoutAProvenChangeNothingIsSuggested() {
    assertThat(Suggestions.of(Optional.empty(), Optional.empty(), TABLES, PaintTable.LOSS))
        .isEmpty();
  }

  private static Suggestion paint(double ratio, PaintTable table) {
    return only(Suggestions.of(paint(ratio), Optional.empty(), TABLES, table));
  }

  private static Suggestion only(List<Suggestion> suggestions) {
    assertThat(suggestions).hasSize(1);
    return suggestions.get(0);
  }

  private static Optional<Suggestions.Proven> paint(double ratio) {
    return proven(six(ratio, 1), Measure.PAINT, Change.COMMON);
  }

  private static Optional<Suggestions.Proven> hours(double paint, double ratio) {
    return proven(six(paint, ratio), Measure.HOURS, Change.COMMON);
  }

  private static PastBids six(double paint, double hours) {
    PastBids bids = new PastBids();
    for (int i = 0; i < 6; i++) {
      bids.byJob("A", List.of(line("latex", "walls", 10)), paint, hours);
    }
    return bids;
  }

  private static Optional<Suggestions.Proven> proven(
      PastBids bids, Measure measure, Change change) {
    Observations observations = Observations.of(measure, bids.list());
    return Optional.of(new Suggestions.Proven(observations, LeaveOneOut.of(observations), change));
  }
}
