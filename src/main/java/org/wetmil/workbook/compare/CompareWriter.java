package org.wetmil.workbook.compare;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.wetmil.estimate.compare.BidComparison;
import org.wetmil.quantity.UnitSystem;
import org.wetmil.workbook.copy.NewWorkbook;
import org.wetmil.workbook.fill.beside.Marks;
import org.wetmil.workbook.look.Look;

/** Writes the workbook that compares two versions of a bid. */
public final class CompareWriter {
  private CompareWriter() {}

  /**
   * Writes the workbook, whole or not at all; the same two bids give the same file.
   *
   * @param date printed on it
   * @param version of the program
   * @param overwrite whether a file that is there already may be replaced
   */
  public static void write(
      BidComparison compared,
      Version a,
      Version b,
      LocalDate date,
      String version,
      Path output,
      boolean overwrite) {
    try (XSSFWorkbook workbook = new XSSFWorkbook()) {
      XSSFSheet sheet = workbook.createSheet(ComparedSheet.NAME);
      new ComparedSheet(sheet, new Look(workbook), compared, a, b).write(date);
      sheet
          .getPrintSetup()
          .setPaperSize(
              compared.system() == UnitSystem.US
                  ? PrintSetup.LETTER_PAPERSIZE
                  : PrintSetup.A4_PAPERSIZE);
      Marks.property(workbook, Marks.COMPARED, version);
      workbook.getProperties().getCoreProperties().setTitle("Two versions of a bid");
      workbook.getProperties().getCoreProperties().setCreator("Wetmil");
      NewWorkbook.write(workbook, List.of(a.file(), b.file()), output, overwrite);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
