package org.wetmil.workbook.reconcile;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.wetmil.checks.Finding;
import org.wetmil.quantity.UnitSystem;
import org.wetmil.reconcile.Reconciliation;
import org.wetmil.workbook.copy.LeanWorkbook;
import org.wetmil.workbook.copy.NewWorkbook;
import org.wetmil.workbook.fill.beside.Marks;
import org.wetmil.workbook.look.Look;

/** Writes the workbook that compares purchases with bids. */
public final class ReconcileWriter {
  private final Books books;
  private final List<Finding> findings;
  private final ReconcileStamp stamp;

  /**
   * @param system units of the bids
   */
  public ReconcileWriter(
      Reconciliation result, List<Finding> findings, UnitSystem system, ReconcileStamp stamp) {
    this.books = Books.of(result, system);
    this.findings = findings;
    this.stamp = stamp;
  }

  /**
   * Writes the workbook, whole or not at all.
   *
   * @param inputs files that must stay as they are
   * @param overwrite whether a file that is there already may be replaced
   */
  public void write(List<Path> inputs, Path output, boolean overwrite) {
    try (LeanWorkbook workbook = new LeanWorkbook()) {
      shape(workbook);
      NewWorkbook.write(workbook, inputs, output, overwrite);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void shape(LeanWorkbook workbook) {
    Look look = new Look(workbook);
    XSSFSheet page = workbook.createSheet(ReconcilePage.NAME);
    XSSFSheet ledger = workbook.createSheet(LedgerField.SHEET);
    XSSFSheet unmatched = workbook.createSheet("Unmatched");
    XSSFSheet byCoating = workbook.createSheet("By coating");
    XSSFSheet byJob = workbook.createSheet("By job");
    XSSFSheet byMonth = workbook.createSheet("By month");
    XSSFSheet list = workbook.createSheet("Findings");
    XSSFSheet basis = workbook.createSheet("Basis");
    new LedgerSheet(look, books).write(ledger, look);
    new UnmatchedSheet(look).write(unmatched, look, books.result().lines());
    UseRows rows = new ReconcilePage(page, look, books).write(findings.size());
    GroupSheet groups = new GroupSheet(look, books, rows);
    groups.write(byCoating, GroupSheet.By.COATING);
    groups.write(byJob, GroupSheet.By.JOB);
    new MonthSheet(look, books).write(byMonth);
    UseChart.draw(page, byCoating, books);
    new BookFindings(look).write(workbook, list, findings);
    new ReconcileBasis(basis, look, books).write(stamp);
    short paper =
        books.system() == UnitSystem.US ? PrintSetup.LETTER_PAPERSIZE : PrintSetup.A4_PAPERSIZE;
    workbook.forEach(
        sheet -> {
          sheet.getPrintSetup().setPaperSize(paper);
          Marks.sheet(
              (XSSFSheet) sheet, sheet.getSheetName().toLowerCase(Locale.ROOT).replace(' ', '_'));
        });
    Marks.property(workbook, Marks.RECONCILED, stamp.version());
    var properties = workbook.getProperties().getCoreProperties();
    properties.setTitle("Paint bought against paint bid");
    properties.setCreator("Wetmil");
  }
}
