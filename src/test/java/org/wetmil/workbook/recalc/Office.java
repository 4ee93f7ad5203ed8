package org.wetmil.workbook.recalc;

import static org.assertj.core.api.Assertions.fail;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
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

  /** Opens a workbook and saves it anew, which computes every formula without a stored value. */
  static Path resaved(Path workbook, Path folder) throws IOException, InterruptedException {
    Path out = Files.createDirectories(folder.resolve("resaved"));
    List<String> command =
        List.of(
            "soffice",
            "-env:UserInstallation=" + profile().toUri(),
            "--headless",
            "--convert-to",
            "xlsx:Calc MS Excel 2007 XML",
            "--outdir",
            out.toString(),
            workbook.toString());
    Process process =
        new ProcessBuilder(command)
            .redirectErrorStream(true)
            .redirectOutput(folder.resolve("soffice.log").toFile())
            .start();
    if (!process.waitFor(120, TimeUnit.SECONDS)) {
      process.destroyForcibly();
      fail("LibreOffice did not end in two minutes");
    }
    return out.resolve(workbook.getFileName());
  }
}
