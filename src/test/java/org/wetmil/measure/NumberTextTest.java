package org.wetmil.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.wetmil.measure.DecimalMark.COMMA;
import static org.wetmil.measure.DecimalMark.POINT;
import static org.wetmil.measure.DecimalMark.UNKNOWN;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.wetmil.quantity.Unit;

class NumberTextTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        // text | UNKNOWN | POINT | COMMA
        "1250 | 1250 | 1250 | 1250",
        "1,23 | 1.23 | 1.23 | 1.23",
        "1.23 | 1.23 | 1.23 | 1.23",
        "1,234 | 1234 | 1234 | 1.234",
        "1.234 | 1.234 | 1.234 | 1234",
        "0,500 | 0.5 | 0.5 | 0.5",
        "0.500 | 0.5 | 0.5 | 0.5",
        "1234,567 | 1234.567 | 1234.567 | 1234.567",
        "1,234.5 | 1234.5 | 1234.5 | 1234.5",
        "1.234,5 | 1234.5 | 1234.5 | 1234.5",
        "1,234,567 | 1234567 | 1234567 | 1234567",
        "1.234.567 | 1234567 | 1234567 | 1234567",
        "1.234.567,8 | 1234567.8 | 1234567.8 | 1234567.8",
        "1 234,567 | 1234.567 | 1234.567 | 1234.567",
        "12 345 678.9 | 12345678.9 | 12345678.9 | 12345678.9",
        ".5 | 0.5 | 0.5 | 0.5",
        "-5 | -5 | -5 | -5",
        "−5 | -5 | -5 | -5",
      })
  void marksAreReadByTheColumnOnlyWhereTheyCanMeanTwoThings(
      String text, double unknown, double point, double comma) {
    assertThat(NumberText.read(text, UNKNOWN)).isEqualTo(bare(unknown));
    assertThat(NumberText.read(text, POINT)).isEqualTo(bare(point));
    assertThat(NumberText.read(text, COMMA)).isEqualTo(bare(comma));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "9 m² | 9 | SQUARE_METRE",
        "9m2 | 9 | SQUARE_METRE",
        "4318 SF | 4318 | SQUARE_FOOT",
        "4,318 sq. ft. | 4318 | SQUARE_FOOT",
        "4318 square feet | 4318 | SQUARE_FOOT",
        "401 Sq. M. | 401 | SQUARE_METRE",
        "120 lin. ft. | 120 | FOOT",
        "36 % | 36 | PERCENT",
        "36% | 36 | PERCENT",
        "2000 psi | 2000 | PSI",
        "138,5 bar | 138.5 | BAR",
        "5 gal. | 5 | GALLON",
        "65 °F | 65 | FAHRENHEIT",
        "1.3 kg/L | 1.3 | KILOGRAM_PER_LITRE",
      })
  void theUnitTypedIsKept(String text, double value, Unit unit) {
    assertThat(NumberText.read(text, UNKNOWN)).isEqualTo(new Typed.Value(value, Optional.of(unit)));
  }

  @Test
  void noBreakSpacesGroupAndSeparate() {
    assertThat(NumberText.read("\u00A01\u202F250\u00A0m²", UNKNOWN))
        .isEqualTo(new Typed.Value(1250, Optional.of(Unit.SQUARE_METRE)));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "\u00A0", "-", "—", "n/a", "N/A", "TBD", "tbd", "?", "unknown"})
  void whatIsLeftOpenIsNotKnown(String text) {
    assertThat(NumberText.read(text, UNKNOWN)).isEqualTo(new Typed.NotKnown());
  }

  @Test
  void anAbsentTextIsNotKnown() {
    assertThat(NumberText.read(null, UNKNOWN)).isEqualTo(new Typed.NotKnown());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "(120)", "1,2,3", "1.2.3", "12,34,567", "1,234.567.8", "12,", "12 34", "1e3", "0x10",
            "5 apples",
        "SF 4318", "~40", "4-6", "1/2", "--5", "NaN", "Infinity", "#N/A", "0,123,456", "١٢"
      })
  void whatIsNoNumberIsRefusedWithTheTextAsTyped(String text) {
    assertThat(NumberText.read(text, UNKNOWN))
        .isInstanceOfSatisfying(
            Typed.Refused.class,
            refused -> {
              assertThat(refused.raw()).isEqualTo(text);
              assertThat(refused.expected()).startsWith("a number");
            });
  }

  @Test
  void aLongRemarkIsRefusedAndNotTakenApart() {
    assertThat(NumberText.read("1".repeat(30_000), UNKNOWN)).isInstanceOf(Typed.Refused.class);
    assertThat(DecimalMark.seenIn(List.of("1,234".repeat(6000)))).isEqualTo(UNKNOWN);
  }

  @Test
  void aColumnShowsItsDecimalMark() {
    assertThat(DecimalMark.seenIn(List.of("1,234", "12,5", "n/a"))).isEqualTo(COMMA);
    assertThat(DecimalMark.seenIn(List.of("1,234", "12.5 m", "7"))).isEqualTo(POINT);
    assertThat(DecimalMark.seenIn(List.of("1.234,5"))).isEqualTo(COMMA);
    assertThat(DecimalMark.seenIn(List.of("0,125"))).isEqualTo(COMMA);
  }

  @Test
  void aColumnThatDisagreesOrShowsNothingTellsNothing() {
    assertThat(DecimalMark.seenIn(List.of("12,5", "12.5"))).isEqualTo(UNKNOWN);
    assertThat(DecimalMark.seenIn(List.of("1,234", "1.234", "1,234,567", "17"))).isEqualTo(UNKNOWN);
    assertThat(DecimalMark.seenIn(List.of())).isEqualTo(UNKNOWN);
  }

  private static Typed bare(double value) {
    return new Typed.Value(value, Optional.empty());
  }
}
