package org.wetmil.jobs.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetmil.audit.tables.MovedFigure;
import org.wetmil.audit.tables.TableMoves;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.jobs.FillJob;
import org.wetmil.quantity.UnitSystem;
import org.wetmil.workbook.opc.Passwords;
import org.wetmil.workbook.read.BidReader;

/** A past bid filled with the tables that it carries and with today's. */
class TablesThenAndNowTest {
  private static final Object[][] LINES = {
    {"Room", "Surface", "Length (ft)", "Width (ft)", "Height (ft)", "Coating"},
    {"Hall", "walls", 60.0, 40.0, 9.0, "latex"},
    {"Hall", "ceiling", 60.0, 40.0, 9.0, "Hall Semi"}
  };
  private static final Object[][] PRODUCT = {
    {"Coating", "Class", "Volume solids (%)"}, {"Hall Semi", "latex", 40.0}
  };

  @TempDir Path folder;

  @Test
  void aBidWithTodaysTablesHasMovedNothing() throws IOException {
    TableMoves moves = moves(bid("bid"), Catalogue.builtIn());
    assertThat(moves.figures()).isEmpty();
    assertThat(moves.now()).isEqualTo(moves.then());
    assertThat(moves.then().paintGal()).isPositive();
  }

  @Test
  void aLossOfTheBidsOwnIsNamedWithWhatItMakes() throws IOException {
    Path bid = bid("bid", "Losses", new Object[] {"Coating", "Surface", "Stick"}, loss(0.5));
    TableMoves plain = moves(bid("plain"), Catalogue.builtIn());
    TableMoves moves = moves(bid, Catalogue.builtIn());
    MovedFigure stick = only(moves);
    assertThat(stick.table()).isEqualTo("Losses");
    assertThat(stick.row()).isEqualTo("latex on walls");
    assertThat(stick.then().number()).isEqualTo(0.5);
    assertThat(stick.now().number()).isEqualTo(0.7);
    assertThat(moves.now()).isEqualTo(plain.then());
    assertThat(stick.paintGal())
        .isCloseTo(moves.now().paintGal() - moves.then().paintGal(), within(1e-9))
        .isNegative();
  }

  @Test
  void eachFigureThatMovedIsNamedByItself() throws IOException {
    Path bid =
        bid(
            "bid",
            "Surfaces",
            new Object[] {"Surface", "Stick", "Trigger share"},
            new Object[] {"walls", 0.6, 0.1},
            new Object[] {"siding", 0.5, 0.1});
    TableMoves moves = moves(bid, Catalogue.builtIn());
    assertThat(moves.figures())
        .as("of the rows that the bid uses")
        .extracting(MovedFigure::row, MovedFigure::figure)
        .containsExactlyInAnyOrder(tuple("walls", "Stick"), tuple("walls", "Trigger share"));
    assertThat(moves.figures())
        .filteredOn(figure -> figure.figure().equals("Trigger share"))
        .allMatch(figure -> figure.hours() < 0 && figure.paintGal() == 0);
  }

  @Test
  void whatTheBidSaysOfItsJobIsNoFigureThatMoves() throws IOException {
    Path bid =
        bid(
            "bid",
            "Settings",
            new Object[] {"Setting", "Value"},
            new Object[] {"Waste", 0.1},
            new Object[] {"Guns", 2.0});
    assertThat(moves(bid, Catalogue.builtIn()).figures()).isEmpty();
  }

  @Test
  void theFiguresOnTheBasisOfAnEarlierFillAreWhatTheBidWasMadeWith() throws IOException {
    Path bid = bid("bid");
    Path filled = folder.resolve("filled.xlsx");
    new FillJob(LocalDate.of(2026, 1, 5), "test", false).fill(bid, filled);
    assertThat(moves(filled, Catalogue.builtIn()).figures()).isEmpty();

    // as an older program would have left it, whose built-in stick of walls was another
    Path older = folder.resolve("older.xlsx");
    try (InputStream in = Files.newInputStream(filled);
        XSSFWorkbook book = new XSSFWorkbook(in);
        OutputStream out = Files.newOutputStream(older)) {
      for (Row row : book.getSheet("Basis")) {
        if (row.getCell(1) != null
            && row.getCell(2) != null
            && row.getCell(1).toString().equals("walls")
            && row.getCell(2).toString().equals("Stick")) {
          row.getCell(3).setCellValue(0.65);
          row.getCell(9).setCellValue(0.65);
        }
      }
      book.write(out);
    }
    MovedFigure stick = only(moves(older, Catalogue.builtIn()));
    assertThat(stick.row()).isEqualTo("walls");
    assertThat(stick.then().number()).isEqualTo(0.65);
    assertThat(stick.now().number()).isEqualTo(0.7);
  }

  @Test
  void todaysTablesMayBeTheOwnersAndMayNameProductsOfTheBids() throws IOException {
    Path tables = folder.resolve("tables.xlsx");
    save(
        tables,
        "Losses",
        new Object[][] {
          {"Coating", "Surface", "Stick"}, {"Hall Semi", "ceiling", 0.6}, {"latex", "walls", 0.7}
        });
    Catalogue today =
        Catalogue.builtIn()
            .with(BidReader.tables(tables, Passwords.NONE), UnitSystem.US, new ArrayList<>());
    MovedFigure stick = only(moves(bid("bid"), today));
    assertThat(stick.row()).isEqualTo("Hall Semi on ceiling");
    assertThat(stick.paintGal()).isPositive();
    PastBook book = PastBook.read(bid("other"), UnitSystem.US, today);
    assertThat(book.lines().get(1).applied().paint())
        .as("the bid was made without the loss that is today's")
        .isCloseTo(0.6 / 0.7, within(1e-12));
  }

  private static MovedFigure only(TableMoves moves) {
    assertThat(moves.figures()).hasSize(1);
    return moves.figures().get(0);
  }

  private static TableMoves moves(Path bid, Catalogue today) {
    return PastBook.read(bid, UnitSystem.US, today).moves();
  }

  private static Object[] loss(double stick) {
    return new Object[] {"latex", "walls", stick};
  }

  private Path bid(String name) throws IOException {
    return bid(name, "Notes");
  }

  private Path bid(String name, String sheet, Object[]... rows) throws IOException {
    Path file = folder.resolve(name + ".xlsx");
    save(file, sheet, rows);
    return file;
  }

  private static void save(Path file, String sheet, Object[][] rows) throws IOException {
    try (XSSFWorkbook book = new XSSFWorkbook();
        OutputStream out = Files.newOutputStream(file)) {
      write(book.createSheet("Bid"), LINES);
      write(book.createSheet("Coatings"), PRODUCT);
      write(book.createSheet(sheet), rows);
      book.write(out);
    }
  }

  private static void write(Sheet sheet, Object[][] rows) {
    for (int i = 0; i < rows.length; i++) {
      Row row = sheet.createRow(i);
      for (int j = 0; j < rows[i].length; j++) {
        if (rows[i][j] instanceof Double number) {
          row.createCell(j).setCellValue(number);
        } else {
          row.createCell(j).setCellValue(rows[i][j].toString());
        }
      }
    }
  }
}
