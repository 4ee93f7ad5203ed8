package org.wetmil.workbook.fill;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.Locale;
import java.util.stream.StreamSupport;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFFormulaEvaluator;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTCellFormula;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.STCellFormulaType;
import org.wetmil.workbook.read.Book;

/** Formulas that somebody put in the place of ours before the next fill. */
class FormulaOfYoursTest {
  @TempDir static Path shared;
  private static Refilled once;

  @TempDir Path folder;

  private Refilled filled;

  @BeforeAll
  static void fillABid() {
    once = Refilled.first(shared, book("latex").write(shared));
  }

  @BeforeEach
  void takeTheFilledOne() {
    filled = once.in(folder);
  }

  private static Book book(String secondCoating) {
    return new Book()
        .sheet("Offer")
        .row("Room", "Surface", "Length (ft)", "Width (ft)", "Height (ft)", "Coating", "Notes")
        .row("Hall", "walls", 20, 10, 9, "latex", null)
        .row("Hall", "ceiling", 20, 10, 9, secondCoating, null)
        .row("Den", "walls", 12, 10, 9, "latex", null)
        .sheet("Mine")
        .row("Allowance", 1.5);
  }

  @Test
  void formulaOfYoursStaysAndIsReportedAtEachFill() {
    put("Net area", 1, "C2*D2*3");

    for (int i = 0; i < 2; i++) {
      filled.again();
      assertThat(formula("Net area", 1)).isEqualTo("C2*D2*3");
      assertThat(number("Net area", 1)).isEqualTo(600);
      assertThat(filled.found("overridden-by-hand"))
          .singleElement()
          .asString()
          .contains("Net area holds a formula of yours, \"=C2*D2*3\": 600 ft² stands")
          .contains("where the formula gives 540 ft²");
    }
  }

  @Test
  void figuresAfterAFormulaOfYoursFollowIt() {
    double paint = number("Paint (", 1);

    put("Net area", 1, "2*(C2+D2)*E2*2");
    filled.again();

    assertThat(number("Paint (", 1)).isCloseTo(2 * paint, within(1e-9));
  }

  @Test
  void refreshPutsOursBackAndSaysWhatWasThere() {
    String ours = formula("Net area", 1);
    put("Net area", 1, "C2*D2*3");

    filled.again(true);

    assertThat(formula("Net area", 1)).isEqualTo(ours);
    assertThat(filled.found("overridden-by-hand"))
        .singleElement()
        .asString()
        .contains("held a formula of yours, \"=C2*D2*3\", which came to 600 ft²");
    assertThat(filled.again().found("overridden-by-hand")).isEmpty();
  }

  @Test
  void factorOrConstantAddedToOursMakesItYours() {
    String paint = formula("Paint (", 1);
    put("Paint (", 1, "(" + paint + ")*1.25");
    put("Paint (", 3, paint.replace("2", "4") + "+0.5");
    filled.again();

    assertThat(filled.found("overridden-by-hand")).hasSize(2);
    assertThat(formula("Paint (", 1)).endsWith("*1.25");
  }

  @Test
  void formulaOfYoursThatComesToTheSameBecomesOursAgain() {
    String ours = formula("Net area", 1);
    put("Net area", 1, "540+0");
    filled.again();

    assertThat(formula("Net area", 1)).isEqualTo(ours);
    assertThat(filled.found("overridden-by-hand")).isEmpty();
  }

  @Test
  void oursThatFollowedAnotherLengthIsNotTakenForYours() {
    filled.change(
        book -> {
          book.getSheet("Offer").getRow(1).getCell(2).setCellValue(33);
          book.getSheet("Offer").getRow(3).getCell(5).setCellValue("oil-based");
          XSSFFormulaEvaluator.evaluateAllFormulaCells(book);
        });
    filled.again();

    assertThat(filled.found("overridden-by-hand")).isEmpty();
  }

  @Test
  void oursAfterAColumnWasInsertedIsNotTakenForYours() {
    filled.change(
        book -> {
          XSSFSheet sheet = book.getSheet("Offer");
          sheet.shiftColumns(6, 40, 1);
        });
    filled.again();

    assertThat(filled.found("overridden-by-hand")).isEmpty();
  }

  @Test
  void spacesCaseAndFixedColumnsDoNotMakeItYours() {
    String net = formula("Net area", 1);
    String paint = formula("Paint (", 1);
    put("Paint (", 1, paint.replaceAll("([A-Z]+)(\\d)", "\\$$1$2").toLowerCase(Locale.ROOT) + " ");
    filled.change(book -> at(book, "Coating used", 1).setCellValue("latex"));
    filled.change(book -> at(book, "Net area", 1).setCellFormula(net.replace("*", " * ")));
    filled.again();

    assertThat(filled.found("overridden-by-hand")).isEmpty();
  }

  @Test
  void formulaThatPointsAtBasisFollowsItsFigureToItsNewRow() {
    String solids = basis("latex", "Volume solids");
    put("Dry film total", 1, at("Wet film per coat", 1) + "*" + solids + "*3");
    filled.change(book -> book.getSheet("Offer").getRow(2).getCell(5).setCellValue("elastomeric"));
    filled.change(book -> book.getSheet("Offer").getRow(1).getCell(5).setCellValue("elastomeric"));
    filled.again();

    assertThat(formula("Dry film total", 1))
        .isEqualTo(at("Wet film per coat", 1) + "*" + basis("latex", "Volume solids") + "*3")
        .doesNotContain(solids);
  }

