package org.wetmil.workbook.recalc;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.wetmil.samples.MessyBooks;
import org.wetmil.samples.ReconciledMonth;

/** Computes every formula of reconciled books anew and holds the stored values to it. */
class ReconciledRecalculationTest {
  @TempDir static Path folder;
  private static final Map<Books, Path> WRITTEN = new EnumMap<>(Books.class);

  /** The month of the samples, ledgers of several currencies, names that mean something. */
  enum Books {
    MONTH,
    MESSY,
    HOSTILE;

    private Path write(Path folder) {
      Path output = folder.resolve(name() + ".xlsx");
      switch (this) {
        case MONTH -> ReconciledMonth.write(output);
        case MESSY -> MessyBooks.write(folder, output);
        case HOSTILE -> HostileBooks.write(output);
      }
      return output;
    }
  }

  @BeforeAll
  static void write() {
    for (Books books : Books.values()) {
      WRITTEN.put(books, books.write(folder));
    }
  }

  /** The library does not know that a tilde hides a tilde, as spreadsheet programs do. */
  @ParameterizedTest
  @EnumSource(names = "HOSTILE", mode = EnumSource.Mode.EXCLUDE)
  void spreadsheetLibraryComputesTheStoredValues(Books books) throws IOException {
    Path file = WRITTEN.get(books);
    Map<String, Object> stored = Formulas.stored(file);

    assertThat(stored).hasSizeGreaterThan(300);
    assertThat(Formulas.differences(stored, Formulas.evaluated(file))).isEmpty();
  }

  @Test
  void libreOfficeComputesTheStoredValues() throws IOException, InterruptedException {
    Office.assumePresent();

    List<Path> anew = Office.computed(List.copyOf(WRITTEN.values()), folder);

    for (Books books : Books.values()) {
      Map<String, Object> stored = Formulas.stored(WRITTEN.get(books));
      Map<String, Object> there = Formulas.values(anew.get(books.ordinal()), stored.keySet());
      assertThat(Formulas.differences(stored, there)).as("%s", books).isEmpty();
    }
  }
}
