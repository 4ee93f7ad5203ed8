package org.wetmil.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.wetmil.checks.Check;
import org.wetmil.checks.Checks;

class ChecksCommandTest {

  @Test
  void listsEveryCheckWhenNoneIsNamed() {
    Ran ran = Ran.of("checks");

    assertThat(ran.code()).isZero();
    assertThat(ran.out())
        .filteredOn(line -> !line.startsWith(" "))
        .hasSameSizeAs(Checks.ALL)
        .zipSatisfy(
            Checks.ALL.stream().map(Check::id).toList(),
            (line, id) -> assertThat(line).startsWith(id + " ("));
  }

  @Test
  void tellsTheChecksThatAreNamedAlone() {
    Ran ran = Ran.of("checks", "no-tip-code", "hose-loss");

    assertThat(ran.code()).isZero();
    assertThat(ran.err()).isEmpty();
    assertThat(ran.out()).hasSize(6);
    assertThat(ran.out().get(0)).startsWith("no-tip-code (");
    assertThat(ran.out().get(3)).startsWith("hose-loss (warning): ");
    assertThat(ran.out()).isSubsetOf(Ran.of("checks").out());
  }

  @Test
  void aMisspeltNameEndsWithTwoAndSaysWhatMayBeMeant() {
    Ran ran = Ran.of("checks", "hose-loss", "no-tip-kode");

    assertThat(ran.code()).isEqualTo(2);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err().get(0))
        .isEqualTo("No check is called \"no-tip-kode\"; meant may be no-tip-code.");
  }

  @Test
  void aNameLikeNoOtherSaysWhereAllStand() {
    Ran ran = Ran.of("checks", "weather");

    assertThat(ran.code()).isEqualTo(2);
    assertThat(ran.err().get(0))
        .isEqualTo("No check is called \"weather\"; wetmil checks lists all.");
  }

  @Test
  void aShellOffersTheNames() {
    assertThat(Ran.of("completion").out())
        .anyMatch(line -> line.contains("\"no-tip-code\"") && line.contains("\"hose-loss\""));
  }
}
