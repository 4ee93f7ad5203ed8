package org.wetmil.jobs;

import java.nio.file.Path;
import org.wetmil.workbook.WorkbookException;
import org.wetmil.workbook.opc.Passwords;
import org.wetmil.workbook.start.Start;

/** Makes a bid workbook from a room list. */
public final class StartJob {
  private StartJob() {}

  /** Where the bid goes when no other place is named: beside the list. */
  public static Path usualName(Path list) {
    return ResultName.beside(list, "-bid");
  }

  /**
   * Makes the workbook.
   *
   * @param passwords that may open the list
   * @param overwrite whether a file that is there already may be replaced
   * @throws WorkbookException when the list cannot be used or the bid cannot be written; its
   *     message is one sentence for the user
   */
  public static Start.Made make(Path list, Passwords passwords, Path output, boolean overwrite) {
    ResultName.requireWorkbook(output);
    return Start.make(list, passwords, output, overwrite);
  }
}
