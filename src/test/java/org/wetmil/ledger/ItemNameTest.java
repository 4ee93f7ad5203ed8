package org.wetmil.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

class ItemNameTest {

  private static List<ItemName> read(String text) throws IOException, UnusableLedgerException {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    return ItemName.read("items.csv", () -> new ByteArrayInputStream(bytes));
  }

  @Test
  void theTableIsReadWithAnyDelimiter() throws Exception {
    List<ItemName> expected =
        List.of(new ItemName("WH-100", "Wall finish"), new ItemName("Tape", ""));

    assertThat(read("Item,Coating\nWH-100,Wall finish\n,\nTape,\n")).isEqualTo(expected);
    assertThat(read("Note;Coating;Item\nx;Wall finish;WH-100\n;;Tape\n")).isEqualTo(expected);
  }

  @Test
  void withoutItsHeadingsItSaysWhichAreThere() {
    assertThatThrownBy(() -> read("Product,Paint\nWH-100,Wall finish\n"))
        .isInstanceOf(UnusableLedgerException.class)
        .hasMessageContaining("Item and Coating")
        .hasMessageContaining("Product | Paint");
  }
}
