package org.wetmil.workbook.copy;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TemporariesAtOnceTest {
  @TempDir Path folder;

  @Test
  void workbooksFilledAtOnceRemoveWhatAKilledRunLeft() throws IOException {
    for (int i = 0; i < 300; i++) {
      Files.createFile(folder.resolve(".wetmil-left-" + i + ".lock"));
    }

    IntStream.range(0, 64)
        .parallel()
        .forEach(
            each -> {
              try {
                new Temporaries(folder).close();
              } catch (IOException e) {
                throw new IllegalStateException(e);
              }
            });

    assertThat(folder).isEmptyDirectory();
  }
}
