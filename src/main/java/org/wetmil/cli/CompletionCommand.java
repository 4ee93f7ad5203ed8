package org.wetmil.cli;

import java.io.PrintWriter;
import picocli.AutoComplete;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** {@code wetmil completion}: what makes a shell complete commands and options. */
@Command(
    name = "completion",
    description = "Prints completion for the shells bash and zsh: source <(wetmil completion)")
final class CompletionCommand implements Runnable {
  @Spec private CommandSpec spec;

  @Override
  public void run() {
    PrintWriter out = spec.commandLine().getOut();
    out.print(AutoComplete.bash(spec.root().name(), spec.root().commandLine()));
    out.flush();
  }
}
