package org.wetmil.cli;

import static org.junit.jupiter.api.Assumptions.abort;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * What a test needs of the machine; where that is not to be had, the test is skipped and says so.
 */
final class Machine {
  private static final long PATIENCE_S = 30;

  private Machine() {}

  /** A file of a name in any script. */
  static Path named(Path folder, String name) {
    try {
      return folder.resolve(name);
    } catch (InvalidPathException e) {
      return abort("this session cannot say " + name);
    }
  }

  static Path link(Path link, Path to) {
    try {
      return Files.createSymbolicLink(link, to);
    } catch (IOException | UnsupportedOperationException e) {
      return abort("this system lets nobody make links: " + e);
    }
  }

  static void needsPosix() {
    assumeTrue(File.separatorChar == '/', "a matter of POSIX systems");
  }

  /** Mounts a disk in memory; only root can. */
  static void needsDisk(Path folder, String options) throws InterruptedException {
    assumeTrue("root".equals(System.getProperty("user.name")), "only root can make a small disk");
    assumeTrue(
        done("mount", "-t", "tmpfs", "-o", options, "tmpfs", folder.toString()),
        "this machine mounts nothing");
  }

  static void takeDiskAway(Path folder) throws InterruptedException {
    done("umount", folder.toString());
  }

  private static boolean done(String... command) throws InterruptedException {
    try {
      Process process =
          new ProcessBuilder(command)
              .redirectErrorStream(true)
              .redirectOutput(ProcessBuilder.Redirect.DISCARD)
              .start();
      return process.waitFor(PATIENCE_S, TimeUnit.SECONDS) && process.exitValue() == 0;
    } catch (IOException e) {
      return false;
    }
  }

  /** The names in a folder, in their order. */
  static List<String> names(Path folder) {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }
}
