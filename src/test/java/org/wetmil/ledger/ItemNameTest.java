package org.wetmil.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

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
    assertThat(read("Item,Coating\nWH-100,Wall finish\n,\nTape,\n"))
        .containsExactly(
            new ItemName("WH-100", "Wall finish", "items.csv:2"),
            new ItemName("Tape", "", "items.csv:4"));
    assertThat(read("Note;Coating;Item\nx;Wall finish;WH-100\n;;Tape\n"))
        .extracting(ItemName::item, ItemName::coating)
        .containsExactly(tuple("WH-100", "Wall finish"), tuple("Tape", ""));
  }

  @Test
  void titlesMayStandAboveTheHeadings() throws Exception {
    assertThat(read("Our items,\n,\nItem,Coating\nWH-100,Wall finish\n"))
        .containsExactly(new ItemName("WH-100", "Wall finish", "items.csv:4"));
  }

  @Test
  void withoutItsHeadingsItSaysWhichAreThere() {
    assertThatThrownBy(() -> read("Product,Paint\nWH-100,Wall finish\n"))
        .isInstanceOf(UnusableLedgerException.class)
        .hasMessageContaining("Item and Coating")
        .hasMessageEndingWith("Product | Paint.");
  }
}
