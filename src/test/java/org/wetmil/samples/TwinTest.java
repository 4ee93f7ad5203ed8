package org.wetmil.samples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Our own frozen outputs: each filled sample is to come out as it did when it was last looked at.
 */
class TwinTest {
  @TempDir Path folder;

  @ParameterizedTest
  @EnumSource(Samples.class)
  void sampleFilledAnewEqualsItsTwin(Samples sample) throws IOException {
    assertThat(sample.changes(folder))
        .as("rewrite the twins by the command in DEVELOPERS.md and look at what changed")
        .isEmpty();
  }
}
