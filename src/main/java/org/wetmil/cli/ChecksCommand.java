package org.wetmil.cli;

import java.io.PrintWriter;
import java.util.Locale;
import org.wetmil.checks.Check;
import org.wetmil.checks.Checks;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** {@code wetmil checks}: the list of checks. */
@Command(name = "checks", description = "Lists the checks: id, severity, what it rests on, why.")
final class ChecksCommand implements Runnable {
  @Spec private CommandSpec spec;

  @Override
  public void run() {
    PrintWriter out = spec.commandLine().getOut();
    for (Check check : Checks.ALL) {
      String source = check.source().isEmpty() ? "" : ": " + check.source();
      out.printf(
          Locale.ROOT,
          "%s (%s): %s%n    %s%n    rests on: %s%s%n",
          check.id(),
          check.severity().name().toLowerCase(Locale.ROOT),
          check.title(),
          check.why(),
          check.kind().word(),
          source);
    }
    out.flush();
  }
}
