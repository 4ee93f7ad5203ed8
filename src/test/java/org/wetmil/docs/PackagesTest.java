package org.wetmil.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class PackagesTest {

  @Test
  void everyPackageSaysWhatItIsFor() throws IOException {
    List<Path> packages;
    try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
      packages =
          files
              .filter(file -> file.toString().endsWith(".java"))
              .map(Path::getParent)
              .distinct()
              .sorted()
              .toList();
    }

    assertThat(packages)
        .hasSizeGreaterThan(20)
        .allSatisfy(
            folder -> assertThat(folder.resolve("package-info.java")).content().startsWith("/**"));
  }
}
