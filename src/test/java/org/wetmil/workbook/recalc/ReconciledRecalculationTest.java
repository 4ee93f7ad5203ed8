package org.wetmil.workbook.recalc;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetmil.samples.ReconciledMonth;

/** Computes every formula of the reconciled month anew and holds the stored values to it. */
class ReconciledRecalculationTest {
  @TempDir Path folder;

  @Test
  void spreadsheetLibraryComputesTheStoredValues() throws IOException {
    Path month = month();
    Map<String, Object> stored = Formulas.stored(month);

    assertThat(stored).hasSizeGreaterThan(300);
    assertThat(Formulas.differences(stored, Formulas.evaluated(month))).isEmpty();
  }

  @Test
  void libreOfficeComputesTheStoredValues() throws IOException, InterruptedException {
    Office.assumePresent();
    Path month = month();
    Map<String, Object> stored = Formulas.stored(month);
    Path stripped = folder.resolve("stripped.xlsx");
    Formulas.strip(month, stripped);

    Path anew = Office.resaved(stripped, folder);

    assertThat(Formulas.differences(stored, Formulas.values(anew, stored.keySet()))).isEmpty();
  }

  private Path month() {
    Path output = folder.resolve("month.xlsx");
    ReconciledMonth.write(output);
    return output;
  }
}
