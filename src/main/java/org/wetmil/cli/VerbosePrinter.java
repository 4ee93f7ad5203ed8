package org.wetmil.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Locale;
import java.util.function.LongSupplier;
import org.wetmil.jobs.FillListener;
import org.wetmil.jobs.FillReport;

/** Says how each workbook was read and how long it took, as errors: it is no result. */
final class VerbosePrinter implements FillListener {
  private static final double NANOS = 1e9;

  private final FillListener printer;
  private final PrintWriter err;
  private final LongSupplier clockNs;
  private long begunNs;

  /**
   * @param printer prints what came of each workbook
   * @param clockNs a clock, ns
   */
  VerbosePrinter(FillListener printer, PrintWriter err, LongSupplier clockNs) {
    this.printer = printer;
    this.err = err;
    this.clockNs = clockNs;
    this.begunNs = clockNs.getAsLong();
  }

  @Override
  public void filled(FillReport report) {
    report.howRead().forEach(sentence -> Printer.line(err, report.input() + ": " + sentence));
    err.flush();
    printer.filled(report);
    took(report.input());
  }

  @Override
  public void refused(Path input, String sentence) {
    printer.refused(input, sentence);
    took(input);
  }

  @Override
  public void fault(Path input, Throwable fault) {
    printer.fault(input, fault);
    took(input);
  }

  private void took(Path input) {
    long nowNs = clockNs.getAsLong();
    double seconds = (nowNs - begunNs) / NANOS;
    begunNs = nowNs;
    Printer.line(err, String.format(Locale.ROOT, "%s: took %.2f s", input, seconds));
    err.flush();
  }
}
