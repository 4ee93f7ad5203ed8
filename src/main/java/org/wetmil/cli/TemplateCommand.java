package org.wetmil.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.wetmil.jobs.TemplateJob;
import org.wetmil.quantity.UnitSystem;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code wetmil template}: a blank bid workbook. */
@Command(name = "template", description = "Writes a blank bid workbook.")
final class TemplateCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Option(
      names = "--units",
      paramLabel = "us|metric",
      defaultValue = "us",
      description = "The units of its headings; us when not given.")
  private UnitSystem units;

  @Option(
      names = "--out",
      paramLabel = "FILE",
      description =
          "The file to write, ending in .xlsx; when not given, bid-us.xlsx or bid-metric.xlsx"
              + " in the current folder.")
  private Path out;

  @Option(names = "--force", description = "Write over an older file.")
  private boolean force;

  @Override
  public Integer call() {
    Path file = out == null ? TemplateJob.usualName(units) : out;
    TemplateJob.write(file, units, force);
    spec.commandLine().getOut().println(file + ": written");
    return ExitCode.DONE;
  }
}
