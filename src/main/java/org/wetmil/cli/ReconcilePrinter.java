package org.wetmil.cli;

import java.io.PrintWriter;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.wetmil.checks.Finding;
import org.wetmil.checks.Severity;
import org.wetmil.jobs.ReconcileReport;
import org.wetmil.quantity.Count;
import org.wetmil.reconcile.Place;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;

/** Prints what came of comparing purchases with bids, and says how the run ended. */
final class ReconcilePrinter {
  private final PrintWriter out;
  private final PrintWriter err;
  private final Ansi ansi;
  private final boolean quiet;
  private final Severity failOn;

  /**
   * @param failOn least severity that fails a run; null when findings do not
   */
  ReconcilePrinter(CommandLine commandLine, boolean quiet, Severity failOn) {
    this.out = commandLine.getOut();
    this.err = commandLine.getErr();
    this.ansi = commandLine.getColorScheme().ansi();
    this.quiet = quiet;
    this.failOn = failOn;
  }

  /** Prints a report; gives the exit code. */
  int print(ReconcileReport report) {
    report.refusals().forEach(sentence -> Printer.line(err, sentence));
    err.flush();
    if (!quiet) {
      report.notices().forEach(notice -> Printer.line(out, notice));
      report.findings().forEach(this::finding);
    }
    if (report.isWritten()) {
      Printer.line(out, closing(report));
    }
    out.flush();
    if (!report.refusals().isEmpty()) {
      return ExitCode.UNUSABLE;
    }
    boolean fails =
        failOn != null
            && report.findings().stream()
                .anyMatch(finding -> finding.severity().compareTo(failOn) >= 0);
    return fails ? ExitCode.FINDINGS : ExitCode.DONE;
  }

  private void finding(Finding finding) {
    String file = finding.spot().sheet();
    String line = finding.spot().row() > 0 ? ":" + finding.spot().row() : "";
    Printer.finding(out, ansi, file.isEmpty() ? "" : file + line + ": ", finding);
  }

  private static String closing(ReconcileReport report) {
    String findings =
        Stream.of(Severity.STOP, Severity.WARNING, Severity.NOTE)
            .map(severity -> Printer.count(report.counts(), severity))
            .collect(Collectors.joining(", "));
    return String.format(
        Locale.ROOT,
        "%s: %s read, %d matched, %d unmatched, %d outside the period, %d left out; %s",
        report.output(),
        Count.of(report.result().read().lines(), "line"),
        report.lines(Place.MATCHED),
        report.lines(Place.UNMATCHED),
        report.lines(Place.OUTSIDE),
        report.lines(Place.LEFT_OUT),
        findings);
  }
}
