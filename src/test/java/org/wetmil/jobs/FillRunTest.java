package org.wetmil.jobs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetmil.SmallBid;

/** What listeners are told when memory ends. */
class FillRunTest {
  @TempDir private Path folder;

  @Test
  void saysSoWhereNamingTheResultTakesTooMuchMemory() throws IOException {
    Path bid = SmallBid.write(folder.resolve("job.xlsx"));
    Inputs inputs = Inputs.of(List.of(bid));
    Outputs outputs =
        new Outputs(
            null,
            inputs,
            path -> {
              throw new OutOfMemoryError("as a test has it");
            });
    List<String> refused = new ArrayList<>();

    new FillRun((input, output, customer) -> null, List.of(refusals(refused)))
        .fill(inputs, outputs);

    assertThat(refused).containsExactly(bid + ": " + FillRun.OUT_OF_MEMORY);
  }

  private static FillListener refusals(List<String> refused) {
    return new FillListener() {
      @Override
      public void filled(FillReport report) {}

      @Override
      public void refused(Path input, String sentence) {
        refused.add(sentence);
      }

      @Override
      public void fault(Path input, Throwable fault) {
        throw new AssertionError(fault);
      }
    };
  }
}
