package org.wetmil.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.wetmil.jobs.FillJob;
import org.wetmil.jobs.FillListener;
import org.wetmil.jobs.watch.WatchJob;
import org.wetmil.quantity.Count;
import org.wetmil.workbook.WorkbookException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** {@code wetmil watch}: bids filled as they are saved, until Control and C are pressed. */
@Command(
    name = "watch",
    description = "Fills the bid workbooks of a folder whenever they are saved there.")
final class WatchCommand implements Callable<Integer> {
  private static final long PAUSE_MS = 500;

  /** How long a workbook that is being filled may hold up the end of the process. */
  private static final long FAREWELL_S = 60;

  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "FOLDER", description = "The folder; folders in it are left alone.")
  private Path folder;

  @Option(
      names = "--tables",
      paramLabel = "FILE",
      description = "A workbook whose tables are laid under those of each bid.")
  private Path tables;

  @Option(names = "--quiet", description = "Print only the closing line of each workbook.")
  private boolean quiet;

  @Option(
      names = "--verbose",
      description = "Also say how each workbook was read, and how long it took.")
  private boolean verbose;

  @ParentCommand private WetmilCommand parent;

  @Override
  public Integer call() throws InterruptedException {
    Printer printer = new Printer(spec.commandLine(), quiet, parent.isTraced());
    PrintWriter err = spec.commandLine().getErr();
    Stopwatch filler =
        new Stopwatch((bid, out, customer) -> today().fill(bid, out), System::nanoTime);
    FillListener printed = verbose ? new VerbosePrinter(printer, err, filler::seconds) : printer;
    WatchJob job = new WatchJob(folder, filler, printed, printer::passedOver);
    CountDownLatch stop = new CountDownLatch(1);
    CountDownLatch stopped = new CountDownLatch(1);
    Runtime.getRuntime().addShutdownHook(new Thread(() -> farewell(stop, stopped)));
    printer.remark(
        "%s: watched (%s); save a workbook there and it is filled. Control-C ends."
            .formatted(folder, Count.of(job.workbooks(), "workbook")));
    long began = System.nanoTime();
    boolean away = false;
    while (!stop.await(PAUSE_MS, TimeUnit.MILLISECONDS)) {
      try {
        job.look(Duration.ofNanos(System.nanoTime() - began));
        away = false;
      } catch (WorkbookException e) {
        // a folder of a network comes back; saying it once will do
        if (!away) {
          printer.refused(folder, e.getMessage());
        }
        away = true;
      }
    }
    printer.remark(folder + ": no longer watched");
    stopped.countDown();
    return ExitCode.DONE;
  }

  /** A watch may last for days, so each bid gets the day on which it is filled. */
  private FillJob today() {
    FillJob own = new FillJob(LocalDate.now(), ProjectVersion.version(), true);
    return tables == null ? own : own.over(tables);
  }

  /** Runs when the process is asked to end: a workbook that is being filled is finished first. */
  private static void farewell(CountDownLatch stop, CountDownLatch stopped) {
    stop.countDown();
    try {
      stopped.await(FAREWELL_S, TimeUnit.SECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