  @Test
  void formulaThatPointsAtAnotherSheetOfYoursStays() {
    put("Labour (", 1, "Mine!B1*2");
    filled.again();

    assertThat(formula("Labour (", 1)).isEqualTo("Mine!B1*2");
    assertThat(number("Labour (", 1)).isEqualTo(3);
  }

  @Test
  void formulaThatPointsAtASheetMadeAnewLeavesItsValue() {
    put("Labour (", 1, "Hours!A1+7", 7);
    filled.again();

    assertThat(filled.<CellType>look(book -> at(book, "Labour (", 1).getCellType()))
        .isEqualTo(CellType.NUMERIC);
    assertThat(number("Labour (", 1)).isEqualTo(7);
    assertThat(filled.found("overridden-by-hand"))
        .singleElement()
        .asString()
        .contains("points at what is made anew: its value 7 h stands");
  }

  @Test
  void formulaThatMovesWithOurColumnsStillPointsAtThem() {
    put("Labour (", 1, at("Net area", 1) + "/100");
    filled.change(
        book -> {
          XSSFSheet sheet = book.getSheet("Offer");
          sheet.getRow(2).createCell(60).setCellValue("my own note, far to the right");
          sheet.getRow(2).createCell(sheet.getRow(0).getLastCellNum()).setCellValue("near");
          XSSFSheet settings = book.createSheet("Settings");
          settings.createRow(0).createCell(0).setCellValue("Setting");
          settings.getRow(0).createCell(1).setCellValue("Value");
          settings.createRow(1).createCell(0).setCellValue("Show measuring");
          settings.getRow(1).createCell(1).setCellValue("yes");
        });
    String before = at("Net area", 1);
    filled.again();

    assertThat(at("Net area", 1)).isNotEqualTo(before);
    assertThat(formula("Labour (", 1)).isEqualTo(at("Net area", 1) + "/100");
  }

  @Test
  void formulasThatShareOneTextAreToldToo() {
    filled.change(
        book -> {
          XSSFSheet sheet = book.getSheet("Offer");
          for (int row = 1; row <= 3; row++) {
            XSSFCell cell = (XSSFCell) Refilled.under(sheet, "Net area", row);
            CTCellFormula formula = cell.getCTCell().getF();
            formula.setT(STCellFormulaType.SHARED);
            formula.setSi(0);
            formula.setStringValue(row == 1 ? "C2*10" : "");
            if (row == 1) {
              formula.setRef(cell.getReference() + ":" + cell.getReference().replace("2", "4"));
            }
            cell.setCellValue(row == 3 ? 120 : 200);
          }
        });
    filled.again();

    assertThat(formula("Net area", 1)).isEqualTo("C2*10");
    assertThat(formula("Net area", 3)).isEqualTo("C4*10");
    assertThat(filled.found("overridden-by-hand"))
        .as("the ceiling of 200 ft² comes to the same")
        .hasSize(2);
  }

  @Test
  void formulaThatComesToNoNumberIsReportedAndReplaced() {
    filled.change(
        book -> {
          Cell cell = at(book, "Paint (", 1);
          cell.setCellFormula("\"ask \"&A2");
          cell.setCellValue("ask Hall");
        });
    filled.again();

    assertThat(formula("Paint (", 1)).doesNotContain("ask");
    assertThat(filled.found("overridden-by-hand"))
        .singleElement()
        .asString()
        .contains("[=\"ask \"&A2]");
  }

  private void put(String heading, int row, String formula) {
    filled.change(
        book -> {
          Cell cell = at(book, heading, row);
          cell.setCellFormula(formula);
          new XSSFFormulaEvaluator(book).evaluateFormulaCell(cell);
        });
  }

  private void put(String heading, int row, String formula, double value) {
    filled.change(
        book -> {
          Cell cell = at(book, heading, row);
          cell.setCellFormula(formula);
          cell.setCellValue(value);
        });
  }

  private static Cell at(XSSFWorkbook book, String heading, int row) {
    return Refilled.under(book.getSheet("Offer"), heading, row);
  }

  private String at(String heading, int row) {
    return filled.look(book -> at(book, heading, row).getAddress().toString());
  }

  private String formula(String heading, int row) {
    return filled.look(book -> at(book, heading, row).getCellFormula());
  }

  private double number(String heading, int row) {
    return filled.look(book -> at(book, heading, row).getNumericCellValue());
  }

  /** The address of a figure of a coating on Basis. */
  private String basis(String row, String figure) {
    return filled.look(
        book ->
            StreamSupport.stream(book.getSheet("Basis").spliterator(), false)
                .filter(each -> text(each.getCell(0)).equals("Coatings"))
                .filter(each -> text(each.getCell(1)).equals(row))
                .filter(each -> text(each.getCell(2)).equals(figure))
                .map(each -> new CellReference("Basis", each.getRowNum(), 3, true, true))
                .map(reference -> reference.formatAsString().replace("Basis", "'Basis'"))
                .findFirst()
                .orElseThrow());
  }

  private static String text(Cell cell) {
    return cell == null ? "" : cell.toString();
  }
}
