package org.wetmil.quantity;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wetmil.Published;

class UnitAgainstTablesTest {

  static Stream<Published.Row> factors() {
    return Stream.of("nist-handbook-44.csv", "gnu-units.csv")
        .map(Published::rows)
        .flatMap(List::stream);
  }

  @ParameterizedTest
  @MethodSource("factors")
  void aUnitConvertsByThePublishedFactor(Published.Row row) {
    row.check(Unit.valueOf(row.text("from")).to(Unit.valueOf(row.text("to")), 1));
  }
}
