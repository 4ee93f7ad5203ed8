package org.wetmil.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TemplateCommandTest {
  @TempDir Path folder;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  @Test
  void writesTheTemplateThatIsAskedForAndSaysSo() {
    Path file = folder.resolve("blank.xlsx");

    assertThat(execute("template", "--units", "metric", "--out", file.toString())).isZero();
    assertThat(out.toString()).isEqualTo(file + ": written" + System.lineSeparator());
    assertThat(file).exists();
  }

  @Test
  void refusesToWriteOverAFile() {
    Path file = folder.resolve("blank.xlsx");
    execute("template", "--out", file.toString());

    assertThat(execute("template", "--out", file.toString())).isEqualTo(ExitCode.UNUSABLE);
    assertThat(err.toString()).contains("already");
    assertThat(execute("template", "--force", "--out", file.toString())).isZero();
  }

  @Test
  void asksAgainForUnitsItDoesNotKnow() {
    assertThat(execute("template", "--units", "cubits")).isEqualTo(ExitCode.USAGE);
    assertThat(err.toString()).contains("--units").contains("US, METRIC");
  }

  private int execute(String... args) {
    return WetmilCommand.commandLine()
        .setOut(new PrintWriter(out, true))
        .setErr(new PrintWriter(err, true))
        .execute(args);
  }
}
