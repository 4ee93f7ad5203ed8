package org.wetmil.workbook.fill;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetmil.workbook.read.Book;

/** Values that somebody typed over ours on Basis before the next fill, and the list of fills. */
class BasisTypedOverTest {
  @TempDir static Path shared;
  private static Refilled once;

  @TempDir Path folder;

  private Refilled filled;

  @BeforeAll
  static void fillABid() {
    Path bid =
        new Book()
            .sheet("Offer")
            .row("Room", "Surface", "Length (ft)", "Width (ft)", "Height (ft)", "Coating")
            .row("Hall", "walls", 20, 10, 9, "latex")
            .sheet("Settings")
            .row("Setting", "Value")
            .row("Waste", 0.05)
            .write(shared, "hall.xlsx");
    once = Refilled.first(shared, bid);
  }

  @BeforeEach
  void takeTheFilledOne() {
    filled = once.in(folder);
  }

  @Test
  void nothingIsYoursUntilSomebodyTypes() {
    filled.again().again();

    assertThat(filled.found("basis-typed-over")).isEmpty();
    assertThat(filled.found("table-value")).isEmpty();
  }

  @Test
  void typedValueIsReadAtEveryLaterFillAndListed() {
    filled.change(book -> value(book, "latex", "Volume solids").setCellValue(0.18));
    double paint = filled.look(BasisTypedOverTest::paint);
    double film = filled.look(BasisTypedOverTest::dryFilm);

    for (int i = 0; i < 3; i++) {
      filled.again();
      assertThat(filled.found("basis-typed-over"))
          .singleElement()
          .asString()
          .startsWith("latex, volume solids is 0.18 as typed on Basis")
          .contains(i == 0 ? "typed over 0.36" : "Basis.");
      assertThat(
              filled.<Double>look(
                  book -> value(book, "latex", "Volume solids").getNumericCellValue()))
          .isEqualTo(0.18);
      assertThat(filled.<String>look(book -> from(book, "latex", "Volume solids")))
          .isEqualTo("Basis (yours)");
    }
    assertThat(filled.<Double>look(BasisTypedOverTest::dryFilm))
        .as("half the solids, half the film")
        .isCloseTo(film / 2, within(1e-9));
    assertThat(filled.<Double>look(BasisTypedOverTest::paint)).isCloseTo(paint, within(1e-9));
  }

  @Test
  void emptiedValueGoesBackToTheFormerOne() {
    filled.change(book -> value(book, "latex", "Volume solids").setCellValue(0.18)).again();

    filled.change(book -> value(book, "latex", "Volume solids").setBlank()).again();

    assertThat(filled.found("basis-typed-over")).isEmpty();
    assertThat(
            filled.<Double>look(
                book -> value(book, "latex", "Volume solids").getNumericCellValue()))
        .isEqualTo(0.36);
  }

  @Test
  void wordsAndSettingsMayBeTypedOverToo() {
    filled.change(
        book -> {
          value(book, "Measuring rule", "Value").setCellValue("Solid");
          value(book, "Overlap", "Value").setCellValue("40 %");
        });
    filled.again();

    assertThat(filled.found("basis-typed-over")).hasSize(2);
    assertThat(filled.<String>look(book -> value(book, "Measuring rule", "Value").toString()))
        .isEqualTo("Solid");
    assertThat(filled.<Double>look(book -> value(book, "Overlap", "Value").getNumericCellValue()))
        .isEqualTo(0.4);
  }

  @Test
  void valueThatFollowsACellOfYoursIsThatCellsUntilItIsTypedOver() {
    filled.change(book -> book.getSheet("Settings").getRow(1).getCell(1).setCellValue(0.2));
    filled.again();
    assertThat(filled.found("basis-typed-over")).isEmpty();

    filled.change(
        book -> {
          Cell waste = value(book, "Waste", "Value");
          assertThat(waste.getCellType()).isEqualTo(CellType.FORMULA);
          waste.removeFormula();
          waste.setCellValue(0.3);
        });
    filled.again();
    assertThat(filled.found("basis-typed-over")).hasSize(1);
    assertThat(filled.<Double>look(book -> value(book, "Waste", "Value").getNumericCellValue()))
        .isEqualTo(0.3);
  }

  @Test
  void valueOutOfRangeIsAFindingAndTheFormerOneStays() {
    filled.change(book -> value(book, "latex", "Volume solids").setCellValue(-2)).again();

    assertThat(filled.found("table-value")).hasSize(1);
    assertThat(
            filled.<Double>look(
                book -> value(book, "latex", "Volume solids").getNumericCellValue()))
        .isEqualTo(0.36);
  }

  @Test
  void everyFillIsListedWithItsDateVersionAndInput() {
    filled.again().again();

    assertThat(filled.<List<String>>look(BasisTypedOverTest::fills))
        .containsExactly(
            "2024-05-01 Wetmil 0.1.0 hall.xlsx",
            "2024-05-02 Wetmil 0.1.0 fill-1.xlsx",
            "2024-05-03 Wetmil 0.1.0 fill-2.xlsx");
  }

  @Test
  void jobKeepsTheNameOfTheFirstInput() {
    filled.again();

    assertThat(filled.<String>look(book -> book.getSheet("Basis").getRow(2).getCell(2).toString()))
        .isEqualTo("hall");
  }

  private static List<String> fills(XSSFWorkbook book) {
    List<String> fills = new ArrayList<>();
    XSSFSheet basis = book.getSheet("Basis");
    int at = 0;
    while (!text(basis.getRow(at), 0).equals("Filled on")) {
      at++;
    }
    for (at++; !text(basis.getRow(at), 0).isEmpty(); at++) {
      Row row = basis.getRow(at);
      fills.add(text(row, 0) + " " + text(row, 1) + " " + text(row, 2));
    }
    return fills;
  }

  private static Cell value(XSSFWorkbook book, String row, String figure) {
    return row(book, row, figure).getCell(3);
  }

  private static String from(XSSFWorkbook book, String row, String figure) {
    return text(row(book, row, figure), 7);
  }

  private static Row row(XSSFWorkbook book, String name, String figure) {
    for (Row row : book.getSheet("Basis")) {
      if (text(row, 1).equals(name) && text(row, 2).equals(figure)) {
        return row;
      }
    }
    throw new AssertionError(name + ", " + figure);
  }

  private static String text(Row row, int column) {
    Cell cell = row == null ? null : row.getCell(column);
    return cell == null ? "" : cell.toString();
  }

  private static double paint(XSSFWorkbook book) {
    return Refilled.under(book.getSheet("Offer"), "Paint (", 1).getNumericCellValue();
  }

  private static double dryFilm(XSSFWorkbook book) {
    return Refilled.under(book.getSheet("Offer"), "Dry film", 1).getNumericCellValue();
  }
}
