package org.wetmil.workbook.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.poi.hssf.record.crypto.Biff8EncryptionKey;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.SheetVisibility;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetmil.workbook.WorkbookException;
import org.wetmil.workbook.read.grid.Grid;
import org.wetmil.workbook.read.grid.GridReader;
import org.wetmil.workbook.read.grid.MissingResults;
import org.wetmil.workbook.read.grid.OwnMarks;
import org.wetmil.workbook.stream.PackageReader;

/** A workbook of Excel 97-2003 is read as the same cells as one in the newer format. */
class OldFormatTest {
  @TempDir Path folder;

  @Test
  void theSameCellsGiveTheSameBid() throws IOException {
    Path old = Files.createDirectory(folder.resolve("old")).resolve("bid.xls");
    Path anew = Files.createDirectory(folder.resolve("new")).resolve("bid.xlsx");
    save(new HSSFWorkbook(), old);
    save(new XSSFWorkbook(), anew);

    ReadableCopy copy = ReadableCopy.of(old);
    ReadWorkbook read = BidReader.read(copy);
    assertThat(read.bid().sheets()).isEqualTo(BidReader.read(anew).bid().sheets());
    assertThat(read.bid().remarks()).isEqualTo(BidReader.read(anew).bid().remarks());
    assertThat(read.bid().job()).isEqualTo("bid");
    assertThat(read.bid().sheets()).hasSize(1);
    assertThat(read.bid().sheets().get(0).lines()).hasSize(4);
    assertThat(OldSums.of(copy)).isEqualTo(OldSums.of(ReadableCopy.of(anew)));
  }

  @Test
  void everyCellIsRead() throws IOException {
    Path old = folder.resolve("bid.xls");
    Path anew = folder.resolve("bid.xlsx");
    save(new HSSFWorkbook(), old);
    save(new XSSFWorkbook(), anew);
    ReadableCopy copy = ReadableCopy.of(old);
    assertThat(cells(copy)).isEqualTo(cells(ReadableCopy.of(anew))).hasSizeGreaterThan(30);
  }

  @Test
  void theFileStaysAsItIsAndNothingIsLaidBesideIt() throws IOException {
    Path old = folder.resolve("bid.xls");
    save(new HSSFWorkbook(), old);
    byte[] before = Files.readAllBytes(old);

    BidReader.read(ReadableCopy.of(old));

    assertThat(old).hasBinaryContent(before);
    try (Stream<Path> files = Files.list(folder)) {
      assertThat(files).containsExactly(old);
    }
  }

  @Test
  void whatCannotBeReadIsSaidWithTheNameOfTheFile() throws IOException {
    Path noBid = folder.resolve("notes.xls");
    try (Workbook book = new HSSFWorkbook();
        OutputStream out = Files.newOutputStream(noBid)) {
      book.createSheet("Notes").createRow(0).createCell(0).setCellValue("call back");
      book.write(out);
    }
    ReadableCopy copy = ReadableCopy.of(noBid);
    assertThatThrownBy(() -> BidReader.read(copy))
        .isInstanceOf(WorkbookException.class)
        .hasMessageStartingWith(noBid.toString());

    Path cut = folder.resolve("cut.xls");
    save(new HSSFWorkbook(), cut);
    byte[] bytes = Files.readAllBytes(cut);
    for (int i = 1100; i < 2600; i++) {
      bytes[i] = (byte) 0xC5;
    }
    Files.write(cut, bytes);
    assertThatThrownBy(() -> ReadableCopy.of(cut))
        .isInstanceOf(WorkbookException.class)
        .hasMessageStartingWith(cut.toString());

    Path locked = folder.resolve("locked.xls");
    Biff8EncryptionKey.setCurrentUserPassword("word");
    try {
      save(new HSSFWorkbook(), locked);
    } finally {
      Biff8EncryptionKey.setCurrentUserPassword(null);
    }
    assertThatThrownBy(() -> ReadableCopy.of(locked))
        .isInstanceOf(WorkbookException.Encrypted.class);
  }

  private static List<Object> cells(ReadableCopy copy) {
    List<Object> cells = new ArrayList<>();
    try (PackageReader workbook = copy.open();
        MissingResults missing = new MissingResults(workbook.zip()::whole, 0)) {
      GridReader grids = new GridReader(workbook, OwnMarks.of(workbook), missing);
      workbook
          .sheets()
          .forEach(
              sheet -> {
                Grid grid = grids.whole(sheet);
                cells.add(sheet.name() + " " + sheet.visibility());
                grid.rows()
                    .forEach(
                        row ->
                            row.cells()
                                .forEach(
                                    cell ->
                                        cells.add(
                                            List.of(
                                                cell.row(),
                                                cell.column(),
                                                row.hidden(),
                                                grid.isCovered(cell.row(), cell.column()),
                                                cell.kind(),
                                                grid.texts().shown(cell),
                                                String.valueOf(cell.formula())))));
              });
    }
    return cells;
  }

  /** A bid with what an old one may hold, of either format. */
  private static void save(Workbook book, Path file) throws IOException {
    try (book;
        OutputStream out = Files.newOutputStream(file)) {
      Sheet bid = book.createSheet("Bid");
      row(bid, 0, "Repaint of the hall, 2004");
      bid.addMergedRegion(new CellRangeAddress(0, 0, 0, 4));
      row(
          bid,
          2,
          "Room",
          "Surface",
          "Length (ft)",
          "Width (ft)",
          "Height (ft)",
          "Coating",
          "Waste");
      row(bid, 3, "Hall", "walls", 20, 15, 9, "latex", 0.05);
      row(bid, 4, "Hall", "ceiling", 20, 15, 9, "latex");
      row(bid, 5, "Entry", "walls", "12' 6\"", 10, 8.5, "latex");
      row(bid, 6, "Attic", "walls", 12, 10, 8, "latex");
      bid.getRow(6).setZeroHeight(true);
      bid.getRow(4).getCell(2).setCellFormula("C4*1");
      CellStyle percent = book.createCellStyle();
      percent.setDataFormat(book.createDataFormat().getFormat("0.0%"));
      bid.getRow(3).getCell(6).setCellStyle(percent);
      row(bid, 8, "Total", "", 0);
      bid.getRow(8).getCell(2).setCellFormula("SUM(C4:C5)");
      Sheet settings = book.createSheet("Settings");
      row(settings, 0, "Setting", "Value");
      row(settings, 1, "Date done", LocalDate.of(2004, 5, 6));
      CellStyle date = book.createCellStyle();
      date.setDataFormat(book.createDataFormat().getFormat("m/d/yyyy"));
      settings.getRow(1).getCell(1).setCellStyle(date);
      row(settings, 2, "Estimator", true);
      row(book.createSheet("Old"), 0, "not looked at");
      book.setSheetVisibility(2, SheetVisibility.VERY_HIDDEN);
      book.getCreationHelper().createFormulaEvaluator().evaluateAll();
      book.write(out);
    }
  }

  private static void row(Sheet sheet, int number, Object... values) {
    Row row = sheet.createRow(number);
    for (int i = 0; i < values.length; i++) {
      Cell cell = row.createCell(i);
      if (values[i] instanceof Number value) {
        cell.setCellValue(value.doubleValue());
      } else if (values[i] instanceof Boolean value) {
        cell.setCellValue(value);
      } else if (values[i] instanceof LocalDate value) {
        cell.setCellValue(value);
      } else if (!values[i].toString().isEmpty()) {
        cell.setCellValue(values[i].toString());
      }
    }
  }
}
