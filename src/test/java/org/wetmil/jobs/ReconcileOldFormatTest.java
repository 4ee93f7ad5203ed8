package org.wetmil.jobs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Bids of Excel 97-2003 are compared with purchases like newer ones. */
class ReconcileOldFormatTest {
  private static final LocalDate DATE = LocalDate.of(2026, 5, 4);

  @TempDir Path folder;

  private Path ledger;

  @BeforeEach
  void writeLedger() throws IOException {
    ledger =
        Files.writeString(
            folder.resolve("purchases.csv"),
            "Date,Job,Item,Quantity,Unit,Amount\n2026-04-03,hall,latex,5,gal,210.00\n");
  }

  @Test
  void anOldBidGivesTheSameFiguresAsANewerOne() throws IOException {
    Path old = Files.createDirectory(folder.resolve("old")).resolve("hall.xls");
    Path anew = Files.createDirectory(folder.resolve("new")).resolve("hall.xlsx");
    save(new HSSFWorkbook(), old);
    save(new XSSFWorkbook(), anew);

    ReconcileReport ofOld = run(old);
    ReconcileReport ofNew = run(anew);

    assertThat(ofOld.refusals()).isEmpty();
    assertThat(ofOld.output()).isEqualTo(old.resolveSibling("hall-reconciled.xlsx"));
    assertThat(ofOld.result())
        .usingRecursiveComparison()
        .withEqualsForType(Double::equals, Double.class)
        .isEqualTo(ofNew.result());
    assertThat(ofOld.findings()).isEqualTo(ofNew.findings());
  }

  @Test
  void ofAnOldBidAndItsNewerSelfInOneFolderTheNewerCounts() throws IOException {
    Path bids = Files.createDirectory(folder.resolve("bids"));
    save(new HSSFWorkbook(), bids.resolve("hall.xls"));
    save(new HSSFWorkbook(), bids.resolve("loft.xls"));
    save(new XSSFWorkbook(), bids.resolve("hall.xlsx"));

    BidFiles found = BidFiles.of(List.of(bids));

    assertThat(found.files()).containsExactly(bids.resolve("hall.xlsx"), bids.resolve("loft.xls"));
    assertThat(found.notices()).singleElement().asString().contains("hall.xls: passed over");
  }

  private ReconcileReport run(Path bid) {
    return ReconcileJob.run(
        new ReconcileRequest(
            List.of(bid), List.of(ledger), null, null, null, null, null, false, DATE, "test"));
  }

  private static void save(Workbook book, Path file) throws IOException {
    try (book;
        OutputStream out = Files.newOutputStream(file)) {
      Sheet sheet = book.createSheet("Bid");
      String[][] rows = {
        {"Room", "Surface", "Length (ft)", "Width (ft)", "Height (ft)", "Coating"},
        {"Hall", "walls", "40", "30", "9", "latex"},
        {"Hall", "ceiling", "40", "30", "", "latex"}
      };
      for (int i = 0; i < rows.length; i++) {
        Row row = sheet.createRow(i);
        for (int j = 0; j < rows[i].length; j++) {
          row.createCell(j).setCellValue(rows[i][j]);
        }
      }
      book.write(out);
    }
  }
}
