package org.wetmil.samples;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.wetmil.checks.FrozenFindings;
import org.wetmil.docs.ReadmeTables;
import org.wetmil.jobs.TemplateJob;
import org.wetmil.jobs.explain.GoldenLines;
import org.wetmil.quantity.UnitSystem;

/**
 * Writes the templates, the samples, their twins, frozen explanations and findings, and the
 * README's tables anew and prints what changed. Run by hand; DEVELOPERS.md says how.
 */
public final class RewriteSamples {
  private static final Path TEMPLATES = Path.of("templates");
  private static final int SHOWN = 60;

  private RewriteSamples() {}

  public static void main(String[] args) throws IOException {
    SpringMonth.write();
    for (UnitSystem system : UnitSystem.values()) {
      TemplateJob.write(TEMPLATES.resolve(TemplateJob.usualName(system)), system, true);
    }
    Path folder = Files.createTempDirectory("twins");
    PastBids.write(folder);
    PastBids.audit(PastBids.TWIN);
    for (Samples sample : Samples.values()) {
      sample.write(folder);
      List<String> changes = sample.changes(folder);
      System.out.println(sample.twin() + ": " + changes.size() + " cells changed");
      changes.stream().limit(SHOWN).forEach(change -> System.out.println("  " + change));
      sample.fill(sample.twin());
    }
    ClinicSecond.write(folder);
    ReconciledMonth.write(ReconciledMonth.TWIN);
    GoldenLines.write();
    FrozenFindings.write();
    // last, since it quotes an explanation and a comparison of samples
    ReadmeTables.main(args);
  }
}
