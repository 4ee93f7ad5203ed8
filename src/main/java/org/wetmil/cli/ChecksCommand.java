package org.wetmil.cli;

import java.io.PrintWriter;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import org.wetmil.catalogue.Names;
import org.wetmil.checks.Check;
import org.wetmil.checks.Checks;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code wetmil checks}: the list of checks, or those that were asked for. */
@Command(name = "checks", description = "Lists the checks: id, severity, what it rests on, why.")
final class ChecksCommand implements Runnable {
  @Spec private CommandSpec spec;

  @Parameters(
      arity = "0..*",
      paramLabel = "ID",
      completionCandidates = Ids.class,
      description = "Checks to tell alone, as in no-tip-code; all when none is named.")
  private List<String> ids = List.of();

  /** What a shell offers. */
  static final class Ids implements Iterable<String> {
    @Override
    public Iterator<String> iterator() {
      return Checks.ALL.stream().map(Check::id).iterator();
    }
  }

  @Override
  public void run() {
    List<Check> asked = ids.isEmpty() ? Checks.ALL : ids.stream().map(this::check).toList();
    PrintWriter out = spec.commandLine().getOut();
    asked.forEach(check -> print(out, check));
    out.flush();
  }

  private Check check(String id) {
    return Checks.find(id)
        .orElseThrow(() -> new ParameterException(spec.commandLine(), unknown(id)));
  }

  private static String unknown(String id) {
    List<String> near = Names.nearest(id, Checks.ALL.stream().map(Check::id));
    return "No check is called \""
        + id
        + "\""
        + (near.isEmpty() ? "; wetmil checks lists all." : "; meant may be ")
        + String.join(" or ", near)
        + (near.isEmpty() ? "" : ".");
  }

  private static void print(PrintWriter out, Check check) {
    out.printf(
        Locale.ROOT,
        "%s (%s): %s%n    %s%n    rests on: %s%n",
        check.id(),
        check.severity().name().toLowerCase(Locale.ROOT),
        check.title(),
        check.why(),
        check.kind().with(check.source()));
  }
}
