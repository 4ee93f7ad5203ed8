package org.wetmil.workbook.reconcile;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetmil.ledger.Ledgers;
import org.wetmil.quantity.UnitSystem;
import org.wetmil.reconcile.ReconcileSettings;
import org.wetmil.reconcile.Reconciler;
import org.wetmil.reconcile.SettingsTaken;
import org.wetmil.reconcile.bid.BidJob;
import org.wetmil.reconcile.bid.BidUse;

/** Up to a limit figures are formulas over the lines; beyond it they are values, which is said. */
class LiveLimitTest {
  private static final int LIMIT = 20_000;
  private static final String SENTENCE =
      "The ledgers have more than 20,000 lines: figures here are values and follow no change.";

  @TempDir Path folder;

  @Test
  void upToTheLimitFiguresFollowTheLedger() throws IOException {
    try (XSSFWorkbook book = reconciled(LIMIT)) {
      assertThat(formulas(book)).isGreaterThan(50);
      assertThat(texts(book.getSheet("Reconcile"))).doesNotContain(SENTENCE);
    }
  }

  @Test
  void beyondTheLimitFiguresAreValuesAndThePageSaysSo() throws IOException {
    try (XSSFWorkbook book = reconciled(LIMIT + 1)) {
      assertThat(formulas(book)).isZero();
      assertThat(texts(book.getSheet("Reconcile"))).contains(SENTENCE);
      assertThat(book.getSheet("Ledger").getLastRowNum()).isEqualTo(LIMIT + 1);
      Row latex = book.getSheet("By coating").getRow(1);
      assertThat(latex.getCell(0).getStringCellValue()).isEqualTo("latex");
      assertThat(
              latex.getCell(GroupSheet.FIGURES + PaintColumn.USED.ordinal()).getNumericCellValue())
          .isEqualTo(LIMIT + 1);
    }
  }

  @Test
  void withoutAnyPaintBidThePageSaysSoInThePlaceOfTables() throws IOException {
    try (XSSFWorkbook book = reconciled(List.of(), "Job,Item,Qty,Unit", "Loft,latex,1,gal")) {
      assertThat(texts(book.getSheet("Reconcile"), 60))
          .contains(ReconcilePage.NO_USES, "Unmatched in all")
          .doesNotContain("Job", "Paint by job and coating");
      assertThat(book.getSheet("By coating").getLastRowNum()).isZero();
      assertThat(book.getSheet("By job").getLastRowNum()).isZero();
    }
  }

  /** One gallon of latex a line. */
  private XSSFWorkbook reconciled(int lines) throws IOException {
    String[] text =
        Stream.concat(
                Stream.of("Job,Num,Item,Qty,Unit,Amount"),
                IntStream.range(0, lines).mapToObj(i -> "Loft,N-" + i + ",latex,1,gal,30.00"))
            .toArray(String[]::new);
    BidUse use = new BidUse("latex", "latex", 9, 9, 1.5, 6.65, 10, 0.7, 0.05, 1, null, 1);
    return reconciled(List.of(use), text);
  }

  private XSSFWorkbook reconciled(List<BidUse> uses, String... text) throws IOException {
    BidJob job = new BidJob("Loft", uses, "", Map.of(), List.of());
    Path file = folder.resolve("reconciled.xlsx");
    new ReconcileWriter(
            Reconciler.reconcile(
                List.of(job), List.of(Ledgers.book(text)), List.of(), ReconcileSettings.DEFAULT),
            List.of(),
            UnitSystem.US,
            new ReconcileStamp(LocalDate.of(2026, 5, 4), "test", List.of(), SettingsTaken.BUILT_IN))
        .write(List.of(), file, false);
    try (InputStream in = Files.newInputStream(file)) {
      return new XSSFWorkbook(in);
    }
  }

  private static long formulas(XSSFWorkbook book) {
    long count = 0;
    for (Sheet sheet : book) {
      for (Row row : sheet) {
        for (Cell cell : row) {
          count += cell.getCellType() == CellType.FORMULA ? 1 : 0;
        }
      }
    }
    return count;
  }

  private static List<String> texts(Sheet sheet) {
    return texts(sheet, 7);
  }

  private static List<String> texts(Sheet sheet, int rows) {
    return IntStream.range(0, rows)
        .mapToObj(sheet::getRow)
        .filter(row -> row != null && row.getCell(0) != null)
        .map(row -> row.getCell(0).toString())
        .toList();
  }
}
