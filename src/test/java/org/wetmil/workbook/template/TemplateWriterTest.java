package org.wetmil.workbook.template;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.wetmil.jobs.TemplateJob;
import org.wetmil.quantity.UnitSystem;
import org.wetmil.workbook.WorkbookException;

class TemplateWriterTest {
  private static final Path TEMPLATES = Path.of("templates");

  @TempDir Path folder;

  @ParameterizedTest
  @EnumSource(UnitSystem.class)
  void templatesOfTheProjectAreWhatTheCommandWrites(UnitSystem system) throws IOException {
    Path anew = folder.resolve("anew.xlsx");
    TemplateJob.write(anew, system, false);

    assertThat(Described.lines(TEMPLATES.resolve(TemplateJob.usualName(system))))
        .as("rewrite the templates by the command in DEVELOPERS.md")
        .isEqualTo(Described.lines(anew));
  }

  @Test
  void sameTemplateIsTheSameFile() throws IOException {
    Path one = folder.resolve("one.xlsx");
    Path two = folder.resolve("two.xlsx");

    TemplateJob.write(one, UnitSystem.METRIC, false);
    TemplateJob.write(two, UnitSystem.METRIC, false);

    assertThat(one).hasSameBinaryContentAs(two);
  }

  @Test
  void neverWritesOverAFileUnasked() throws IOException {
    Path mine = Files.writeString(folder.resolve("bid-us.xlsx"), "mine");

    assertThatThrownBy(() -> TemplateJob.write(mine, UnitSystem.US, false))
        .isInstanceOf(WorkbookException.Unwritable.class)
        .hasMessageContaining("already");
    assertThat(mine).hasContent("mine");

    TemplateJob.write(mine, UnitSystem.US, true);
    assertThat(Files.size(mine)).isGreaterThan(1000);
  }

  @Test
  void asksForANameThatAWorkbookCanHave() {
    assertThatThrownBy(() -> TemplateJob.write(folder.resolve("bid.txt"), UnitSystem.US, false))
        .hasMessageEndingWith("name a file that ends in .xlsx.");
    assertThat(folder).isEmptyDirectory();
  }
}
