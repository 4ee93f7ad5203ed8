package org.wetmil.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.concurrent.Callable;
import org.wetmil.jobs.CompareJob;
import org.wetmil.jobs.CompareReport;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code wetmil compare}: two versions of a bid, line by line. */
@Command(
    name = "compare",
    description = "Compares two versions of a bid: what changed, and what that makes.")
final class CompareCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(index = "0", paramLabel = "A", description = "The first version.")
  private Path a;

  @Parameters(index = "1", paramLabel = "B", description = "The second version.")
  private Path b;

  @Option(
      names = "--out",
      paramLabel = "FILE",
      description = "The file to write, ending in .xlsx; when not given, B-compared.xlsx beside B.")
  private Path out;

  @Option(names = "--force", description = "Write over an older output.")
  private boolean force;

  @Option(names = "--quiet", description = "Print only what both come to.")
  private boolean quiet;

  @Option(names = "--date", paramLabel = "YYYY-MM-DD", description = "The date printed on it.")
  private LocalDate date = LocalDate.now();

  @Mixin private PasswordOption passwords;

  @Override
  public Integer call() {
    CompareReport report =
        new CompareJob(passwords.read(), date, ProjectVersion.version(), force).compare(a, b, out);
    new ComparePrinter(spec.commandLine().getOut(), report).print(quiet);
    return ExitCode.DONE;
  }
}
