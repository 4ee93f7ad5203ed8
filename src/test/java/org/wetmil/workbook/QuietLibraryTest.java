package org.wetmil.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.apache.logging.log4j.LogManager;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;

/** The spreadsheet library logs; a user of the command line must not see it. */
class QuietLibraryTest {

  /** Runs in a JVM of its own, where logging starts afresh. */
  static final class UseTheLibrary {
    public static void main(String[] args) throws IOException {
      try (XSSFWorkbook workbook = new XSSFWorkbook()) {
        workbook.createSheet("Bid").createRow(0).createCell(0).setCellFormula("1+1");
        workbook.getCreationHelper().createFormulaEvaluator().evaluateAll();
        workbook.write(OutputStream.nullOutputStream());
      }
      LogManager.getLogger("org.apache.poi").fatal("said by the library");
    }
  }

  @Test
  void printsNothingWhenTheLibraryLogs() throws Exception {
    Process process =
        new ProcessBuilder(
                List.of(
                    Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                    "-XX:TieredStopAtLevel=1",
                    "-XX:+UseSerialGC",
                    "-cp",
                    System.getProperty("java.class.path"),
                    UseTheLibrary.class.getName()))
            .redirectErrorStream(true)
            .start();
    String printed =
        new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8).strip();

    assertThat(process.waitFor()).isZero();
    assertThat(printed).isEmpty();
  }
}
