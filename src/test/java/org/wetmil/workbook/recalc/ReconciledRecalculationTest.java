package org.wetmil.workbook.recalc;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.wetmil.samples.MessyBooks;
import org.wetmil.samples.ReconciledMonth;

/** Computes every formula of reconciled books anew and holds the stored values to it. */
class ReconciledRecalculationTest {
  @TempDir Path folder;

  /** The month of the samples, ledgers of several currencies, names that mean something. */
  enum Books {
    MONTH,
    MESSY,
    HOSTILE;

    private Path write(Path folder) {
      Path output = folder.resolve("reconciled.xlsx");
      switch (this) {
        case MONTH -> ReconciledMonth.write(output);
        case MESSY -> MessyBooks.write(folder, output);
        case HOSTILE -> HostileBooks.write(output);
      }
      return output;
    }
  }

  /** The library does not know that a tilde hides a tilde, as spreadsheet programs do. */
  @ParameterizedTest
  @EnumSource(names = "HOSTILE", mode = EnumSource.Mode.EXCLUDE)
  void spreadsheetLibraryComputesTheStoredValues(Books books) throws IOException {
    Path file = books.write(folder);
    Map<String, Object> stored = Formulas.stored(file);

    assertThat(stored).hasSizeGreaterThan(300);
    assertThat(Formulas.differences(stored, Formulas.evaluated(file))).isEmpty();
  }

  @ParameterizedTest
  @EnumSource
  void libreOfficeComputesTheStoredValues(Books books) throws IOException, InterruptedException {
    Office.assumePresent();
    Path file = books.write(folder);
    Map<String, Object> stored = Formulas.stored(file);
    Path stripped = folder.resolve("stripped.xlsx");
    Formulas.strip(file, stripped);

    Path anew = Office.resaved(stripped, folder);

    assertThat(Formulas.differences(stored, Formulas.values(anew, stored.keySet()))).isEmpty();
  }
}
