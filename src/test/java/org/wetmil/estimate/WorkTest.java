package org.wetmil.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Setting;
import org.wetmil.catalogue.Tables;

/** What a line says is to be painted, with its defaults. */
class WorkTest {

  private static Work work(Object... cells) {
    return Work.of(Bids.line(cells), Catalogue.builtIn());
  }

  @ParameterizedTest
  @CsvSource({
    "'', true, true",
    "yes, true, true",
    "Y, true, true",
    "1, true, true",
    "true, true, true",
    "x, true, true",
    "ja, true, true",
    "no, true, false",
    "N, true, false",
    "0, true, false",
    "false, true, false",
    "nein, true, false",
    "perhaps, false, true"
  })
  void includeLeavesOutWhatSaysNoAndKnowsItsWords(String word, boolean known, boolean included) {
    Work work = work(InputColumn.INCLUDE, word);

    assertThat(work.isIncludeKnown()).isEqualTo(known);
    assertThat(work.isIncluded()).isEqualTo(included);
  }

  @Test
  void wordsOfBackRollAreKnown() {
    assertThat(work().isRollingKnown()).isTrue();
    assertThat(work(InputColumn.BACK_ROLL, "All coats").isRollingKnown()).isTrue();
    assertThat(work(InputColumn.BACK_ROLL, "nie").isRollingKnown()).isTrue();
    assertThat(work(InputColumn.BACK_ROLL, "sometimes").isRollingKnown()).isFalse();
  }

  @Test
  void whatIsNotStatedHasItsDefault() {
    assertThat(work().thinnerShare()).isZero();
    assertThat(work(InputColumn.THINNER, 0.1).thinnerShare()).isEqualTo(0.1);
    assertThat(work(InputColumn.THINNER, -0.1).thinnerShare()).isZero();
    assertThat(work(InputColumn.SURFACE, "door frames").girthIn()).isEqualTo(12);
    assertThat(work(InputColumn.SURFACE, "door frames", InputColumn.GIRTH, 8).girthIn())
        .isEqualTo(8);
    assertThat(work(InputColumn.SURFACE, "pipes").girthIn()).isNaN();
  }

  @ParameterizedTest
  @CsvSource({"'', false", "smooth, false", "stucco, true", "velvet, false"})
  void aTextureOtherThanSmoothIsRough(String texture, boolean rough) {
    assertThat(work(InputColumn.TEXTURE, texture).isRough()).isEqualTo(rough);
  }

  @Test
  void aTipIsPlannedWhereItCanBeRead() {
    InputValue date = InputValue.fault(InputValue.State.DATE, "5/17/2024", "a tip");

    assertThat(work(InputColumn.TIP, "517").planned().code()).isEqualTo("517");
    assertThat(work(InputColumn.TIP, "seventeen").planned()).isNull();
    assertThat(work().planned()).isNull();
    assertThat(
            Work.of(Bids.changed(Bids.line(), InputColumn.TIP, date), Catalogue.builtIn())
                .planned())
        .isNull();
  }

  @Test
  void namesThatAreNotKnownAreNull() {
    Work work =
        work(
            InputColumn.COATING, "moss",
            InputColumn.SURFACE, "moat",
            InputColumn.CONDITION, "sad",
            InputColumn.SPRAYER, "whale",
            InputColumn.SHAPE, "blob");

    assertThat(work.coating()).isNull();
    assertThat(work.surface()).isNull();
    assertThat(work.condition()).isNull();
    assertThat(work.sprayer()).isNull();
    assertThat(work.shape()).isNull();
    assertThat(work(InputColumn.CONDITION, "bare").condition()).isNotNull();
    assertThat(work(InputColumn.SHAPE, "louvred").shape()).isNotNull();
  }

  /** Density (1.15 + 0.1 x 0.80) / 1.1 = 1.118181818 kg/L in oil-based paint thinned by 10 %. */
  @Test
  void theSameLineDoneWithAnotherCoatingKeepsAllElse() {
    Work latex = work(InputColumn.COATING, "latex", InputColumn.THINNER, 0.1);
    Work oil = latex.with(work(InputColumn.COATING, "alkyd").coating());

    assertThat(oil.coating().name()).isEqualTo("oil-based");
    assertThat(oil.sprayedKgPerL()).isCloseTo(1.118181818, withinPercentage(1e-7));
    assertThat(latex.sprayedKgPerL()).isCloseTo((1.3 + 0.1) / 1.1, within(1e-12));
    assertThat(oil.line()).isSameAs(latex.line());
    assertThat(oil.surfaceFound()).isEqualTo(latex.surfaceFound());
    assertThat(oil.tipRead()).isEqualTo(latex.tipRead());
  }

  /** What the hose holds is counted by itself, so that pails keep less. */
  @Test
  void paintLeftInPailsAloneWhereTheHoseIsStated() {
    Catalogue tables =
        Bids.with(
            Tables.SPRAYERS,
            List.of(
                Bids.row(0, "Sprayer", "Hosed", "Hose bore", 0.25, "Hose length", 50),
                Bids.row(1, "Sprayer", "Half", "Hose length", 50)));

    assertThat(Work.of(Bids.line(InputColumn.SPRAYER, "hosed"), tables).waste())
        .isEqualTo(Setting.PAIL_WASTE);
    assertThat(Work.of(Bids.line(InputColumn.SPRAYER, "half"), tables).waste())
        .isEqualTo(Setting.WASTE);
    assertThat(work().waste()).isEqualTo(Setting.WASTE);
  }
}
