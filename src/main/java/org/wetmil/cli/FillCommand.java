package org.wetmil.cli;

import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.Callable;
import org.wetmil.checks.Severity;
import org.wetmil.jobs.FillJob;
import org.wetmil.jobs.FillListener;
import org.wetmil.jobs.FillRun;
import org.wetmil.jobs.Inputs;
import org.wetmil.jobs.Outputs;
import org.wetmil.jobs.json.JsonRun;
import org.wetmil.workbook.opc.Passwords;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** {@code wetmil fill}: bid workbooks in, filled workbooks out. */
@Command(
    name = "fill",
    description =
        "Fills bid workbooks with tips, coats, film, paint and labour, beside each input.")
final class FillCommand implements Callable<Integer> {
  static final String NUMBER = "--number";

  @Spec private CommandSpec spec;

  @Parameters(
      arity = "1..*",
      paramLabel = "BID",
      description = "Workbooks, or folders of workbooks.")
  private List<Path> bids;

  @Option(
      names = "--out",
      paramLabel = "PATH",
      description =
          "With one workbook as input, a path ending in .xlsx or .xlsm is the file to write;"
              + " anything else is a folder, made if absent.")
  private Path out;

  @Option(names = "--force", description = "Write over an older output.")
  private boolean force;

  @Option(
      names = NUMBER,
      description = "Where an output is there already, write BID-filled-2.xlsx and so on.")
  private boolean number;

  @Option(
      names = "--refresh",
      description =
          "In a workbook filled before, put our formulas back where yours or numbers stand.")
  private boolean refresh;

  @Option(
      names = "--values",
      description =
          "Also write BID-customer.xlsx: the page for the customer alone, without formulas;"
              + " beside BID-filled-2.xlsx it is BID-filled-2-customer.xlsx.")
  private boolean values;

  @Option(names = "--quiet", description = "Print only the closing line of each workbook.")
  private boolean quiet;

  @Option(
      names = "--fail-on",
      paramLabel = "SEVERITY",
      description = "End with code 1 when a finding is at or above: note, warning, stop.")
  private Severity failOn;

  @Option(
      names = "--date",
      paramLabel = "YYYY-MM-DD",
      description = "The date printed on Basis; today when not given.")
  private LocalDate date = LocalDate.now();

  @Option(
      names = "--verbose",
      description = "Also say how each workbook was read, and how long it took.")
  private boolean verbose;

  @ParentCommand private WetmilCommand parent;

  @Option(
      names = "--json",
      paramLabel = "FILE",
      description = "Write findings and figures of the whole run for other programs, too.")
  private Path json;

  @Option(
      names = "--tables",
      paramLabel = "FILE",
      description = "A workbook whose tables are laid under those of each bid.")
  private Path tables;

  @Mixin private PasswordOption passwords;

  @Override
  public Integer call() {
    Printer printer = new Printer(spec.commandLine(), quiet, parent.isTraced());
    Passwords words = passwords.read();
    Inputs inputs = Inputs.of(bids, words);
    inputs.passedOver().forEach(printer::passedOver);
    Outcome outcome = new Outcome(failOn);
    FillJob own = new FillJob(date, ProjectVersion.version(), force, refresh).with(words);
    FillJob job = tables == null ? own : own.over(tables);
    Outputs outputs = new Outputs(out, inputs, file -> number && Files.exists(file));
    Stopwatch filler = new Stopwatch(job::fill, System::nanoTime);
    PrintWriter err = spec.commandLine().getErr();
    FillListener plain = verbose ? new VerbosePrinter(printer, err, filler::seconds) : printer;
    try (Progress progress = FillProgress.over(inputs, err)) {
      FillListener printed = new FillProgress(progress, plain, inputs);
      if (json == null) {
        new FillRun(filler, values, List.of(printed, outcome)).fill(inputs, outputs);
        return outcome.code();
      }
      try (JsonRun run = JsonRun.begin(json, inputs, ProjectVersion.version(), date, force)) {
        new FillRun(filler, values, List.of(printed, outcome, run)).fill(inputs, outputs);
        run.finish();
      }
    }
    return outcome.code();
  }
}
