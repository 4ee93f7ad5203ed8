package org.wetmil.cli;

import java.io.Console;
import java.io.OutputStreamWriter;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import org.wetmil.jobs.explain.Asked;
import org.wetmil.workbook.WorkbookException;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import picocli.CommandLine.TypeConversionException;

/** The root command: help and version; the work is done by its subcommands. */
@Command(
    name = "wetmil",
    description = "Fills spray-painting bid workbooks: Excel in, Excel out.",
    mixinStandardHelpOptions = true,
    scope = CommandLine.ScopeType.INHERIT,
    subcommands = {
      FillCommand.class,
      WatchCommand.class,
      StartCommand.class,
      ExplainCommand.class,
      ReconcileCommand.class,
      AuditCommand.class,
      CompareCommand.class,
      ChecksCommand.class,
      TemplateCommand.class,
      CompletionCommand.class
    },
    versionProvider = ProjectVersion.class)
public final class WetmilCommand implements Runnable {

  static final String TRACE = "--trace";

  private static final String FAULT = "A fault of the program";

  @Spec private CommandSpec spec;

  @Option(
      names = TRACE,
      scope = CommandLine.ScopeType.INHERIT,
      description = "Show where in the program a fault arose.")
  private boolean trace;

  /**
   * Runs the command line.
   *
   * @param args the arguments as given by the user
   * @return the exit code: 0 done, 1 findings, 2 a command line that was not understood, 3 an input
   *     or output that cannot be used, 4 a fault of the program
   */
  public static int execute(String... args) {
    CommandLine commandLine = commandLine().setOut(writer(System.out)).setErr(writer(System.err));
    try {
      String dropped = System.getenv(Dropped.WINDOWS_LINE);
      return commandLine.execute(Dropped.meant(commandLine, args, dropped));
    } catch (OutOfMemoryError e) {
      Printer.line(
          commandLine.getErr(),
          "The files of this run need more memory than Java was given; give it more with -Xmx, or"
              + " name fewer files.");
      return ExitCode.UNUSABLE;
    } catch (Error fault) {
      Printer.fault(commandLine.getErr(), FAULT, fault, List.of(args).contains(TRACE));
      return ExitCode.FAULT;
    }
  }

  /**
   * Printed in UTF-8, so that no setting of the machine changes what another program reads; a
   * terminal gets its own character set.
   */
  private static PrintWriter writer(PrintStream stream) {
    Console terminal = System.console();
    boolean plain = terminal == null || terminal.charset().equals(StandardCharsets.US_ASCII);
    Charset charset = plain ? StandardCharsets.UTF_8 : terminal.charset();
    return new PrintWriter(new OutputStreamWriter(stream, charset), true);
  }

  static CommandLine commandLine() {
    return new CommandLine(new WetmilCommand())
        .setCaseInsensitiveEnumValuesAllowed(true)
        .registerConverter(Path.class, WetmilCommand::path)
        .registerConverter(LocalDate.class, WetmilCommand::date)
        .registerConverter(Asked.class, WetmilCommand::asked)
        .setExecutionExceptionHandler(WetmilCommand::fail);
  }

  private static int fail(
      Exception fault, CommandLine commandLine, CommandLine.ParseResult parsed) {
    if (fault instanceof WorkbookException) {
      Printer.line(commandLine.getErr(), fault.getMessage());
      return ExitCode.UNUSABLE;
    }
    Printer.fault(commandLine.getErr(), FAULT, fault, parsed.originalArgs().contains(TRACE));
    return ExitCode.FAULT;
  }

  private static Path path(String text) {
    try {
      return Path.of(text);
    } catch (InvalidPathException e) {
      throw new TypeConversionException(
          "\""
              + text
              + "\" cannot be a file's name in the character set of this session;"
              + " set LC_ALL=C.UTF-8 and run again");
    }
  }

  private static LocalDate date(String text) {
    try {
      return LocalDate.parse(text);
    } catch (DateTimeParseException e) {
      throw new TypeConversionException(
          "\"" + text + "\" is no date; write year, month and day, as in 2026-01-05");
    }
  }

  private static Asked asked(String text) {
    try {
      return Asked.of(text);
    } catch (IllegalArgumentException e) {
      throw new TypeConversionException(e.getMessage());
    }
  }

  /** Whether a fault is told with where in the program it arose. */
  boolean isTraced() {
    return trace;
  }

  @Override
  public void run() {
    throw new ParameterException(spec.commandLine(), "Name a command; --help lists them.");
  }
}
