package org.wetmil.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.wetmil.SmallBid;

/** {@code watch} as a process of its own, from its first line to its last. */
class WatchProcessTest {
  private static final long PATIENCE_MS = 120_000;

  @TempDir Path folder;
  @TempDir Path logs;

  @Test
  @DisabledOnOs(value = OS.WINDOWS, disabledReason = "there a process cannot be asked to end")
  void savedBidsAreFilledUntilTheProcessIsAskedToEnd() throws Exception {
    Process watch =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-cp",
                System.getProperty("java.class.path"),
                "org.wetmil.Main",
                "watch",
                folder.toString())
            .redirectOutput(out().toFile())
            .redirectErrorStream(true)
            .start();
    try {
      await(folder + ": watched (0 workbooks);");
      SmallBid.write(folder.resolve("bid.xlsx"));
      await(folder.resolve("bid-filled.xlsx") + ": ");
    } finally {
      watch.destroy();
    }

    assertThat(watch.waitFor(PATIENCE_MS, TimeUnit.MILLISECONDS)).isTrue();
    List<String> lines = Files.readAllLines(out());
    assertThat(lines).last().isEqualTo(folder + ": no longer watched");
    assertThat(lines).filteredOn(line -> line.contains("bid-filled")).hasSize(1);
    assertThat(folder.resolve("bid-filled.xlsx")).isRegularFile();
  }

  @Test
  void whatIsNoFolderIsRefused() {
    Ran ran = Ran.of("watch", folder.resolve("nowhere"));

    assertThat(ran.code()).isEqualTo(3);
    assertThat(ran.err()).singleElement().asString().contains("nowhere", "folder");
  }

  private Path out() {
    return logs.resolve("out.log");
  }

  private void await(String text) throws IOException, InterruptedException {
    long until = System.currentTimeMillis() + PATIENCE_MS;
    while (!Files.readString(out()).contains(text)) {
      assertThat(System.currentTimeMillis()).as("waiting for: " + text).isLessThan(until);
      Thread.sleep(100);
    }
  }
}
