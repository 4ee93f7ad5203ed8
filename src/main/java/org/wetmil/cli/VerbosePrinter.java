package org.wetmil.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import org.wetmil.jobs.FillListener;
import org.wetmil.jobs.FillReport;

/** Says how each workbook was read and how long it took, as errors: it is no result. */
final class VerbosePrinter implements FillListener {
  private final FillListener printer;
  private final PrintWriter err;
  private final ToDoubleFunction<Path> seconds;

  /**
   * @param printer prints what came of each workbook
   * @param seconds what each took, s
   */
  VerbosePrinter(FillListener printer, PrintWriter err, ToDoubleFunction<Path> seconds) {
    this.printer = printer;
    this.err = err;
    this.seconds = seconds;
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
    Printer.line(
        err, String.format(Locale.ROOT, "%s: took %.2f s", input, seconds.applyAsDouble(input)));
    err.flush();
  }
}
