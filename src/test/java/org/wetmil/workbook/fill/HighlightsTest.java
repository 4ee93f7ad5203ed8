package org.wetmil.workbook.fill;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.poi.ss.formula.ConditionalFormattingEvaluator;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.xssf.usermodel.XSSFFormulaEvaluator;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetmil.SmallBid;

/** Which input cells are hatched: those of stops and warnings, and no others. */
class HighlightsTest {
  @TempDir Path folder;

  @Test
  void cellsOfStopsAndWarningsAreHatchedAndThoseOfNotesAreNot() {
    Refilled filled =
        Refilled.first(
            folder,
            SmallBid.write(
                folder.resolve("bid.xlsx"),
                book -> book.getSheetAt(0).getRow(1).getCell(2).setCellValue("12' 6\"")));

    // the note that a length is text; the warning for a tip; the stop for a coating
    assertThat(filled.found("value-not-live")).hasSize(1);
    assertThat(filled.found("film-too-thick")).hasSize(1);
    assertThat(filled.found("unknown-coating")).hasSize(1);
    assertThat(hatched(filled)).containsExactly("G3", "F4");
  }

  @Test
  void noteIsToldFromAWarningWhereItStands() {
    Refilled filled = Refilled.first(folder, SmallBid.write(folder.resolve("bid.xlsx")));

    assertThat(filled.<String>look(book -> findings(book.getSheet("Bid"), 2)))
        .contains("Note on Tip: Planned 531", "\nTip: ");
  }

  private static String findings(XSSFSheet sheet, int row) {
    return "\n" + Refilled.under(sheet, "Findings", row).getStringCellValue();
  }

  /** Input cells that a conditional format marks, row by row. */
  private static List<String> hatched(Refilled filled) {
    return filled.look(
        book -> {
          var formats = new ConditionalFormattingEvaluator(book, new XSSFFormulaEvaluator(book));
          XSSFSheet sheet = book.getSheet("Bid");
          return IntStream.rangeClosed(1, 3)
              .mapToObj(sheet::getRow)
              .flatMap(row -> IntStream.range(0, 7).mapToObj(row::getCell))
              .filter(cell -> !formats.getConditionalFormattingForCell(cell).isEmpty())
              .map(Cell::getAddress)
              .map(Object::toString)
              .toList();
        });
  }
}
