package org.wetmil.workbook.fill.page;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** What LibreOffice makes of it stands in WorkedOnTest. */
class ChangedSinceTest {

  @Test
  void theHoursOfTheFillStandInTheFormulaInFull() {
    assertThat(new ChangedSince("Summary!$I$31", 214.91234567890123).formula("It was \"so\"."))
        .isEqualTo(
            "IF(ABS(Summary!$I$31-214.91234567890123)<=0.000001*214.91234567890123,\"\","
                + "\"It was \"\"so\"\".\")");
    assertThat(new ChangedSince("A1", 2.5e-7).formula("x")).contains("A1-0.00000025)");
    assertThat(new ChangedSince("A1", 1e12).formula("x")).contains("A1-1000000000000)");
  }

  @Test
  void hoursBeyondNumbersSayNothing() {
    assertThat(new ChangedSince("A1", Double.POSITIVE_INFINITY).formula("x")).isEqualTo("\"\"");
  }
}
