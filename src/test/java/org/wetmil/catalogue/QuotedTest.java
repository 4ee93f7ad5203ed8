package org.wetmil.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class QuotedTest {
  @Test
  void theTextOfACellIsQuotedOnOneLineAndCutShort() {
    assertThat(Quoted.of(" two\nlines ")).isEqualTo("\"two lines\"");
    assertThat(Quoted.of("x".repeat(50))).isEqualTo("\"" + "x".repeat(40) + "...\"");
  }

  @Test
  void whatHoldsQuotesItselfStandsInBrackets() {
    assertThat(Quoted.of("22' 6\"")).isEqualTo("[22' 6\"]");
    assertThat(Quoted.of("the \"blue\" room")).isEqualTo("[the \"blue\" room]");
  }
}
