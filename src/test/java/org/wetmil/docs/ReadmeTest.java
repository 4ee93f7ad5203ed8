package org.wetmil.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Keeps what the README says true. */
class ReadmeTest {

  @Test
  void tablesAreThoseThatTheDeclarationsMake() throws IOException {
    String readme = Files.readString(ReadmeTables.README);

    assertThat(readme).isEqualTo(ReadmeTables.renewed(readme));
    ReadmeTables.tables()
        .keySet()
        .forEach(table -> assertThat(readme).contains("<!-- table: " + table + " -->"));
  }

  @Test
  void topLevelHoldsWhatItIsToHoldAndNothingElse() throws IOException {
    List<String> names;
    try (var entries = Files.list(Path.of(""))) {
      names =
          entries
              .map(path -> path.getFileName().toString())
              .filter(name -> !name.startsWith(".") && !name.equals("target"))
              .sorted()
              .toList();
    }

    assertThat(names)
        .containsExactly(
            "DEVELOPERS.md",
            "LICENSE",
            "README.md",
            "pom.xml",
            "sample-workbooks",
            "src",
            "templates");
  }
}
