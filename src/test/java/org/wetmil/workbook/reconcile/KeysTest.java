package org.wetmil.workbook.reconcile;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class KeysTest {

  @ParameterizedTest
  @ValueSource(
      strings = {"1042", "1e3", "5 %", "$12", "3/4", "4 pm", "May 2026", "4 Mär", "TRUE", "(12)"})
  void aNameThatReadsAsSomethingElseIsMadeWords(String name) {
    assertThat(Keys.job(name)).isEqualTo("Job " + name);
    assertThat(Keys.coating(name)).isEqualTo("Coating " + name);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"1042 Clinic", "Mar Vista", "Maybank", "PVA", "E-12 Depot", "May and June", "A1"})
  void aNameThatReadsAsWordsStays(String name) {
    assertThat(Keys.job(name)).isEqualTo(name);
  }

  @Test
  void spacesAreOneAndLongNamesAreCut() {
    assertThat(Keys.job("  Loft \u00a0 north\n")).isEqualTo("Loft north");
    assertThat(Keys.job("x".repeat(300))).hasSize(120);
    assertThat(Keys.coating("")).isEmpty();
  }
}
