package org.wetmil.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.concurrent.Callable;
import org.wetmil.audit.change.PaintTable;
import org.wetmil.jobs.audit.AuditJob;
import org.wetmil.jobs.audit.AuditOptions;
import org.wetmil.jobs.audit.AuditReport;
import org.wetmil.quantity.UnitSystem;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code wetmil audit}: what past bids say about the next one. */
@Command(
    name = "audit",
    description = "Audits a folder of past bids: were they right, and what to change.")
final class AuditCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "FOLDER", description = "The folder of bid workbooks.")
  private Path folder;

  @Option(
      names = "--actuals",
      paramLabel = "FILE",
      description =
          "A CSV file of how jobs came out: job, coating, gallons, hours, date, crew, estimator.")
  private Path actuals;

  @Option(
      names = "--tables",
      paramLabel = "FILE",
      description = "A workbook with the tables that you bid with now; the built-in ones if none.")
  private Path today;

  @Option(
      names = "--out",
      paramLabel = "FILE",
      description = "The file to write; audit.xlsx in the folder above when not given.")
  private Path out;

  @Option(names = "--force", description = "Write over an older output.")
  private boolean force;

  @Option(
      names = "--units",
      paramLabel = "us|metric",
      defaultValue = "us",
      description = "The units of the result; us when not given.")
  private UnitSystem units;

  @Option(
      names = "--paint-factor",
      paramLabel = "TABLE",
      defaultValue = "loss",
      description = "Where a paint factor goes: loss (when not given), film or area.")
  private PaintTable paintTable;

  @Option(
      names = "--write-tables",
      paramLabel = "FILE",
      description = "Write the suggested figures as sheets for the next bid: fill --tables FILE.")
  private Path tables;

  @Option(
      names = "--date",
      paramLabel = "YYYY-MM-DD",
      description = "The date printed on the result; today when not given.")
  private LocalDate date = LocalDate.now();

  @Override
  public Integer call() {
    Path output = out == null ? AuditJob.usualName(folder) : out;
    AuditOptions options =
        new AuditOptions(
            actuals, today, units, paintTable, tables, date, ProjectVersion.version(), force);
    PrintWriter err = spec.commandLine().getErr();
    AuditReport report;
    try (Progress progress = new Progress(err, Progress.isWatched(), "reading bids")) {
      report = new AuditJob(options, progress).audit(folder, output);
    }
    new AuditPrinter(spec.commandLine().getOut(), err).print(report, output);
    if (tables != null) {
      spec.commandLine()
          .getOut()
          .println(
              report.figures() == 0
                  ? "no figure to write: " + tables + " is not made"
                  : tables + ": " + report.figures() + " figures");
    }
    return report.unreadable().isEmpty() ? ExitCode.DONE : ExitCode.UNUSABLE;
  }
}
