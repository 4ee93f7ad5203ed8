package org.wetmil.workbook.template;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Tables;
import org.wetmil.quantity.UnitSystem;
import org.wetmil.workbook.copy.NewWorkbook;
import org.wetmil.workbook.look.Look;

/** Writes a blank bid workbook. */
public final class TemplateWriter {
  /**
   * Tables with a sheet; the rest are seldom changed, and a sheet of their name is read as well.
   */
  private static final Set<Tables> SHEETS =
      Collections.unmodifiableSet(
          EnumSet.complementOf(
              EnumSet.of(
                  Tables.LOSSES,
                  Tables.STOCK_TIPS,
                  Tables.TEXTURES,
                  Tables.CONDITIONS,
                  Tables.OPENING_KINDS,
                  Tables.SHAPES,
                  Tables.VOC_LIMITS,
                  Tables.EARLIER_WORK)));

  /** The sheet of bid lines: a column for every input, in their order, headings in row 1. */
  public static final String BID = "Bid";

  private TemplateWriter() {}

  /**
   * Writes the workbook, whole or not at all.
   *
   * @param overwrite whether a file that is there already may be replaced
   */
  public static void write(Path output, UnitSystem system, boolean overwrite) {
    try (XSSFWorkbook workbook = new XSSFWorkbook()) {
      shape(workbook, system, BidForm.ROWS);
      NewWorkbook.write(workbook, output, overwrite);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * Gives an empty workbook the sheets of a blank bid.
   *
   * @param lines bid lines to lay out, at least; never fewer than a blank form has
   */
  public static void shape(XSSFWorkbook workbook, UnitSystem system, int lines) {
    Look look = new Look(workbook);
    int rows = Math.max(lines, BidForm.ROWS);
    new BidForm(workbook.createSheet(BID), look, system, rows).write();
    new HowToSheet(workbook.createSheet("How-to"), look, system).write();
    for (Tables table : SHEETS) {
      var sheet = workbook.createSheet(table.title());
      if (Catalogue.builtIn().table(table).spec().isByRow()) {
        new ByRowSheet(sheet, look, table, system).write();
      } else {
        new TableSheet(sheet, look, table, system).write();
      }
    }
    new ListsSheet(workbook.createSheet(ListsSheet.NAME), look, SHEETS).write();
    short paper = system == UnitSystem.US ? PrintSetup.LETTER_PAPERSIZE : PrintSetup.A4_PAPERSIZE;
    workbook.forEach(sheet -> sheet.getPrintSetup().setPaperSize(paper));
    var properties = workbook.getProperties().getCoreProperties();
    properties.setTitle("Bid workbook for spray painting");
    properties.setCreator("Wetmil");
  }
}
