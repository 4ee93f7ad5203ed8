package org.wetmil.workbook.recalc;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.wetmil.jobs.FillJob;

/**
 * Computes every formula of every filled sample anew and holds the stored values to it: once with
 * the spreadsheet library, once with LibreOffice.
 */
class RecalculationTest {
  private static final Path SAMPLES = Path.of("sample-workbooks");

  @TempDir Path folder;

  @ParameterizedTest
  @ValueSource(strings = {"clinic-refit.xlsx", "gym-hall.xlsx"})
  void spreadsheetLibraryComputesTheStoredValues(String sample) throws IOException {
    Path filled = filled(sample);
    Map<String, Object> stored = Formulas.stored(filled);

    assertThat(stored).hasSizeGreaterThan(100);
    assertThat(Formulas.differences(stored, Formulas.evaluated(filled))).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"clinic-refit.xlsx", "gym-hall.xlsx"})
  void libreOfficeComputesTheStoredValues(String sample) throws IOException, InterruptedException {
    Office.assumePresent();
    Path filled = filled(sample);
    Map<String, Object> stored = Formulas.stored(filled);
    Path stripped = folder.resolve("stripped.xlsx");
    Formulas.strip(filled, stripped);

    Path anew = Office.resaved(stripped, folder);

    assertThat(Formulas.differences(stored, Formulas.values(anew, stored.keySet()))).isEmpty();
  }

  @Test
  void bothComputeTheStoredValuesOfTheAudit() throws IOException, InterruptedException {
    Path audited = SAMPLES.resolve("past-bids-audited.xlsx");
    Map<String, Object> stored = Formulas.stored(audited);

    assertThat(stored).hasSizeGreaterThan(100);
    assertThat(Formulas.differences(stored, Formulas.evaluated(audited))).isEmpty();

    Office.assumePresent();
    Path stripped = folder.resolve("past-bids-audited.xlsx");
    Formulas.strip(audited, stripped);
    Path anew = Office.resaved(stripped, folder);
    assertThat(Formulas.differences(stored, Formulas.values(anew, stored.keySet()))).isEmpty();
  }

  private Path filled(String sample) {
    Path output = folder.resolve("filled.xlsx");
    new FillJob(LocalDate.of(2026, 1, 5), "test", false).fill(SAMPLES.resolve(sample), output);
    return output;
  }
}
