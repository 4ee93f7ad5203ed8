package org.wetmil.workbook.recalc;

import static org.assertj.core.api.Assertions.fail;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** LibreOffice, an independent program that computes formulas, where the machine has it. */
final class Office {
  private static final String REQUIRED = "WETMIL_REQUIRE_LIBREOFFICE";
  private static final boolean PRESENT = isPresent();

  private Office() {}

  /** Skips the test by name where there is none; fails it where one is required. */
  static void assumePresent() {
    if (!PRESENT && "1".equals(System.getenv(REQUIRED))) {
      fail("LibreOffice is required here (" + REQUIRED + "=1) and soffice was not found");
    }
    assumeTrue(PRESENT, "LibreOffice (soffice) is not on this machine");
  }

  private static boolean isPresent() {
    try {
      Process process =
          new ProcessBuilder("soffice", "--version").redirectErrorStream(true).start();
      process.getInputStream().readAllBytes();
      return process.waitFor(60, TimeUnit.SECONDS) && process.exitValue() == 0;
    } catch (IOException e) {
      return false;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return false;
    }
  }

  /**
   * A profile that the tests of this process share, since the program takes long to make one; those
   * of another process, who may run at the same time, have their own.
   */
  static Path profile() throws IOException {
    Path profiles = Files.createDirectories(Path.of("target", "office").toAbsolutePath());
    return profiles.resolve(String.valueOf(ProcessHandle.current().pid()));
  }

  /**
   * Takes the stored values off all formulas, opens the workbooks and saves them anew, which
   * computes every formula; all at one start, which takes longer than the work.
   *
   * @param workbooks of different names
   * @return the new ones, in the same order
   */
  static List<Path> computed(List<Path> workbooks, Path folder)
      throws IOException, InterruptedException {
    Path bare = Files.createDirectories(folder.resolve("bare"));
    Path out = Files.createDirectories(folder.resolve("computed"));
    List<String> command =
        new ArrayList<>(
            List.of(
                "soffice",
                "-env:UserInstallation=" + profile().toUri(),
                "--headless",
                "--convert-to",
                "xlsx:Calc MS Excel 2007 XML",
                "--outdir",
                out.toString()));
    List<Path> results = new ArrayList<>();
    for (Path workbook : workbooks) {
      Path stripped = bare.resolve(workbook.getFileName());
      Formulas.strip(workbook, stripped);
      command.add(stripped.toString());
      results.add(out.resolve(workbook.getFileName()));
    }
    Process process =
        new ProcessBuilder(command)
            .redirectErrorStream(true)
            .redirectOutput(folder.resolve("soffice.log").toFile())
            .start();
    if (!process.waitFor(180, TimeUnit.SECONDS)) {
      process.destroyForcibly();
      fail("LibreOffice did not end in three minutes");
    }
    return results;
  }
}
