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
    ResultName.requireWorkbook(output);
    TemplateWriter.write(output, system, overwrite);
  }
}
