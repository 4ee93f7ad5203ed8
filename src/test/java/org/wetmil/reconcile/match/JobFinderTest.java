package org.wetmil.reconcile.match;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class JobFinderTest {
  private static final JobFinder JOBS =
      new JobFinder(List.of("1042 Clinic refit", "1043 - Depot", "Harbour shed", "2001 Depot"));

  @ParameterizedTest
  @ValueSource(
      strings = {
        "1042 Clinic refit",
        "1042",
        "clinic  refit",
        "1042: Clinic Refit",
        "1042 clinic (phase 2)",
        "Northside Holding:1042 Clinic refit",
        "Northside Holding:Clinic refit",
        "Northside Holding:1042 Clinic refit:Paint"
      })
  void aJobIsFoundByNumberNameOrBoth(String text) {
    assertThat(JOBS.find(text)).contains("1042 Clinic refit");
  }

  @Test
  void aNameThatTwoJobsShareNeedsItsNumber() {
    assertThat(JOBS.find("Depot")).isEmpty();
    assertThat(JOBS.find("1043")).contains("1043 - Depot");
    assertThat(JOBS.find("2001 Depot")).contains("2001 Depot");
  }

  @Test
  void aRemarkInBracketsIsNoPartOfAName() {
    assertThat(new JobFinder(List.of("Clinic refit (invented)")).find("clinic refit"))
        .contains("Clinic refit (invented)");
  }

  @Test
  void nothingIsGuessed() {
    assertThat(JOBS.find("")).isEmpty();
    assertThat(JOBS.find("1044")).isEmpty();
    assertThat(JOBS.find("Clinic")).isEmpty();
    assertThat(JOBS.nearest("Harbor shed")).containsExactly("Harbour shed");
    assertThat(JOBS.nearest("")).isEmpty();
  }
}
