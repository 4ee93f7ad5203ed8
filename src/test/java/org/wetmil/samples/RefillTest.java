package org.wetmil.samples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.wetmil.jobs.FillJob;

/** A filled sample that is filled again. */
class RefillTest {
  @TempDir Path folder;

  @ParameterizedTest
  @EnumSource(Samples.class)
  void nothingChangesOnTheSameDayButTheListOfFills(Samples sample) throws IOException {
    Path again = folder.resolve("again.xlsx");
    new FillJob(Samples.DATE, "sample", false).fill(sample.twin(), again);

    Map<String, String> before = CellDump.of(sample.twin());
    List<String> differences = CellDump.differences(before, CellDump.of(again));

    assertThat(differences)
        // the title of the summary says from which file it was filled
        .filteredOn(difference -> !difference.startsWith("Summary!A2: Summary of the bid, filled"))
        .as("one line of date, program, input and its fingerprint")
        .hasSize(4)
        .allMatch(difference -> difference.matches("Basis![A-D]\\d+: null became .*"));
  }
}
