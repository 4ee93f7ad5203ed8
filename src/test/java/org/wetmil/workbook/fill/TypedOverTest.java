package org.wetmil.workbook.fill;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wetmil.workbook.read.Book;

/** Figures that somebody typed over ours before the next fill. */
class TypedOverTest {
  @TempDir static Path shared;
  private static Refilled once;

  @TempDir Path folder;

  private Refilled filled;

  @BeforeAll
  static void fillABid() {
    Path bid =
        new Book()
            .sheet("Offer")
            .row("Room", "Surface", "Length (ft)", "Width (ft)", "Height (ft)", "Coating", "Notes")
            .row("Hall", "walls", 20, 10, 9, "latex", null)
            .row("Hall", "ceiling", 20, 10, 9, "latex", null)
            .write(shared);
    once = Refilled.first(shared, bid);
  }

  @BeforeEach
  void takeTheFilledOne() {
    filled = once.in(folder);
  }

  @Test
  void nothingIsFoundWhenNobodyTypedAnything() {
    filled.again();

    assertThat(filled.found("overridden-by-hand")).isEmpty();
    assertThat(filled.found("choice-replaced")).isEmpty();
  }

  @Test
  void numberTypedOverAFormulaStaysAndIsReportedAtEachFill() {
    type("Net area", 500);

    for (int i = 0; i < 2; i++) {
      filled.again();
      assertThat(filled.<Double>look(book -> number(book.getSheet("Offer"), "Net area")))
          .isEqualTo(500);
      assertThat(filled.found("overridden-by-hand"))
          .singleElement()
          .asString()
          .contains("Net area was typed by hand: 500 ft² stands, where the formula gives 540 ft²");
    }
  }

  /** A formula after it would divide by 0, or an order be for less than nothing. */
  @ParameterizedTest
  @CsvSource({
    "Net area, -500",
    "Flow, 0",
    "Gun speed, 0",
    "Wet film per coat, 0",
    "Spread, 0",
    "Spread, -5"
  })
  void numberFromWhichNothingFollowsGivesWayToTheFormulaAndIsReported(String column, int number) {
    double paint = filled.look(book -> number(book.getSheet("Offer"), "Paint"));

    type(column, number);
    filled.again();

    assertThat(filled.<Double>look(book -> number(book.getSheet("Offer"), "Paint")))
        .isCloseTo(paint, within(1e-9));
    assertThat(filled.found("overridden-by-hand"))
        .singleElement()
        .asString()
        .contains(column + " was typed by hand as " + number, "which the formula replaces");
  }

  @Test
  void figuresAfterATypedOneFollowIt() {
    double paint = filled.look(book -> number(book.getSheet("Offer"), "Paint"));

    type("Net area", 1080);
    filled.again();

    assertThat(filled.<Double>look(book -> number(book.getSheet("Offer"), "Paint")))
        .as("twice the area of 540 ft²")
        .isCloseTo(2 * paint, within(1e-9));
  }

  @Test
  void refreshPutsTheFormulaBackAndSaysWhatWasThere() {
    type("Net area", 500);
    filled.again(true);

    assertThat(filled.<CellType>look(book -> at(book.getSheet("Offer"), "Net area").getCellType()))
        .isEqualTo(CellType.FORMULA);
    assertThat(filled.found("overridden-by-hand"))
        .singleElement()
        .asString()
        .contains("500 ft², which the formula replaces");
    assertThat(filled.again().found("overridden-by-hand")).isEmpty();
  }

  @Test
  void numberThatTheFormulaGivesBecomesTheFormulaAgain() {
    type("Net area", 540);
    filled.again();

    assertThat(filled.<CellType>look(book -> at(book.getSheet("Offer"), "Net area").getCellType()))
        .isEqualTo(CellType.FORMULA);
    assertThat(filled.found("overridden-by-hand")).isEmpty();
  }

  @Test
  void typedTipCoatsAndPressureAreReplacedAndReported() {
    String code = filled.look(book -> shown(at(book.getSheet("Offer"), "Tip code")));

    filled.change(
        book -> {
          at(book.getSheet("Offer"), "Tip code").setCellValue(211);
          at(book.getSheet("Offer"), "Coats to apply").setCellValue(7);
        });
    filled.again();

    assertThat(filled.<String>look(book -> shown(at(book.getSheet("Offer"), "Tip code"))))
        .isEqualTo(code);
    assertThat(filled.found("choice-replaced"))
        .singleElement()
        .asString()
        .contains("tip code 211, coats to apply 7");
  }

  @Test
  void countTypedToLeaveALineOutIsReportedSinceItIsReplaced() {
    filled.change(book -> free(book.getSheet("Offer"), "Counted").setCellValue(0));
    filled.again();

    assertThat(filled.<Double>look(book -> number(book.getSheet("Offer"), "Counted"))).isEqualTo(1);
    assertThat(filled.found("choice-replaced"))
        .singleElement()
        .asString()
        .contains("The cells held counted 0; this fill gives 1.");
  }

  @Test
  void textTypedOverAFormulaIsReportedWithItsWords() {
    filled.change(book -> free(book.getSheet("Offer"), "Paint (").setCellValue("ask the painter"));
    filled.again();

    assertThat(filled.found("overridden-by-hand"))
        .singleElement()
        .asString()
        .contains("\"ask the painter\"");
  }

  @Test
  void paintTypedWhereNothingCanBeComputedStaysAndCountsForNothing() {
    filled.change(
        book -> {
          book.getSheet("Offer").getRow(1).getCell(5).setCellValue("");
          free(book.getSheet("Offer"), "Paint (").setCellValue(3);
        });
    filled.again();

    assertThat(filled.<Double>look(book -> number(book.getSheet("Offer"), "Paint ("))).isEqualTo(3);
    assertThat(filled.found("overridden-by-hand"))
        .singleElement()
        .asString()
        .contains("3 gal stands, where nothing can be computed");
    assertThat(filled.<Double>look(book -> number(book.getSheet("Offer"), "Counted"))).isZero();
  }

  private void type(String heading, double number) {
    filled.change(book -> free(book.getSheet("Offer"), heading).setCellValue(number));
  }

  /** The cell without its formula, as typing leaves it. */
  private static Cell free(XSSFSheet sheet, String heading) {
    Cell cell = at(sheet, heading);
    if (cell.getCellType() == CellType.FORMULA) {
      cell.removeFormula();
    }
    return cell;
  }

  private static Cell at(XSSFSheet sheet, String heading) {
    return Refilled.under(sheet, heading, 1);
  }

  private static double number(XSSFSheet sheet, String heading) {
    return at(sheet, heading).getNumericCellValue();
  }

  private static String shown(Cell cell) {
    return cell.toString();
  }
}
