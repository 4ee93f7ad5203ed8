package org.wetmil.trade;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.wetmil.trade.TipCode.Reason;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.wetmil.Published;

class TipCodeTest {

  static List<Published.Row> codes() {
    return Published.rows("tip-codes.csv");
  }

  @ParameterizedTest
  @MethodSource("codes")
  void aCodeNamesFanAndOrifice(Published.Row row) {
    assertThat(TipCode.read(row.text("code")))
        .isInstanceOfSatisfying(
            TipCode.Read.class,
            read -> {
              TipCode tip = read.tip();
              assertThat(tip.fanIn(12)).isCloseTo(row.number("fanIn"), within(1e-12));
              assertThat(tip.orificeThou() / 1000.0)
                  .isCloseTo(row.number("orificeIn"), within(1e-12));
              assertThat(tip.code()).isEqualTo(row.text("code"));
            });
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"517", " 517 ", "517.0", "517,0", "5-17", " 5-17 ", "5 - 17", "5–17", "\u00A0517"})
  void aCodeIsReadHoweverItStandsInACell(String raw) {
    assertThat(TipCode.read(raw)).isEqualTo(new TipCode.Read(new TipCode(5, 17)));
  }

  @ParameterizedTest
  @ValueSource(strings = {"1219", "12-19", "1219.0"})
  void fourDigitsHaveAFanOfTwo(String raw) {
    assertThat(TipCode.read(raw)).isEqualTo(new TipCode.Read(new TipCode(12, 19)));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      nullValues = "null",
      value = {
        "null | EMPTY",
        "'' | EMPTY",
        "' ' | EMPTY",
        "017 | NO_FAN",
        "0-17 | NO_FAN",
        "0517 | NO_FAN",
        ".017 | INCHES",
        "0.017 | INCHES",
        "0,017 | INCHES",
        "0.017 in | INCHES",
        "517/519 | SEVERAL",
        "517, 519 | SEVERAL",
        "517 or 519 | SEVERAL",
        "500 | NO_ORIFICE",
        "5-00 | NO_ORIFICE",
        "5 | WRONG_LENGTH",
        "17 | WRONG_LENGTH",
        "51717 | WRONG_LENGTH",
        "5170 | FAN_TOO_WIDE",
        "5/17 | PARTED",
        "5.17 | PARTED",
        "5 / 17 | PARTED",
        "5 17 | PARTED",
        "0/17 | NOT_A_CODE",
        "5/17/2024 | DATE",
        "2024-05-17 | DATE",
        "2024-05-17 00:00 | DATE",
        "17-May | DATE",
        "17-May-24 | DATE",
        "May 17 | DATE",
        "5-1-7 | DATE",
        "517 worn | NOT_A_CODE",
        "519.5 | NOT_A_CODE",
        "-517 | NOT_A_CODE",
        "tbd | NOT_A_CODE",
      })
  void whatIsNoCodeIsRefusedWithTheReason(String raw, Reason reason) {
    assertThat(TipCode.read(raw))
        .isInstanceOfSatisfying(
            TipCode.Refused.class,
            refused -> {
              assertThat(refused.reason()).isEqualTo(reason);
              assertThat(refused.raw()).isEqualTo(raw == null ? "" : raw);
            });
  }

  @Test
  void aRefusalSaysWhatWasFoundAndWhatToDo() {
    assertThat(sentence("517/519"))
        .isEqualTo("517/519 names several tips; type one code, such as 517.");
    assertThat(sentence("")).isEqualTo("The tip is empty; type one code, such as 517.");
    assertThat(sentence("5170"))
        .isEqualTo("5170 would have a fan wider than 48 in; type one code, such as 517.");
    assertThat(sentence("5/17"))
        .isEqualTo("5/17 reads as a date, a fraction or two numbers; type 517.");
  }

  @ParameterizedTest
  @CsvSource({
    "17-May, 5-17, 517",
    "17-May-24, 5-17, 517",
    "May-17, 5-17, 517",
    "5/17/2024, 5-17, 517",
    "17.05.2024, 5-17, 517",
    "2024-05-17 00:00, 5-17, 517",
    "11-Mar, 3-11, 311",
    "03-Nov, 3-11, 311",
    "11-Sep, 9-11, 911"
  })
  void aDateNamesTheCodeThatItWasMadeOf(String date, String typed, String code) {
    String sentence =
        date
            + " is a date, which a spreadsheet makes of "
            + typed
            + "; format the cell as text and type "
            + code
            + ".";

    assertThat(TipCode.refuseDate(date).sentence()).isEqualTo(sentence);
    assertThat(sentence(date)).isEqualTo(sentence);
  }

  @Test
  void aDateThatNoCodeMakesSaysHowToTypeOne() {
    assertThat(TipCode.refuseDate("4-Feb").sentence())
        .isEqualTo(
            "4-Feb is a date, which a spreadsheet makes of a code with a hyphen; format the cell as"
                + " text and type the code without one, such as 517.");
  }

  @Test
  void aLongRemarkIsQuotedByItsBeginning() {
    assertThat(sentence("517 ".repeat(8000)))
        .isEqualTo(
            "517 517 517 517 517 517 517 517 517 517 ... is not a tip code; type one code, such as 517.");
  }

  @Test
  void everyTipIsReadBackFromItsCode() {
    for (int fan = 1; fan <= TipCode.WIDEST_FAN_DIGIT; fan++) {
      for (int orifice = 1; orifice <= 99; orifice++) {
        TipCode tip = new TipCode(fan, orifice);
        assertThat(TipCode.read(tip.code())).isEqualTo(new TipCode.Read(tip));
      }
    }
  }

  @Test
  void theFanWidensWithTheDistance() {
    assertThat(new TipCode(5, 17).fanIn(15)).isCloseTo(12.5, within(1e-12));
  }

  @Test
  void aTipThatCannotBeIsAFault() {
    assertThatIllegalArgumentException().isThrownBy(() -> new TipCode(0, 17));
    assertThatIllegalArgumentException().isThrownBy(() -> new TipCode(5, 100));
  }

  private static String sentence(String raw) {
    return ((TipCode.Refused) TipCode.read(raw)).sentence();
  }
}
