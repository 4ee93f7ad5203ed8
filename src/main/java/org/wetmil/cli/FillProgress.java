package org.wetmil.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import org.wetmil.jobs.FillListener;
import org.wetmil.jobs.FillReport;
import org.wetmil.jobs.Inputs;

/** Counts the workbooks of a run, and lets another listener print without a bar in its lines. */
final class FillProgress implements FillListener {
  /** Less is done before a bar could be read. */
  private static final long SHORT_BYTES = 1_000_000;

  private final Progress progress;
  private final FillListener printer;
  private final int all;
  private int done;

  FillProgress(Progress progress, FillListener printer, Inputs inputs) {
    this.progress = progress;
    this.printer = printer;
    this.all = inputs.files().size() + inputs.refused().size();
    progress.read(0, all);
  }

  /** The bar of a run, if it is long enough and somebody watches. */
  static Progress over(Inputs inputs, PrintWriter err) {
    long bytes = inputs.files().stream().mapToLong(file -> file.toFile().length()).sum();
    return new Progress(err, Progress.isWatched() && bytes > SHORT_BYTES, "filling");
  }

  @Override
  public void filled(FillReport report) {
    after(() -> printer.filled(report));
  }

  @Override
  public void refused(Path input, String sentence) {
    after(() -> printer.refused(input, sentence));
  }

  @Override
  public void fault(Path input, Throwable fault) {
    after(() -> printer.fault(input, fault));
  }

  private void after(Runnable printing) {
    progress.aside(printing);
    done++;
    progress.read(done, all);
  }
}
