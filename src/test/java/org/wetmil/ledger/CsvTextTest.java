package org.wetmil.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class CsvTextTest {

  @Test
  void aRowSaysTheLineThatItBeginsOn() throws IOException {
    String text = "\n\na,b\n\nc,\"two\r\nlines\"\nd,e";

    assertThat(CsvText.rows(new StringReader(text)))
        .containsExactly(
            new CsvText.Row(3, List.of("a", "b")),
            new CsvText.Row(5, List.of("c", "two\r\nlines")),
            new CsvText.Row(7, List.of("d", "e")));
  }

  /** Cases of the kinds that collections of awkward files gather; written anew. */
  static Stream<Arguments> awkward() {
    return Stream.of(
        arguments("plain", "a,b\n1,2\n", List.of(List.of("a", "b"), List.of("1", "2"))),
        arguments("no break at the end", "a,b\n1,2", List.of(List.of("a", "b"), List.of("1", "2"))),
        arguments("comma inside quotes", "\"1,5 gal\",2\n", List.of(List.of("1,5 gal", "2"))),
        arguments("quotes inside quotes", "\"Tape 2\"\"\",1\n", List.of(List.of("Tape 2\"", "1"))),
        arguments("quoted quotes alone", "\"\"\"\",1\n", List.of(List.of("\"", "1"))),
        arguments("empty fields", "a,,\n,,\n", List.of(List.of("a", "", ""), List.of("", "", ""))),
        arguments("empty quoted fields", "\"\",\"\"\n", List.of(List.of("", ""))),
        arguments("line feed inside quotes", "\"one\ntwo\",3\n", List.of(List.of("one\ntwo", "3"))),
        arguments(
            "carriage return inside quotes",
            "\"one\r\ntwo\",3\r\n4,5\r\n",
            List.of(List.of("one\r\ntwo", "3"), List.of("4", "5"))),
        arguments(
            "quote, comma and break together",
            "\"a \"\"b\"\",\nc\",d\n",
            List.of(List.of("a \"b\",\nc", "d"))),
        arguments(
            "another notation inside",
            "\"{\"\"k\"\": [1, 2]}\",x\n",
            List.of(List.of("{\"k\": [1, 2]}", "x"))),
        arguments(
            "letters of many scripts",
            "Weißlack,漆,лак,🖌\n",
            List.of(List.of("Weißlack", "漆", "лак", "🖌"))),
        arguments(
            "rows of different length",
            "a\nb,c,d\n",
            List.of(List.of("a"), List.of("b", "c", "d"))),
        arguments("spaces around quotes", "a , \"b, c\", d\n", List.of(List.of("a", "b, c", "d"))));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("awkward")
  void awkwardTextIsReadAsItIsMeant(String what, String text, List<List<String>> expected)
      throws IOException {
    List<List<String>> rows = new ArrayList<>();
    CsvText.forEach(new StringReader(text), ',', true, row -> rows.add(row.fields()));

    assertThat(rows).isEqualTo(expected);
  }
}
