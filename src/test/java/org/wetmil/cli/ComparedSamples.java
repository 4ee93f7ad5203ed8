package org.wetmil.cli;

import java.nio.file.Path;
import java.util.List;

/** What the README's command that compares two samples prints. */
public final class ComparedSamples {
  private static final Path SAMPLES = Path.of("sample-workbooks");

  private ComparedSamples() {}

  /** The printed lines but the last, which names the workbook written into the folder. */
  public static List<String> printed(Path folder) {
    Ran ran =
        Ran.of(
            "compare",
            SAMPLES.resolve("clinic-refit.xlsx"),
            SAMPLES.resolve("clinic-refit-second.xlsx"),
            "--force",
            "--out",
            folder.resolve("compared.xlsx"));
    if (ran.code() != ExitCode.DONE) {
      throw new IllegalStateException(String.join("\n", ran.err()));
    }
    return ran.out().subList(0, ran.out().size() - 1);
  }
}
