package org.wetmil;

import java.util.Locale;
import org.wetmil.cli.WetmilCommand;

/** The way in from the command line, and the only place that ends the process. */
public final class Main {

  private Main() {}

  /**
   * Runs one command. Returns normally on success, so that a build tool which runs this in its own
   * process lives on; any other exit code ends the process with it.
   *
   * @param args the command line
   */
  public static void main(String[] args) {
    // the language of the machine is no input: digits and letters are the same everywhere
    Locale.setDefault(Locale.ROOT);
    // Java 22 to 24 call anything a console; this one is there only for a terminal
    System.setProperty("jdk.console", "java.base");
    int exitCode = WetmilCommand.execute(args);
    if (exitCode != 0) {
      System.exit(exitCode);
    }
  }
}
