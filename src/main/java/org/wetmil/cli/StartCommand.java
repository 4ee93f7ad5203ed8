package org.wetmil.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.wetmil.jobs.StartJob;
import org.wetmil.quantity.Count;
import org.wetmil.workbook.start.Start;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code wetmil start}: a room list in, a bid workbook to complete out. */
@Command(
    name = "start",
    description = "Makes a bid workbook from a room list: COBie, or a table of rooms.")
final class StartCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "ROOMS", description = "The workbook that lists the rooms.")
  private Path rooms;

  @Option(
      names = "--out",
      paramLabel = "FILE",
      description =
          "The file to write, ending in .xlsx; when not given, ROOMS-bid.xlsx beside the list.")
  private Path out;

  @Option(names = "--force", description = "Write over an older file.")
  private boolean force;

  @Mixin private PasswordOption passwords;

  @Override
  public Integer call() {
    Path file = out == null ? StartJob.usualName(rooms) : out;
    Start.Made made = StartJob.make(rooms, passwords.read(), file, force);
    PrintWriter print = spec.commandLine().getOut();
    made.remarks().forEach(remark -> Printer.line(print, rooms + ": " + remark));
    String missing =
        made.missing().entrySet().stream()
            .map(each -> each.getKey() + " on " + each.getValue())
            .collect(Collectors.joining(", "));
    print.printf(
        Locale.ROOT,
        "%s: from %s: %s, %s, %s; %s%s%n",
        file,
        made.source(),
        Count.of(made.rooms(), "room"),
        Count.of(made.lines(), "line"),
        Count.of(made.openings(), "door or window", "doors and windows"),
        missing.isEmpty() ? "nothing to fill in" : "to fill in (see Notes): " + missing,
        made.leftOut() == 0
            ? ""
            : "; " + Count.of(made.leftOut(), "line") + " left out by Include until you decide");
    print.flush();
    return ExitCode.DONE;
  }
}
