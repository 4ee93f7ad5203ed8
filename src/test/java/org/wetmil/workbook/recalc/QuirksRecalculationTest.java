package org.wetmil.workbook.recalc;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetmil.jobs.FillJob;
import org.wetmil.workbook.read.Book;

/**
 * Workbooks with a quirk compute to what is stored, too: where the value read is not what the cell
 * of the row holds, no formula may point at that cell.
 */
class QuirksRecalculationTest {
  @TempDir Path folder;

  @Test
  void roomAndCoatingSharedByMergedCells() throws IOException {
    holds(
        new Book()
            .sheet("Bid")
            .row("Room", "Floor", "Surface", "Length", "Height", "Coating", "Colour")
            .row("A", "1", "walls", 40, 9, "latex", "white")
            .row(null, null, "exterior walls", 30, null, null, null)
            .row("B", "1", "walls", 20, 9, "latex", "white")
            .merge("A2:A3")
            .merge("B2:B3")
            .merge("E2:E3")
            .merge("F2:F3")
            .merge("G2:G3"));
  }

  @Test
  void roomNumberAndNameInTwoColumns() throws IOException {
    holds(
        new Book()
            .sheet("Bid")
            .row("Room no.", "Room name", "Surface", "Area", "Coating")
            .row(101, "Lobby", "walls", 90, "latex")
            .row(101, "Lobby", "ceiling", 60, "latex")
            .row(4.02, "Hall", "walls", 70, "latex"));
  }

  @Test
  void roomNumberThatBecameANumber() throws IOException {
    holds(
        new Book()
            .sheet("Bid")
            .row("Room", "Surface", "Area", "Coating")
            .row(4.02, "walls", 90, "latex")
            .row(new Book.Shown(4.1, "0.00"), "walls", 60, "latex")
            .row(new Book.Shown(101, "000"), "walls", 60, "latex"));
  }

  @Test
  void sizesInOneCellInInchesAndInOtherUnits() throws IOException {
    holds(
        new Book()
            .sheet("Bid")
            .row("Room", "Surface", "Size", "Height (mm)", "Openings (m²)", "Coating", "Include")
            .row("A", "walls", "7.5 x 6 m", 2400, "1,8", "latex", "ja")
            .row("A", "ceiling", "7.5 x 6 m", new Book.Shown(3, "0.0\" m\""), null, "latex", "nein")
            .row("B", "doors", "900 x 2100 mm", null, null, "oil-based", "no"));
  }

  @Test
  void roomsAndFloorsFromTitlesAndRoomsMadeADate() throws IOException {
    holds(
        new Book()
            .sheet("Bid")
            .row("Surface", "Area", "Coating")
            .row("Ground floor")
            .row("Lobby")
            .row("walls", 90, "latex")
            .row("ceiling", 90, "latex")
            .row("Den:")
            .row("walls", 90, "latex")
            .sheet("More")
            .row("Room", "Surface", "Area", "Coating", "Colour")
            .row(new Book.Shown(45817, "d-mmm"), "walls", 90, "latex", "white"));
  }

  @Test
  void includeSharedByMergedCells() throws IOException {
    holds(
        new Book()
            .sheet("Bid")
            .row("Room", "Surface", "Area", "Coating", "Include")
            .row("A", "walls", 90, "latex", "no")
            .row("A", "ceiling", 90, "latex", null)
            .merge("E2:E3"));
  }

  @Test
  void unitInAColumnOfItsOwn() throws IOException {
    holds(
        new Book()
            .sheet("Bid")
            .row("Room", "Surface", "Qty", "Unit", "Coating")
            .row("A", "walls", 450, "SF", "latex")
            .row("A", "trim", 120, "LF", "oil-based")
            .row("A", "ceiling", 10, "m2", "latex"));
  }

  @Test
  void feetAndInchesInTwoColumns() throws IOException {
    holds(
        new Book()
            .sheet("Bid")
            .row("Room", "Surface", "Length", null, "Height", null, "Coating")
            .row(null, null, "ft", "in", "ft", "in")
            .row("A", "walls", 12, 6, 9, null, "latex")
            .row("B", "walls", 12, "6 1/2", null, 90, "latex")
            .merge("C1:D1")
            .merge("E1:F1"));
  }

  @Test
  void tablesSideBySideAndAboveOneAnother() throws IOException {
    holds(
        new Book()
            .sheet("Bid")
            .row("Room", "Surface", "Area", "Coating", null, "Second floor")
            .row("A", "walls", 90, "latex", null, "Room", "Surface", "Area", "Coating")
            .row("B", "walls", 91, "latex", null, "C", "walls", 92, "latex")
            .row("Total", null, new Book.Formula("SUM(C2:C3)", 181))
            .skip(1)
            .row("Location", "Element", "Product", "Area")
            .row("South", "siding", "stain", 300));
  }

  private void holds(Book book) throws IOException {
    Path output = folder.resolve("job-filled.xlsx");
    new FillJob(LocalDate.of(2026, 1, 5), "test", false).fill(book.write(folder), output);

    Map<String, Object> stored = Formulas.stored(output);
    assertThat(stored).isNotEmpty();
    assertThat(Formulas.differences(stored, Formulas.evaluated(output))).isEmpty();
  }
}
