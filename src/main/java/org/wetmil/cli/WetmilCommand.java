package org.wetmil.cli;

import org.wetmil.workbook.WorkbookException;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The root command: help and version; the work is done by its subcommands. */
@Command(
    name = "wetmil",
    description = "Fills spray-painting bid workbooks: Excel in, Excel out.",
    mixinStandardHelpOptions = true,
    scope = CommandLine.ScopeType.INHERIT,
    subcommands = {
      FillCommand.class,
      StartCommand.class,
      TemplateCommand.class,
      ChecksCommand.class
    },
    versionProvider = ProjectVersion.class)
public final class WetmilCommand implements Runnable {

  @Spec private CommandSpec spec;

  /**
   * Runs the command line.
   *
   * @param args the arguments as given by the user
   * @return the exit code: 0 done, 1 findings, 2 a command line that was not understood, 3 an input
   *     or output that cannot be used, 4 a fault of the program
   */
  public static int execute(String... args) {
    return commandLine().execute(args);
  }

  static CommandLine commandLine() {
    return new CommandLine(new WetmilCommand())
        .setCaseInsensitiveEnumValuesAllowed(true)
        .setExecutionExceptionHandler(WetmilCommand::fail);
  }

  private static int fail(
      Exception fault, CommandLine commandLine, CommandLine.ParseResult parsed) {
    if (fault instanceof WorkbookException) {
      commandLine.getErr().println(fault.getMessage());
      return ExitCode.UNUSABLE;
    }
    commandLine.getErr().println("A fault of the program (" + fault + ").");
    return ExitCode.FAULT;
  }

  @Override
  public void run() {
    throw new ParameterException(spec.commandLine(), "Name a command; --help lists them.");
  }
}
