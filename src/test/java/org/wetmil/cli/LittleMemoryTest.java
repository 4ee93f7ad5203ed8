package org.wetmil.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetmil.SmallBid;
import org.wetmil.bench.BigBid;

class LittleMemoryTest {
  @TempDir Path folder;
  @TempDir Path logs;

  @Test
  void aBidThatNeedsMoreIsSaidAndTheNextIsFilled() throws IOException, InterruptedException {
    Path large = BigBid.write(folder.resolve("a-large.xlsx"), 10_000);
    Path small = SmallBid.write(folder.resolve("b-small.xlsx"));

    Program.Ended run =
        Program.start(logs, List.of("-Xmx24m"), "", "fill", "--quiet", large, small).end();

    assertThat(run.err())
        .singleElement()
        .asString()
        .contains("a-large.xlsx", "more memory than Java was given", "-Xmx");
    assertThat(run.code()).isEqualTo(3);
    assertThat(Machine.names(folder))
        .containsExactlyInAnyOrder("a-large.xlsx", "b-small.xlsx", "b-small-filled.xlsx");
  }
}
