package org.wetmil.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;

class WetmilCommandTest {

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  /** A fault says to run again with it, whichever command met it. */
  @Test
  void everyCommandKnowsTrace() {
    assertThat(WetmilCommand.commandLine().getSubcommands().values())
        .isNotEmpty()
        .allMatch(command -> command.getCommandSpec().findOption(WetmilCommand.TRACE) != null);
  }

  @Test
  void printsTheVersionThatTheBuildStates() {
    assertThat(execute("--version")).isZero();
    assertThat(out.toString()).matches("wetmil \\d+\\.\\d+\\.\\d+\\R");
  }

  @Test
  void helpsOnRequest() {
    assertThat(execute("--help")).isZero();
    assertThat(out.toString()).startsWith("Usage: wetmil");
  }

  @Test
  void asksForACommandWhenThereIsNone() {
    assertThat(execute()).isEqualTo(2);
    assertThat(err.toString()).startsWith("Name a command").contains("Usage: wetmil");
  }

  @Test
  void completionNamesEveryCommandAndOption() {
    assertThat(execute("completion")).isZero();
    assertThat(out.toString())
        .contains("complete -F _complete_wetmil", "reconcile", "--purchases", "explain");
  }

  private int execute(String... args) {
    return new CommandLine(new WetmilCommand())
        .setOut(new PrintWriter(out, true))
        .setErr(new PrintWriter(err, true))
        .execute(args);
  }
}
