package org.wetmil.jobs;

import java.nio.file.Path;
import java.util.Locale;
import org.wetmil.quantity.UnitSystem;
import org.wetmil.workbook.WorkbookException;
import org.wetmil.workbook.template.TemplateWriter;

/** Writes a blank bid workbook. */
public final class TemplateJob {
  private TemplateJob() {}

  /** The name of the template in a family of units, in the current folder. */
  public static Path usualName(UnitSystem system) {
    return Path.of("bid-" + system.name().toLowerCase(Locale.ROOT) + ".xlsx");
  }

  /**
   * Writes the workbook.
   *
   * @param overwrite whether a file that is there already may be replaced
   * @throws WorkbookException when it cannot be written; its message is one sentence for the user
   */
  public static void write(Path output, UnitSystem system, boolean overwrite) {
    if (!Inputs.ending(output).equals("xlsx")) {
      throw new WorkbookException.Unwritable(output, "name a file that ends in .xlsx.", null);
    }
    TemplateWriter.write(output, system, overwrite);
  }
}
