package org.wetmil.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.util.List;
import org.junit.jupiter.api.Test;

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
}
