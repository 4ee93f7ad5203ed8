package org.wetmil.workbook.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.estimate.InputColumn;
import org.wetmil.quantity.UnitSystem;
import org.wetmil.workbook.read.grid.Grid;
import org.wetmil.workbook.read.grid.GridReader;
import org.wetmil.workbook.read.grid.MissingResults;
import org.wetmil.workbook.read.grid.OwnMarks;
import org.wetmil.workbook.read.heading.HeadingWords;
import org.wetmil.workbook.read.table.BidTable;
import org.wetmil.workbook.read.table.TableFinder;
import org.wetmil.workbook.read.words.Words;
import org.wetmil.workbook.stream.PackageReader;

class HeadingWordsTest {
  @TempDir Path folder;

  @Test
  void everyInputHasOtherNamesInThreeLanguages() {
    for (InputColumn column : InputColumn.values()) {
      assertThat(Words.list("headings.csv", 3))
          .filteredOn(row -> row.get(0).equals(column.heading()))
          .as(column.heading())
          .extracting(row -> row.get(2))
          .contains("en", "de", "es");
    }
  }

  @Test
  void noOtherNameIsWrittenTwiceForOneColumnAndLanguage() {
    assertThat(
            Words.list("headings.csv", 3).stream()
                .map(row -> row.get(0) + "|" + Words.key(row.get(1)) + "|" + row.get(2)))
        .doesNotHaveDuplicates();
  }

  @ParameterizedTest
  @EnumSource
  void noHeadingThatWeFillIsTakenForAnInput(UnitSystem system) {
    Book book =
        new Book()
            .sheet("Bid")
            .row(
                concat(
                    List.of("Room", "Surface", "Product", "Length"),
                    Arrays.stream(FilledColumn.values())
                        .map(each -> each.heading(system))
                        .toList()));
    List<BidTable> tables = tables(book);
    assertThat(tables).hasSize(1);
    assertThat(tables.get(0).columns().keySet())
        .containsExactlyInAnyOrder(
            InputColumn.ROOM, InputColumn.SURFACE, InputColumn.COATING, InputColumn.LENGTH);
  }

  @Test
  void tablesSideBySideAreToldApartThoughTheirHeadingRowsDiffer() {
    List<BidTable> tables =
        tables(
            new Book()
                .sheet("Bid")
                .row("Room", "Surface", "Area", "Coating", null, "Second floor")
                .row("A", "walls", 90, "latex", null, "Room", "Surface", "Area", "Coating")
                .row("B", "walls", 91, "latex", null, "C", "walls", 92, "latex"));
    assertThat(tables).extracting(BidTable::firstColumn).containsExactly(0, 5);
    assertThat(tables).extracting(BidTable::firstRow).containsExactly(1, 2);
    assertThat(tables.get(0).isBeside(tables.get(1))).isTrue();
  }

  @Test
  void tablesSideBySideWithoutAGapAreToldApart() {
    List<BidTable> tables =
        tables(
            new Book()
                .sheet("Bid")
                .row("Room", "Surface", "Area", "Coating", "Room", "Surface", "Area", "Coating")
                .row("A", "walls", 90, "latex", "C", "walls", 92, "latex"));
    assertThat(tables).extracting(BidTable::firstColumn).containsExactly(0, 4);
  }

  private static Object[] concat(List<String> first, List<String> second) {
    List<String> all = new ArrayList<>(first);
    all.addAll(second);
    return all.toArray();
  }

  private List<BidTable> tables(Book book) {
    Path file = book.write(folder);
    try (PackageReader workbook = PackageReader.open(file);
        MissingResults missing = new MissingResults(() -> Files.newInputStream(file), 100)) {
      Grid grid =
          new GridReader(workbook, OwnMarks.of(workbook), missing).whole(workbook.sheets().get(0));
      return new TableFinder(grid, List.of(), Catalogue.builtIn(), new ArrayList<>())
          .find(HeadingWords.builtIn(Map.of()));
    }
  }
}
