package org.wetmil.workbook.fill;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.xssf.usermodel.XSSFComment;
import org.apache.poi.xssf.usermodel.XSSFDrawing;
import org.apache.poi.xssf.usermodel.XSSFRichTextString;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetmil.workbook.read.Book;

/** What somebody wrote on a sheet that the next fill makes anew. */
class WrittenOnOurSheetsTest {
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
            .row("Hall", "ceiling", 20, 10, null, "no such paint")
            .write(shared);
    once = Refilled.first(shared, bid);
  }

  @BeforeEach
  void takeTheFilledOne() {
    filled = once.in(folder);
  }

  @Test
  void nothingIsFoundWhereNobodyWrote() {
    assertThat(filled.again().found("typed-on-our-sheet")).isEmpty();
  }

  @Test
  void noteBesideTheListIsReportedWithItsText() {
    filled.change(
        book -> {
          XSSFSheet findings = book.getSheet("Findings");
          findings.getRow(1).createCell(12).setCellValue("asked the owner, waits");
        });
    filled.again();

    assertThat(filled.found("typed-on-our-sheet"))
        .containsExactly(
            "\"asked the owner, waits\" was written in M2 of a sheet that is made anew.");
    assertThat(filled.again().found("typed-on-our-sheet")).isEmpty();
  }

  @Test
  void rowBelowTheListIsReported() {
    filled.change(
        book -> {
          XSSFSheet findings = book.getSheet("Findings");
          findings.createRow(findings.getLastRowNum() + 3).createCell(0).setCellValue("my own");
        });

    assertThat(filled.again().found("typed-on-our-sheet"))
        .singleElement()
        .asString()
        .contains("\"my own\"");
  }

  @Test
  void changedTextOfAFindingIsReported() {
    filled.change(
        book ->
            Refilled.under(book.getSheet("Findings"), "What to do", 1)
                .setCellValue("done on Friday"));

    assertThat(filled.again().found("typed-on-our-sheet"))
        .singleElement()
        .asString()
        .contains("\"done on Friday\"");
  }

  @Test
  void noteOnACellIsReported() {
    filled.change(
        book -> {
          XSSFSheet findings = book.getSheet("Findings");
          XSSFDrawing drawing = findings.createDrawingPatriarch();
          XSSFComment note =
              drawing.createCellComment(drawing.createAnchor(0, 0, 0, 0, 2, 2, 4, 4));
          note.setAddress(1, 4);
          note.setString(new XSSFRichTextString("call Monday"));
        });

    assertThat(filled.again().found("typed-on-our-sheet"))
        .singleElement()
        .asString()
        .contains("\"call Monday\" was written in a note on E2");
  }

  @Test
  void lineAddedInTheFindingsColumnIsReportedWithoutOurs() {
    String[] address = new String[1];
    filled.change(
        book -> {
          Cell findings = Refilled.under(book.getSheet("Offer"), "Findings", 2);
          address[0] = findings.getAddress().toString();
          assertThat(findings.getStringCellValue()).isNotEmpty();
          String ours = findings.getStringCellValue();
          findings.setBlank();
          findings.setCellValue(ours + "\nasked on Monday\nno answer");
        });

    assertThat(filled.again().found("typed-on-our-sheet"))
        .containsExactly(
            "\"asked on Monday no answer\" was written in "
                + address[0]
                + " of the column Findings, which is made anew.");
    assertThat(filled.again().found("typed-on-our-sheet")).isEmpty();
  }
}
