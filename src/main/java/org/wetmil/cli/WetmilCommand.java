package org.wetmil.cli;

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
    versionProvider = ProjectVersion.class)
public final class WetmilCommand implements Runnable {

  @Spec private CommandSpec spec;

  /**
   * Runs the command line.
   *
   * @param args the arguments as given by the user
   * @return the exit code: 0 done, 1 a fault, 2 a command line that was not understood
   */
  public static int execute(String... args) {
    return new CommandLine(new WetmilCommand()).execute(args);
  }

  @Override
  public void run() {
    throw new ParameterException(spec.commandLine(), "Name a command; --help lists them.");
  }
}
