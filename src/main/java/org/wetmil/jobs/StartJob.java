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
    String name = list.getFileName().toString();
    int dot = name.lastIndexOf('.');
    return list.resolveSibling((dot < 0 ? name : name.substring(0, dot)) + "-bid.xlsx");
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
    if (!Inputs.ending(output).equals("xlsx")) {
      throw new WorkbookException.Unwritable(output, "name a file that ends in .xlsx.", null);
    }
    return Start.make(list, passwords, output, overwrite);
  }
}
