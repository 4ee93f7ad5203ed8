package org.wetmil.formula;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RoundUpTest {

  @ParameterizedTest
  @CsvSource({"2, 2", "2.0000001, 3", "-0.5, -1", "0, 0", "0.2, 1"})
  void goesAwayFromZeroAsASpreadsheetDoes(double of, double expected) {
    assertThat(Expr.roundUp(Expr.num(of)).value()).isEqualTo(expected);
  }

  @ParameterizedTest
  @CsvSource({"0.000000001, 'ROUNDUP(0.000000001,0)'", "2.5, 'ROUNDUP(2.5,0)'"})
  void isPrintedWithItsDecimals(double of, String expected) {
    assertThat(Expr.roundUp(Expr.num(of)).print(Object::toString)).isEqualTo(expected);
  }
}
