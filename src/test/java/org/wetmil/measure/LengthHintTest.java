package org.wetmil.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A length in a form that can mean two things stays unread, and how to type it is said. */
class LengthHintTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '^',
      value = {
        "14-6 | 14' 6\"",
        "14 - 6 | 14' 6\"",
        "14–6 | 14' 6\"",
        "14-06 | 14' 6\"",
        "14-0 | 14' 0\"",
        "14-11 | 14' 11\"",
        "14-6\" | 14' 6\"",
        "14-6 1/2 | 14' 6 1/2\"",
        "14-6-1/2 | 14' 6 1/2\"",
        "14:6 | 14' 6\"",
        "14+6 | 14' 6\"",
        "14 6 | 14' 6\"",
        "14ft6 | 14' 6\"",
        "14F6 | 14' 6\"",
        "14'6' | 14' 6\"",
        "14''6 | 14' 6\""
      })
  void feetAndInchesWithoutTheirMarksAreShownWithThem(String text, String typed) {
    String expected = refused(text).expected();

    assertThat(expected).startsWith("one length: ").endsWith(" is typed " + typed);
    // and what is shown is read, as what was meant
    double meant = 14 + Double.parseDouble(inches(typed)) / 12;
    assertThat(LengthText.read(typed, DecimalMark.UNKNOWN))
        .isInstanceOfSatisfying(
            Typed.Value.class, value -> assertThat(value.value()).isCloseTo(meant, within(1e-12)));
  }

  private static String inches(String typed) {
    return typed.replaceAll(".*' |\"", "").replace(" 1/2", ".5");
  }

  @ParameterizedTest
  @ValueSource(strings = {"5-17", "14-16", "14-12", "12 18"})
  void twoLengthsAreNotTakenForFeetAndInches(String text) {
    assertThat(refused(text).expected()).startsWith("one length, not two");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "~14 | 14",
        "about 14 | 14",
        "approx. 14 ft | 14 ft",
        "ca. 3.5 m | 3.5 m",
        "(14) | 14",
        "14 +/- | 14",
        "14? | 14",
        ">14 | 14"
      })
  void remarkBesideALengthIsToGo(String text, String alone) {
    assertThat(refused(text).expected()).isEqualTo("the length alone: " + alone);
  }

  @Test
  void whatCanBeReadNeedsNoHint() {
    for (String text :
        new String[] {"14' 6", "14'6", "14'-6", "14ft 6in", "6 1/2", "1/2", "14.5"}) {
      assertThat(LengthText.read(text, DecimalMark.UNKNOWN))
          .as(text)
          .isInstanceOf(Typed.Value.class);
    }
  }

  private static Typed.Refused refused(String text) {
    assertThat(LengthText.read(text, DecimalMark.UNKNOWN)).isInstanceOf(Typed.Refused.class);
    return (Typed.Refused) LengthText.read(text, DecimalMark.UNKNOWN);
  }
}
