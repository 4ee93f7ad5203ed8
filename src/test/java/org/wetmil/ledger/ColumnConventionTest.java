package org.wetmil.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ColumnConventionTest {

  private static BigDecimal number(String text, LedgerLayout.Mark mark) {
    return NumberColumn.read(text, mark).map(NumberColumn.Value::number).orElse(null);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      nullValues = "none",
      value = {
        "1,234.50 | 1234.50 | none",
        "1.234,50 | none | 1234.50",
        "1234 | 1234 | 1234",
        "1,234 | 1234 | 1.234",
        "1.234 | 1.234 | 1234",
        "12,50 | none | 12.50",
        "12.50 | 12.50 | none",
        "1,234,567.8 | 1234567.8 | none",
        "1'234.50 | 1234.50 | none",
        "1 234,50 | none | 1234.50",
        "1\u00A0234,50 | none | 1234.50",
        "(12.00) | -12.00 | none",
        "($12.00) | -12.00 | none",
        "$(12.00) | -12.00 | none",
        "-12 | -12 | -12",
        "12- | -12 | -12",
        "\u221212 | -12 | -12",
        "$-12.00 | -12.00 | none",
        "-$12.00 | -12.00 | none",
        "$1,234.50 | 1234.50 | none",
        "1.234,50 € | none | 1234.50",
        "€ 1.234,50 | none | 1234.50",
        "USD 12.00 | 12.00 | none",
        "12.00 USD | 12.00 | none",
        "-12,00 EUR | none | -12.00",
        ".5 | 0.5 | none",
        "12. | 12 | none",
        "+3 | 3 | 3",
        "1,23,456 | none | none",
        "12.34.56 | none | none",
        "abc | none | none",
        "- | none | none",
        "$ | none | none"
      })
  void aNumberIsReadByTheMarkOfItsColumn(String text, BigDecimal point, BigDecimal comma) {
    assertThat(number(text, LedgerLayout.Mark.COMMA)).isEqualTo(comma);
    assertThat(number(text, LedgerLayout.Mark.POINT)).isEqualTo(point);
  }

  @Test
  void theWholeColumnDecidesWhatOnePointMeans() {
    Ledgers.Read comma = Ledgers.read("Item;Menge;Betrag", "a;1;1.234", "b;1;5,50");
    Ledgers.Read point = Ledgers.read("Item;Menge;Betrag", "a;1;1.234", "b;1;5.50");

    assertThat(comma.lines().get(0).amount()).isEqualByComparingTo("1234");
    assertThat(point.lines().get(0).amount()).isEqualByComparingTo("1.234");
  }

  @Test
  void aColumnThatShowsNothingFollowsTheOtherNumbers() {
    Ledgers.Read read = Ledgers.read("Item,Qty,Amount", "a,5.000,1.50", "b,1.000,2.50");

    assertThat(read.lines().get(0).quantity()).isEqualByComparingTo("5");
    assertThat(read.layout().notes()).isEmpty();
  }

  @Test
  void aMarkThatNothingShowsIsAssumedAndSaid() {
    Ledgers.Read read = Ledgers.read("Item,Qty,Amount", "a,1,1.234");

    assertThat(read.only().amount()).isEqualByComparingTo("1.234");
    assertThat(read.layout().notes())
        .extracting(LedgerNote::type)
        .containsExactly(LedgerNote.Type.MARK_ASSUMED);
  }

  @Test
  void aNumberAgainstTheColumnIsUnreadableNotGuessed() {
    Ledgers.Read read = Ledgers.read("Item,Qty,Amount", "a,1,10.50", "b,1,11.50", "c,1,\"12,50\"");

    assertThat(read.lines().get(2).amount()).isNull();
    assertThat(read.lines().get(2).problems())
        .extracting(LineProblem::type, LineProblem::raw)
        .containsExactly(tuple(LineProblem.Type.UNREADABLE_NUMBER, "12,50"));
  }

  @ParameterizedTest
  @CsvSource({
    "2026-03-04, 2026-03-04, 2026-03-04",
    "2026/3/4, 2026-03-04, 2026-03-04",
    "2026-03-04T10:15:00, 2026-03-04, 2026-03-04",
    "3/4/26, 2026-03-04, 2026-04-03",
    "03/04/2026, 2026-03-04, 2026-04-03",
    "3/4/2026 12:00 AM, 2026-03-04, 2026-04-03",
    "3-4-26, 2026-03-04, 2026-04-03",
    "04.03.2026, 2026-03-04, 2026-03-04",
    "4.3.26, 2026-03-04, 2026-03-04",
    "4-Mar-26, 2026-03-04, 2026-03-04",
    "'Mar 4, 2026', 2026-03-04, 2026-03-04",
    "4. März 2026, 2026-03-04, 2026-03-04",
    "4 de marzo de 2026, 2026-03-04, 2026-03-04",
    "3/24/26, 2026-03-24, ",
    "24/3/26, , 2026-03-24",
    "2026-02-30, , ",
    "soon, , ",
    "46085, , "
  })
  void aDateIsReadByTheOrderOfItsColumn(String text, LocalDate monthFirst, LocalDate dayFirst) {
    assertThat(DateColumn.read(text, DateOrder.MONTH_FIRST))
        .isEqualTo(Optional.ofNullable(monthFirst));
    assertThat(DateColumn.read(text, DateOrder.DAY_FIRST)).isEqualTo(Optional.ofNullable(dayFirst));
  }

  @Test
  void oneDateDecidesTheOrderOfAll() {
    Ledgers.Read read = Ledgers.read("Date,Item,Amount", "3/4/26,a,1", "24/4/26,b,1", "5/4/26,c,1");

    assertThat(read.lines())
        .extracting(LedgerLine::date)
        .containsExactly(
            LocalDate.of(2026, 4, 3), LocalDate.of(2026, 4, 24), LocalDate.of(2026, 4, 5));
    assertThat(read.layout().notes()).isEmpty();
  }

  @Test
  void anOrderThatIsStatedWins() {
    byte[] text = "Date,Item,Amount\n3/4/26,a,1\n".getBytes(StandardCharsets.UTF_8);

    assertThat(Ledgers.read(text, DateOrder.DAY_FIRST).only().date())
        .isEqualTo(LocalDate.of(2026, 4, 3));
    assertThat(Ledgers.read(text, DateOrder.MONTH_FIRST).layout().notes()).isEmpty();
  }

  @Test
  void anOrderThatNothingShowsIsAssumedAndSaid() {
    Ledgers.Read read = Ledgers.read("Date,Item,Amount", "3/4/26,a,1");

    assertThat(read.only().date()).isEqualTo(LocalDate.of(2026, 3, 4));
    assertThat(read.layout().notes())
        .extracting(LedgerNote::type)
        .containsExactly(LedgerNote.Type.ORDER_ASSUMED);
  }

  @Test
  void datesOfBothOrdersAreNeverReadLineByLine() {
    Ledgers.Read read =
        Ledgers.read("Date,Item,Amount", "3/24/26,a,1", "3/25/26,b,1", "26/3/26,c,1", "3/4/26,d,1");

    assertThat(read.lines().get(2).date()).isNull();
    assertThat(read.lines().get(2).problems())
        .extracting(LineProblem::type)
        .containsExactly(LineProblem.Type.UNREADABLE_DATE);
    assertThat(read.lines().get(3).date()).isEqualTo(LocalDate.of(2026, 3, 4));
    assertThat(read.layout().notes())
        .extracting(LedgerNote::type)
        .containsExactly(LedgerNote.Type.ORDER_MIXED);
  }

  /** As a broken export leaves them: a pattern that looks back at every digit took minutes. */
  @Test
  @Timeout(10)
  void cellOfThousandsOfDigitsIsReadAtOnce() {
    String digits = "12 ".repeat(10_000);

    assertThat(NumberColumn.currency(digits)).isEmpty();
    assertThat(NumberColumn.currency(digits + "EUR")).isEqualTo("EUR");
  }
}
