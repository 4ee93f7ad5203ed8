package org.wetmil.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import org.wetmil.checks.Finding;
import org.wetmil.checks.Severity;
import org.wetmil.jobs.FillListener;
import org.wetmil.jobs.FillReport;
import org.wetmil.jobs.Inputs;
import org.wetmil.quantity.Count;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;

/** Prints what a job reports: findings and closing lines out, refusals and faults as errors. */
final class Printer implements FillListener {
  private static final Pattern CONTROLS = Pattern.compile("[\\p{Cc}\u2028\u2029]+");

  private final PrintWriter out;
  private final PrintWriter err;
  private final Ansi ansi;
  private final boolean quiet;
  private final boolean trace;

  Printer(CommandLine commandLine, boolean quiet, boolean trace) {
    this.out = commandLine.getOut();
    this.err = commandLine.getErr();
    this.ansi = commandLine.getColorScheme().ansi();
    this.quiet = quiet;
    this.trace = trace;
  }

  @Override
  public void filled(FillReport report) {
    if (!quiet) {
      report.located().forEach(found -> finding(report.input(), found));
    }
    line(out, closing(report));
    if (report.lacksCustomerCopy()) {
      refused(report.input(), noCopy(report));
    } else if (report.customer() != null) {
      line(out, report.customer() + ": for the customer, without formulas");
    }
    out.flush();
  }

  void remark(String sentence) {
    line(out, sentence);
    out.flush();
  }

  void passedOver(Inputs.PassedOver file) {
    if (!quiet) {
      line(err, file.file() + ": passed over, " + file.why() + ".");
    }
  }

  @Override
  public void refused(Path input, String sentence) {
    line(err, sentence);
    err.flush();
  }

  @Override
  public void fault(Path input, Throwable fault) {
    fault(err, input + ": a fault of the program, not of the workbook", fault, trace);
  }

  /** One sentence on a fault, and where in the program it arose if that is asked for. */
  static void fault(PrintWriter err, String what, Throwable fault, boolean trace) {
    line(err, what + " (" + fault + "); run again with --trace and report it.");
    if (trace) {
      fault.printStackTrace(err);
    }
    err.flush();
  }

  /** A line whatever it says: names of files and sheets may hold line breaks and escape codes. */
  static void line(PrintWriter to, String text) {
    to.println(plain(text));
  }

  private static String plain(String text) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (Character.isISOControl(c) || c == '\u2028' || c == '\u2029') {
        return CONTROLS.matcher(text).replaceAll(" ");
      }
    }
    return text;
  }

  private void finding(Path input, FillReport.Located found) {
    Finding finding = found.finding();
    String sheet = finding.spot().sheet();
    String place = found.address().isEmpty() ? sheet : sheet + "!" + found.address();
    finding(out, ansi, input + ": " + (place.isEmpty() ? "" : place + ": "), finding);
  }

  /**
   * A finding on one line, its severity in its colour.
   *
   * @param where the place that it is at, as the line begins
   */
  static void finding(PrintWriter to, Ansi ansi, String where, Finding finding) {
    String what = ": " + finding.check() + ": " + finding.message();
    to.println(plain(where) + SeverityWord.of(finding.severity(), ansi) + plain(what));
  }

  /** How many findings of a severity there are, in words. */
  static String count(Map<Severity, Integer> counts, Severity severity) {
    return Count.of(counts.getOrDefault(severity, 0), severity.name().toLowerCase(Locale.ROOT));
  }

  private static String noCopy(FillReport report) {
    List<String> missing = report.price().missing();
    return "%s: no copy for the customer without a price; state %s."
        .formatted(
            report.input(),
            missing.isEmpty()
                ? "the setting Labour rate and the prices of the coatings"
                : String.join(", ", missing));
  }

  private static String closing(FillReport report) {
    return String.format(
        Locale.ROOT,
        "%s: %s read, %d filled, %d not filled%s; %s, %s, %s; paint %.1f %s, labour %.1f h%s",
        report.output(),
        Count.of(report.rows(), "row"),
        report.filled(),
        report.notFilled(),
        report.leftOut() == 0 ? "" : ", " + report.leftOut() + " left out by Include",
        count(report.counts(), Severity.STOP),
        count(report.counts(), Severity.WARNING),
        count(report.counts(), Severity.NOTE),
        report.paint(),
        report.volumeUnit(),
        report.hours(),
        switching(report));
  }

  /** What the recommended tips would save against the planned ones. */
  private static String switching(FillReport report) {
    int lines = report.switching().lines();
    return lines == 0
        ? ""
        : String.format(
            Locale.ROOT,
            "; recommended instead of planned tips on %s: %s, %s",
            Count.of(lines, "line"),
            saved("paint", report.volume(report.switching().savedGal()), report.volumeUnit()),
            saved("spraying", report.switching().savedHours(), "h"));
  }

  private static String saved(String what, double amount, String unit) {
    String shown = String.format(Locale.ROOT, "%.1f", Math.abs(amount));
    return shown.equals("0.0")
        ? what + " the same"
        : what + " " + shown + " " + unit + (amount < 0 ? " more" : " less");
  }
}
