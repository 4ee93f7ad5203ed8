package org.wetmil.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The strict reader of the program's own tables, on small odd files beside this test. */
class BuiltInTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "odd-number.csv | line 6: | O7",
        "odd-range.csv | line 7: | Orifice from 70 is out of range",
        "odd-width.csv | line 6: | 3 fields wanted",
        "odd-heading.csv | line 5: | headings are not those declared",
        "odd-twice.csv | line 9: | the name fans 2 stands there twice",
        "odd-word.csv | line 6: | maybe is none of [yes, no]",
        "odd-declaration.csv | line 3: | six parts wanted",
        "odd-kind.csv | line 2: | GUESS",
        "odd-quantity.csv | line 2: | FURLONG"
      })
  void anOddLineStopsWithItsFileAndLine(String file, String line, String why) {
    assertThatThrownBy(() -> BuiltIn.table("Odd", file))
        .isInstanceOf(IllegalStateException.class)
        .hasMessageStartingWith(file + ", " + line)
        .hasMessageContaining(why);
  }

  @Test
  void aFileWithoutAHeadingLineStops() {
    assertThatThrownBy(() -> BuiltIn.table("Odd", "odd-empty.csv"))
        .isInstanceOf(IllegalStateException.class)
        .hasMessageStartingWith("odd-empty.csv: no heading line");
  }

  @Test
  void plainTablesAreAsStrict() {
    assertThatThrownBy(
            () -> BuiltIn.plain("odd-width.csv", List.of("Name", "Orifice from", "Rough")))
        .hasMessageStartingWith("odd-width.csv, line 6: 3 fields wanted");
    assertThatThrownBy(() -> BuiltIn.plain("odd-width.csv", List.of("Name", "Orifice")))
        .hasMessageStartingWith("odd-width.csv, line 5: headings");
  }

  @Test
  void aFigureSaysHowSurelyItIsKnown() {
    Table table = BuiltIn.table("Sure", "sure.csv");

    Entry house = table.get("one").get("Orifice from");
    Entry practice = table.get("two").get("Orifice from");
    Entry published = table.get("three").get("Orifice from");
    assertThat(house.kind()).isEqualTo(Kind.HOUSE);
    assertThat(house.source()).isEqualTo("judgement");
    assertThat(practice.kind()).isEqualTo(Kind.PRACTICE);
    assertThat(practice.source()).isEqualTo("common practice");
    assertThat(published.kind()).isEqualTo(Kind.PUBLISHED);
    assertThat(published.source()).isEqualTo("a handbook, p. 4");
  }

  @Test
  void aShareOverOneIsAPercentage() {
    Table table = BuiltIn.table("Sure", "sure.csv");

    assertThat(table.get("one").number("Solids")).isEqualTo(0.36);
    assertThat(table.get("two").number("Solids")).isEqualTo(1.0);
    assertThat(table.get("three").number("Solids")).isNaN();
  }
}
