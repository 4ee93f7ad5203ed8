package org.wetmil.workbook.recalc;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wetmil.jobs.FillJob;

/**
 * Computes every formula of every filled sample and of the audit anew and holds the stored values
 * to it: once with the spreadsheet library, once with LibreOffice.
 */
class RecalculationTest {
  private static final Path SAMPLES = Path.of("sample-workbooks");

  /** The library takes the logarithm of one cell of a range; LibreOffice, below, of each. */
  private static final Set<String> LOGARITHMS_OF_RANGES =
      Set.of("Audit!F6", "Audit!G6", "Audit!F7", "Audit!G7");

  @TempDir static Path folder;
  private static final List<Path> BOOKS = new ArrayList<>();

  @BeforeAll
  static void fill() {
    for (String sample : List.of("clinic-refit.xlsx", "gym-hall.xlsx")) {
      Path output = folder.resolve(sample);
      new FillJob(LocalDate.of(2026, 1, 5), "test", false).fill(SAMPLES.resolve(sample), output);
      BOOKS.add(output);
    }
    BOOKS.add(SAMPLES.resolve("past-bids-audited.xlsx"));
  }

  static List<Path> books() {
    return BOOKS;
  }

  @ParameterizedTest
  @MethodSource("books")
  void spreadsheetLibraryComputesTheStoredValues(Path book) throws IOException {
    Map<String, Object> stored = Formulas.stored(book);

    assertThat(stored).hasSizeGreaterThan(100);
    Map<String, Object> evaluated = Formulas.evaluated(book);
    if (book.endsWith("past-bids-audited.xlsx")) {
      stored.keySet().removeAll(LOGARITHMS_OF_RANGES);
      evaluated.keySet().removeAll(LOGARITHMS_OF_RANGES);
    }
    assertThat(Formulas.differences(stored, evaluated)).isEmpty();
  }

  @Test
  void libreOfficeComputesTheStoredValues() throws IOException, InterruptedException {
    Office.assumePresent();

    List<Path> anew = Office.computed(BOOKS, folder);

    assertThat(anew).hasSize(3);
    for (int i = 0; i < anew.size(); i++) {
      Map<String, Object> stored = Formulas.stored(BOOKS.get(i));
      Map<String, Object> there = Formulas.values(anew.get(i), stored.keySet());
      assertThat(Formulas.differences(stored, there)).as("%s", BOOKS.get(i)).isEmpty();
    }
  }
}
