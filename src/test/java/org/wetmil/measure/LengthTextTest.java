package org.wetmil.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.wetmil.measure.DecimalMark.COMMA;
import static org.wetmil.measure.DecimalMark.POINT;
import static org.wetmil.measure.DecimalMark.UNKNOWN;

import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.wetmil.quantity.Unit;

class LengthTextTest {

  @ParameterizedTest
  @ValueSource(
      strings = {
        "12' 6\"",
        "12'6\"",
        "12' - 6\"",
        "12'-6\"",
        "12' 6",
        "12'6",
        "12'-6",
        "12 ft 6 in",
        "12ft6in",
        "12 FT. 6 IN.",
        "12 feet, 6 inches",
        "12 foot 6",
        "12’ 6”",
        "12′ 6″",
        "12′6′′",
        "12' 6''",
        "12\u00A0ft\u00A06\u202Fin",
        " 12' 6\" ",
        "12‘ – 6“",
        "12' 6.0\"",
        "12' 6,0\""
      })
  void feetAndInchesHoweverTypedAreTwelveAndAHalfFeet(String text) {
    assertThat(LengthText.read(text, UNKNOWN)).isEqualTo(length(12.5, Unit.FOOT));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "12' - 6 1/2\" | 12.541666666666666",
        "3' - 5 29/32\" | 3.4921875",
        "3'-5-29/32\" | 3.4921875",
        "12' 6½\" | 12.541666666666666",
        "12' 1/2\" | 12.041666666666666",
        "0' 6\" | 0.5",
        "1,250' 6\" | 1250.5",
        "-3' 6\" | -3.5",
        "12.5' | 12.5",
        "12,5 ft | 12.5",
        "12 1/2 ft | 12.5",
        "40 lf | 40",
      })
  void feetStayFeet(String text, double feet) {
    assertThat(LengthText.read(text, UNKNOWN)).isEqualTo(length(feet, Unit.FOOT));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "3.81 m | 3.81 | METRE",
        "3,81 m | 3.81 | METRE",
        "3.81m | 3.81 | METRE",
        "3810 mm | 3810 | MILLIMETRE",
        "3 810 mm | 3810 | MILLIMETRE",
        "3,810 mm | 3810 | MILLIMETRE",
        "381 cm | 381 | CENTIMETRE",
        "84\" | 84 | INCH",
        "84 in. | 84 | INCH",
        "5 29/32\" | 5.90625 | INCH",
        "1/2 in | 0.5 | INCH",
        "¾\" | 0.75 | INCH",
      })
  void theUnitTypedIsKept(String text, double value, Unit unit) {
    assertThat(LengthText.read(text, UNKNOWN)).isEqualTo(length(value, unit));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {"12.5 | 12.5", "12,5 | 12.5", "6 1/2 | 6.5", "6-1/2 | 6.5", "12 | 12", "+3 | 3"})
  void aBareNumberHasNoUnit(String text, double value) {
    assertThat(LengthText.read(text, UNKNOWN)).isEqualTo(new Typed.Value(value, Optional.empty()));
  }

  @Test
  void theColumnDecidesAboutThreeDigits() {
    assertThat(LengthText.read("3,810 m", COMMA)).isEqualTo(length(3.81, Unit.METRE));
    assertThat(LengthText.read("3.810 m", POINT)).isEqualTo(length(3.81, Unit.METRE));
    assertThat(LengthText.read("3.810 mm", COMMA)).isEqualTo(length(3810, Unit.MILLIMETRE));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "  ", "-", "–", "n/a", "N/A", "TBD", "?"})
  void whatIsLeftOpenIsNotKnown(String text) {
    assertThat(LengthText.read(text, UNKNOWN)).isEqualTo(new Typed.NotKnown());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "12 x 8",
        "12' x 8'",
        "12 ft2",
        "9 m²",
        "61/2\"",
        "6 5/4\"",
        "6 4/4\"",
        "6.5 1/2\"",
        "1/0 in",
        "3 m 81 cm",
        "12'6\"7",
        "12..5",
        "12 yards 2",
        "twelve",
        "1/2/3",
        "12' 6 ft",
        "'",
        "\"",
        "."
      })
  void whatIsNoLengthIsRefusedWithTheTextAsTyped(String text) {
    assertThat(LengthText.read(text, UNKNOWN))
        .isInstanceOfSatisfying(
            Typed.Refused.class,
            refused -> {
              assertThat(refused.raw()).isEqualTo(text);
              assertThat(refused.expected()).startsWith("a length such as 12.5, 12' 6\"");
            });
  }

  @ParameterizedTest
  @ValueSource(strings = {"12' 12\"", "12.5' 6\"", "3' 60\""})
  void inchesBesideFeetAreBelowTwelveAndTheFeetWhole(String text) {
    assertThat(LengthText.read(text, UNKNOWN))
        .isInstanceOfSatisfying(
            Typed.Refused.class,
            refused -> assertThat(refused.expected()).startsWith("whole feet and then inches"));
  }

  @Test
  void aLongRemarkIsRefusedAndNotTakenApart() {
    assertThat(LengthText.read("1'".repeat(20_000), UNKNOWN)).isInstanceOf(Typed.Refused.class);
    assertThat(LengthText.read("1".repeat(30_000), UNKNOWN)).isInstanceOf(Typed.Refused.class);
  }

  @Test
  void feetInchesAndSixtyFourthsComeBackAsTyped() {
    Random random = new Random(20250101);
    for (int i = 0; i < 2000; i++) {
      int feet = random.nextInt(400);
      int inches = random.nextInt(12);
      int parts = random.nextInt(64);
      String fraction = parts == 0 ? "" : " " + parts + "/64";
      String text = String.format(Locale.ROOT, "%d' %d%s\"", feet, inches, fraction);

      double expectedIn = feet * 12 + inches + parts / 64.0;
      assertThat(LengthText.read(text, UNKNOWN))
          .as(text)
          .isInstanceOfSatisfying(
              Typed.Value.class,
              length -> {
                double readIn = Unit.FOOT.to(Unit.INCH, length.value());
                assertThat(readIn).isCloseTo(expectedIn, within(1e-11));
              });
    }
  }

  @Test
  void metresWithEitherDecimalMarkComeBackAsTyped() {
    Random random = new Random(20250102);
    for (int i = 0; i < 2000; i++) {
      double metres = random.nextInt(10_000) / 100.0;
      String text = String.format(Locale.ROOT, "%.2f m", metres);
      assertThat(LengthText.read(text, COMMA)).isEqualTo(length(metres, Unit.METRE));
      assertThat(LengthText.read(text.replace('.', ','), POINT))
          .isEqualTo(length(metres, Unit.METRE));
    }
  }

  private static Typed length(double value, Unit unit) {
    return new Typed.Value(value, Optional.of(unit));
  }
}
