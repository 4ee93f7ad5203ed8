package org.wetmil.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Locale;
import org.wetmil.checks.Finding;
import org.wetmil.checks.Severity;
import org.wetmil.jobs.FillListener;
import org.wetmil.jobs.FillReport;
import org.wetmil.jobs.Inputs;
import org.wetmil.quantity.Quantity;
import picocli.CommandLine;

/** Prints what a job reports: findings and closing lines out, refusals and faults as errors. */
final class Printer implements FillListener {
  private final PrintWriter out;
  private final PrintWriter err;
  private final boolean quiet;
  private final boolean trace;

  Printer(CommandLine commandLine, boolean quiet, boolean trace) {
    this.out = commandLine.getOut();
    this.err = commandLine.getErr();
    this.quiet = quiet;
    this.trace = trace;
  }

  @Override
  public void filled(FillReport report) {
    if (!quiet) {
      report.located().forEach(found -> finding(report.input(), found));
    }
    out.println(closing(report));
    out.flush();
  }

  void passedOver(Inputs.PassedOver file) {
    if (!quiet) {
      out.println(file.file() + ": passed over, " + file.why());
    }
  }

  @Override
  public void refused(Path input, String sentence) {
    refused(sentence);
  }

  void refused(String sentence) {
    err.println(sentence);
    err.flush();
  }

  @Override
  public void fault(Path input, RuntimeException fault) {
    err.println(
        input
            + ": a fault of the program, not of the workbook ("
            + fault
            + "); run again with --trace and report it.");
    if (trace) {
      fault.printStackTrace(err);
    }
    err.flush();
  }

  private void finding(Path input, FillReport.Located found) {
    Finding finding = found.finding();
    String sheet = finding.spot().sheet();
    String place = found.address().isEmpty() ? sheet : sheet + "!" + found.address();
    out.printf(
        Locale.ROOT,
        "%s: %s%s: %s: %s%n",
        input,
        place.isEmpty() ? "" : place + ": ",
        finding.severity().name().toLowerCase(Locale.ROOT),
        finding.check(),
        finding.message());
  }

  private static String closing(FillReport report) {
    return String.format(
        Locale.ROOT,
        "%s: %s read, %d filled, %d not filled%s; %s, %s, %s; paint %.1f %s, labour %.1f h",
        report.output(),
        count(report.rows(), "row"),
        report.filled(),
        report.notFilled(),
        report.leftOut() == 0 ? "" : ", " + report.leftOut() + " left out by Include",
        severity(report, Severity.STOP),
        severity(report, Severity.WARNING),
        severity(report, Severity.NOTE),
        report.paint(),
        Quantity.VOLUME.unit(report.system()).symbol(),
        report.hours());
  }

  private static String severity(FillReport report, Severity severity) {
    int count = report.counts().getOrDefault(severity, 0);
    return count(count, severity.name().toLowerCase(Locale.ROOT));
  }

  private static String count(int count, String word) {
    return count + " " + word + (count == 1 ? "" : "s");
  }
}
