package org.wetmil.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.Callable;
import org.wetmil.checks.Severity;
import org.wetmil.jobs.ReconcileJob;
import org.wetmil.jobs.ReconcileReport;
import org.wetmil.jobs.ReconcileRequest;
import org.wetmil.ledger.DateOrder;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code wetmil reconcile}: purchases against bids. */
@Command(name = "reconcile", description = "Compares what was bought with what was bid.")
final class ReconcileCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(arity = "1..*", paramLabel = "BID", description = "Bids, or folders of bids.")
  private List<Path> bids;

  @Option(
      names = "--purchases",
      required = true,
      arity = "1..*",
      paramLabel = "LEDGER",
      description = "Ledgers as comma-, semicolon- or tab-separated text.")
  private List<Path> purchases;

  @Option(
      names = "--items",
      paramLabel = "FILE",
      description =
          "Your table of Item and Coating, as text or a workbook; it may have a sheet Settings.")
  private Path items;

  @Option(names = "--from", paramLabel = "YYYY-MM-DD", description = "First day that counts.")
  private LocalDate from;

  @Option(names = "--to", paramLabel = "YYYY-MM-DD", description = "Last day that counts.")
  private LocalDate to;

  @Option(
      names = "--date-order",
      paramLabel = "month-first|day-first",
      converter = DateOrderWord.class,
      description = "How dates such as 3/4/26 are meant; found from the dates when not given.")
  private DateOrder order;

  @Option(
      names = "--out",
      paramLabel = "FILE",
      description = "The file to write; when not given, BID-reconciled.xlsx beside the first bid.")
  private Path out;

  @Option(names = "--force", description = "Write over an older output.")
  private boolean force;

  @Option(names = "--quiet", description = "Print only the closing line.")
  private boolean quiet;

  @Option(
      names = "--fail-on",
      paramLabel = "SEVERITY",
      description = "End with code 1 when a finding is at or above: note, warning, stop.")
  private Severity failOn;

  @Option(names = "--date", paramLabel = "YYYY-MM-DD", description = "The date printed on Basis.")
  private LocalDate date = LocalDate.now();

  @Override
  public Integer call() {
    if (from != null && to != null && to.isBefore(from)) {
      throw new ParameterException(spec.commandLine(), "--to is before --from.");
    }
    ReconcileReport report =
        ReconcileJob.run(
            new ReconcileRequest(
                bids,
                purchases,
                items,
                from,
                to,
                order,
                out,
                force,
                date,
                ProjectVersion.version()));
    return new ReconcilePrinter(spec.commandLine(), quiet, failOn).print(report);
  }
}
