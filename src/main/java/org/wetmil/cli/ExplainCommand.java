package org.wetmil.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.wetmil.jobs.explain.Asked;
import org.wetmil.jobs.explain.ExplainJob;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code wetmil explain}: how one line of a bid comes out, step by step. */
@Command(
    name = "explain",
    description =
        "Says how a line of a bid comes out: what was read, each step with its numbers and sources,"
            + " and why the other tips were not taken.")
final class ExplainCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(
      index = "0",
      paramLabel = "BID",
      description = "The workbook, filled or not; it is only read.")
  private Path bid;

  @Parameters(
      index = "1",
      paramLabel = "CELL",
      description =
          "A cell of the line, as in H12, Bid!H12 or 'Bid sheet'!H12, or a row, as in 12. Of a"
              + " filled cell only what it rests on is told.")
  private Asked cell;

  @Option(
      names = "--tables",
      paramLabel = "FILE",
      description = "A workbook whose tables are laid under those of the bid.")
  private Path tables;

  @Mixin private PasswordOption passwords;

  @Override
  public Integer call() {
    ExplainJob own = new ExplainJob(passwords.read());
    ExplainJob job = tables == null ? own : own.over(tables);
    PrintWriter out = spec.commandLine().getOut();
    job.explain(bid, cell).forEach(line -> Printer.line(out, line));
    out.flush();
    return ExitCode.DONE;
  }
}
