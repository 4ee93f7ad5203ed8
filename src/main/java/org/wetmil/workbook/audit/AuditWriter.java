package org.wetmil.workbook.audit;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.wetmil.workbook.copy.NewWorkbook;
import org.wetmil.workbook.fill.beside.Marks;
import org.wetmil.workbook.look.Look;

/** Writes an audited workbook. */
public final class AuditWriter {
  private AuditWriter() {}

  /**
   * Writes the workbook, whole or not at all; the same audit gives the same file.
   *
   * @param inputs files that must stay as they are
   * @param overwrite whether an older result may be replaced
   */
  public static void write(AuditBook book, List<Path> inputs, Path output, boolean overwrite) {
    try (XSSFWorkbook workbook = new XSSFWorkbook()) {
      Look look = new Look(workbook);
      XSSFSheet page = workbook.createSheet(AuditPage.NAME);
      XSSFSheet charts = workbook.createSheet(ChartsSheet.NAME);
      new JobsSheet(workbook.createSheet(JobsSheet.NAME), look, book).write();
      int below = new AuditPage(page, look, book).write();
      new ChartsSheet(charts, page, look, book).write(below);
      new GroupsSheet(workbook.createSheet("Groups"), look, book).write();
      new SetupsSheet(workbook.createSheet("Setups"), look, book).write();
      new FiredSheet(workbook.createSheet(FiredSheet.NAME), look, book).write();
      new MovedSheet(workbook.createSheet(MovedSheet.NAME), look, book).write();
      new SuggestedSheet(workbook.createSheet(SuggestedSheet.NAME), look, book).write();
      PlainLists.findings(workbook.createSheet("Findings"), look, book);
      PlainLists.unreadable(workbook.createSheet("Unreadable"), look, book);
      new BasisPage(workbook.createSheet("Basis"), look, book).write();
      Marks.property(workbook, Marks.AUDITED, book.stamp().version());
      workbook.setActiveSheet(0);
      NewWorkbook.write(workbook, inputs, output, overwrite);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
