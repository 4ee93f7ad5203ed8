package org.wetmil.formula;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class ExprTest {
  private record Cell(String name) implements Place {}

  private static final Expr A = cell("A1", 7);
  private static final Expr B = cell("B1", 3);
  private static final Expr C = cell("C1", 2);

  private static Expr cell(String name, double value) {
    return Expr.at(new Cell(name), value);
  }

  private static String print(Expr expr) {
    return expr.print(place -> ((Cell) place).name());
  }

  static Stream<Arguments> printed() {
    return Stream.of(
        Arguments.of(A.plus(B).plus(C), "A1+B1+C1", 12),
        Arguments.of(A.plus(B.plus(C)), "A1+B1+C1", 12),
        Arguments.of(A.minus(B).minus(C), "A1-B1-C1", 2),
        Arguments.of(A.minus(B.minus(C)), "A1-(B1-C1)", 6),
        Arguments.of(A.minus(B.plus(C)), "A1-(B1+C1)", 2),
        Arguments.of(A.plus(B.minus(C)), "A1+(B1-C1)", 8),
        Arguments.of(A.plus(B).minus(C), "A1+B1-C1", 8),
        Arguments.of(A.times(B.times(C)), "A1*B1*C1", 42),
        Arguments.of(A.times(B.plus(C)), "A1*(B1+C1)", 35),
        Arguments.of(A.plus(B).times(C), "(A1+B1)*C1", 20),
        Arguments.of(A.times(B.over(C)), "A1*(B1/C1)", 10.5),
        Arguments.of(A.over(B).times(C), "A1/B1*C1", 7 / 3.0 * 2),
        Arguments.of(A.over(B.over(C)), "A1/(B1/C1)", 7 / 1.5),
        Arguments.of(A.over(B).over(C), "A1/B1/C1", 7 / 3.0 / 2),
        Arguments.of(A.over(B.times(C)), "A1/(B1*C1)", 7 / 6.0),
        Arguments.of(A.minus(B.times(C)), "A1-B1*C1", 1),
        Arguments.of(A.over(B.minus(C)), "A1/(B1-C1)", 7),
        Arguments.of(A.minus(Expr.num(-2)), "A1-(-2)", 9),
        Arguments.of(A.plus(Expr.num(-2)), "A1+(-2)", 5),
        Arguments.of(Expr.num(-2).times(A), "(-2)*A1", -14),
        Arguments.of(Expr.num(-2).plus(A), "-2+A1", 5),
        Arguments.of(A.over(Expr.num(-2)), "A1/(-2)", -3.5),
        Arguments.of(Expr.max(Expr.num(0), A.minus(B)).over(C), "MAX(0,A1-B1)/C1", 2),
        Arguments.of(Expr.min(A, B, C), "MIN(A1,B1,C1)", 2),
        Arguments.of(Expr.sqrt(A.plus(C)), "SQRT(A1+C1)", 3),
        Arguments.of(Expr.ifAtMost(A, B, A, C.plus(B)), "IF(A1<=B1,A1,C1+B1)", 5),
        Arguments.of(Expr.ifAtMost(A, A, A, C).times(B), "IF(A1<=A1,A1,C1)*B1", 21),
        Arguments.of(
            Expr.ifWord(new Cell("D1"), " No ", List.of("no", "0"), Expr.num(0), Expr.num(1)),
            "IF(OR(LOWER(TRIM(D1))=\"no\",LOWER(TRIM(D1))=\"0\"),0,1)",
            0));
  }

  @ParameterizedTest
  @MethodSource
  void printed(Expr expr, String text, double value) {
    assertThat(print(expr)).isEqualTo(text);
    assertThat(expr.value()).isEqualTo(value);
    assertThat(TextFormula.number(text, Map.of("A1", 7.0, "B1", 3.0, "C1", 2.0, "D1", " No ")))
        .isEqualTo(value);
  }

  @ParameterizedTest
  @CsvSource({
    "0, 0",
    "-0.0, 0",
    "3850, 3850",
    "0.1, 0.1",
    "-2.5, -2.5",
    "1604.1666666666667, 1604.1666666666667",
    "123456789012345, 123456789012345",
    "1e15, 1000000000000000",
    "1e22, 10000000000000000000000",
    "1e30, 1E+30",
    "1.25e-7, 0.000000125",
    "1e-30, 1E-30",
    "-1.5e-300, -1.5E-300"
  })
  void aNumberIsPrintedAsASpreadsheetReadsItBack(double value, String text) {
    assertThat(print(Expr.num(value))).isEqualTo(text);
    assertThat(TextFormula.number(text, Map.of())).isEqualTo(value);
  }

  @ParameterizedTest
  @CsvSource({"NaN", "Infinity", "-Infinity"})
  void whatIsNoNumberIsNeverPrinted(double value) {
    assertThatThrownBy(() -> print(Expr.num(value))).isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void nothingCannotBeAdded() {
    assertThatThrownBy(() -> new Expr.Sum(List.of())).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(Expr::times).isInstanceOf(IllegalArgumentException.class);
  }

  /** 14 ft is 4.2672 m; in doubles, the height converted is a last bit off. */
  @Test
  void aLastBitDoesNotTakeANumberOverALimit() {
    Expr limit = Expr.num(14);
    Expr a = Expr.num(1);
    Expr b = Expr.num(2);

    assertThat(Expr.ifAtMost(Expr.num(Math.nextUp(14.0)), limit, a, b).value()).isEqualTo(1);
    assertThat(Expr.ifAtMost(Expr.num(14 + 1e-12), limit, a, b).value()).isEqualTo(2);
    assertThat(Expr.ifAtMost(Expr.num(Double.NaN), limit, a, b).value()).isEqualTo(2);
  }

  /**
   * Random trees: the text computes to the very bits of the value, hand-nested records included.
   */
  @Test
  void theTextComputesToTheValue() {
    Random random = new Random(7);
    Map<String, Object> cells = new HashMap<>();
    for (int i = 0; i < 20_000; i++) {
      cells.clear();
      Expr expr = tree(random, 5, cells);
      double value = expr.value();
      if (Double.isFinite(value)) {
        String text = print(expr);

        assertThat(TextFormula.number(text, cells)).as(text).isEqualTo(value);
      }
    }
  }

  /** The library's evaluator stands in for the spreadsheet programs. */
  @Test
  void theSpreadsheetLibraryComputesTheSame() throws Exception {
    Random random = new Random(8);
    try (XSSFWorkbook workbook = new XSSFWorkbook()) {
      Row row = workbook.createSheet().createRow(0);
      for (int i = 0; i < 500; i++) {
        Map<String, Object> cells = new HashMap<>();
        Expr expr = tree(random, 4, cells);
        double value = expr.value();
        cells.forEach(
            (name, number) -> row.createCell(name.charAt(0) - 'A').setCellValue((Double) number));
        if (Double.isFinite(value) && value != 0) {
          XSSFCell cell = (XSSFCell) row.createCell(30);
          cell.setCellFormula(print(expr));
          double computed =
              workbook.getCreationHelper().createFormulaEvaluator().evaluate(cell).getNumberValue();

          assertThat(computed / value - 1).as(cell.getCellFormula()).isBetween(-1e-12, 1e-12);
        }
      }
    }
  }

  private static Expr tree(Random random, int depth, Map<String, Object> cells) {
    if (depth == 0 || random.nextInt(6) == 0) {
      double value = Math.round(random.nextGaussian() * 1000) / 64.0;
      if (random.nextBoolean()) {
        return Expr.num(value);
      }
      String name = (char) ('A' + random.nextInt(26)) + "1";
      return cell(name, (Double) cells.computeIfAbsent(name, key -> value));
    }
    Expr one = tree(random, depth - 1, cells);
    Expr two = tree(random, depth - 1, cells);
    return switch (random.nextInt(9)) {
      case 0 -> one.plus(two);
      case 1 -> one.minus(two);
      case 2 -> one.times(two);
      case 3 -> one.over(two);
      case 4 -> Expr.min(one, two);
      case 5 -> Expr.max(one, two);
      case 6 -> new Expr.Product(List.of(one, new Expr.Product(List.of(two, one))));
      case 7 -> new Expr.Sum(List.of(one, two, new Expr.Sum(List.of(two, one))));
      default -> Expr.ifAtMost(one, two, two, one);
    };
  }
}
