package org.wetmil.workbook.copy;

import java.io.IOException;
import java.io.OutputStream;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.wetmil.workbook.WorkbookException;

/** Has the library save a workbook. */
final class LibrarySave {
  private LibrarySave() {}

  /**
   * Saves a workbook. What a stream of ours says to the user, as on a full disk, arrives as it was
   * said, though the library wraps what is thrown at it.
   */
  static void write(XSSFWorkbook workbook, OutputStream out) throws IOException {
    try {
      workbook.write(out);
    } catch (IOException | RuntimeException e) {
      for (Throwable cause = e; cause != null; cause = cause.getCause()) {
        if (cause instanceof WorkbookException spoken) {
          throw spoken;
        }
      }
      throw e;
    }
  }
}
