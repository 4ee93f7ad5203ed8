package org.wetmil.samples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Our own frozen output: the month is to come out as it did when it was last looked at. */
class ReconciledMonthTest {
  @TempDir Path folder;

  @Test
  void theMonthReconciledAnewEqualsItsTwin() throws IOException {
    Path anew = folder.resolve("anew.xlsx");
    ReconciledMonth.write(anew);

    assertThat(CellDump.differences(CellDump.of(ReconciledMonth.TWIN), CellDump.of(anew)))
        .as("rewrite the twins by the command in DEVELOPERS.md and look at what changed")
        .isEmpty();
  }
}
