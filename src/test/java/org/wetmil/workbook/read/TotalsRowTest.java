package org.wetmil.workbook.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.nio.file.Path;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.xssf.usermodel.XSSFTable;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetmil.estimate.BidLine;

/** The totals row of an Excel table is no line, so a result that it lacks is asked of nobody. */
class TotalsRowTest {
  @TempDir Path folder;

  @Test
  void totalsWithoutAResultAreNoFinding() {
    ReadWorkbook read = read(new Book.Formula("SUBTOTAL(109,C2:C3)", null), 80.0);

    assertThat(read.bid().sheets().get(0).lines()).hasSize(2);
    assertThat(read.bid().remarks()).isEmpty();
  }

  @Test
  void lineWithoutAResultStillIsOne() {
    ReadWorkbook read =
        read(new Book.Formula("SUBTOTAL(109,C2:C3)", 170), new Book.Formula("8*10", null));

    assertThat(read.bid().remarks())
        .extracting("check", "address")
        .containsExactly(tuple("formula-not-computed", "C3"));
  }

  @Test
  void subtotalOfARoomIsNoLineThoughASurfaceStandsBesideIt() {
    Path file =
        new Book()
            .sheet("Bid")
            .row("Room", "Surface", "Area (ft²)", "Coating")
            .row("Lobby", "walls", 300, "latex")
            .row("Lobby", "ceiling", 200, "latex")
            .row("Subtotal Lobby", "walls", 500, "latex")
            .row("Sub-total level 1", "walls", 500, "latex")
            .row("Total Fitness", "walls", 400, "latex")
            .write(folder);

    assertThat(BidReader.read(file, new ReadOptions(2)).bid().sheets().get(0).lines())
        .extracting(BidLine::row)
        .containsExactly(2, 3, 6);
  }

  /** A table too long to be computed here. */
  private ReadWorkbook read(Object total, Object area) {
    Path file =
        new Book()
            .sheet("Bid")
            .row("Room", "Surface", "Area (ft²)", "Coating")
            .row("A", "walls", 90, "latex")
            .row("B", "walls", area, "latex")
            .row("All", null, total)
            .with(TotalsRowTest::makeTable)
            .write(folder);
    return BidReader.read(file, new ReadOptions(2));
  }

  private static void makeTable(XSSFWorkbook workbook) {
    XSSFTable table =
        workbook
            .getSheetAt(0)
            .createTable(new AreaReference("A1:D4", SpreadsheetVersion.EXCEL2007));
    table.setDisplayName("Schedule");
    table.getCTTable().setTotalsRowCount(1);
  }
}
