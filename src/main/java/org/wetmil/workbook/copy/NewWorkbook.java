package org.wetmil.workbook.copy;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Writes a workbook that is no copy of another: whole or not at all. */
public final class NewWorkbook {
  static {
    LibrarySettings.apply();
  }

  private NewWorkbook() {}

  /**
   * Writes a workbook.
   *
   * @param input a file that must stay as it is
   * @param overwrite whether a file that is there already may be replaced
   * @throws org.wetmil.workbook.WorkbookException when the output cannot be written
   */
  public static void write(Path input, Path output, boolean overwrite, XSSFWorkbook workbook) {
    try (OutputFile files = OutputFile.claim(input, output, overwrite)) {
      Path made = files.temporary();
      try (OutputStream out = files.open(made)) {
        workbook.write(out);
      } catch (IOException e) {
        throw new IllegalStateException(e);
      }
      files.publish(made);
    }
  }
}
