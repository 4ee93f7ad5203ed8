package org.wetmil.checks;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import org.junit.jupiter.api.Test;

/** Place, figures and words of every finding are those that were read over. */
class FrozenFindingsTest {

  @Test
  void findingsAreThoseThatWereReadOver() throws IOException {
    assertThat(FrozenFindings.all())
        .as("mvn -q test-compile exec:java@samples writes them anew")
        .containsExactlyElementsOf(Files.readAllLines(FrozenFindings.FILE));
  }
}
