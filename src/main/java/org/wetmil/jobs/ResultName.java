package org.wetmil.jobs;

import java.nio.file.Path;
import org.wetmil.workbook.WorkbookException;

/** What the file of a result is called. */
public final class ResultName {
  private ResultName() {}

  /** A name without its ending. */
  static String stem(Path file) {
    // of the root of a disk there is none
    String name = String.valueOf(file.getFileName());
    int dot = name.lastIndexOf('.');
    return dot < 0 ? name : name.substring(0, dot);
  }

  /** Beside a file and called after it, for where nothing else is named. */
  static Path beside(Path file, String suffix) {
    return file.resolveSibling(stem(file) + suffix + ".xlsx");
  }

  /**
   * Sees to it that a workbook is not written under the name of something else.
   *
   * @throws WorkbookException when the name does not end in .xlsx
   */
  public static void requireWorkbook(Path output) {
    if (!Inputs.ending(output).equals("xlsx")) {
      throw new WorkbookException.Unwritable(output, "name a file that ends in .xlsx.", null);
    }
  }
}
