package org.wetmil.ledger;

import java.io.IOException;
import java.util.List;
import java.util.Optional;

/**
 * A row of the bookkeeper's own table: what an item of the ledgers is called in the bids.
 *
 * @param item the item or description as the ledger writes it
 * @param coating the coating; blank or "none" when the item is no coating
 * @param where where the row stands, to be shown
 */
public record ItemName(String item, String coating, String where) {
  /**
   * A row of a table as text.
   *
   * @param where where it stands, to be shown
   */
  public record TextRow(String where, List<String> cells) {
    public TextRow {
      cells = List.copyOf(cells);
    }

    private String cell(int at) {
      return at < cells.size() ? cells.get(at).strip() : "";
    }
  }

  /** The rows under the headings Item and Coating; empty when no row has these headings. */
  public static Optional<List<ItemName>> under(List<TextRow> rows) {
    for (int i = 0; i < rows.size(); i++) {
      List<String> headings = rows.get(i).cells().stream().map(LedgerWords::key).toList();
      int item = headings.indexOf("item");
      int coating = headings.indexOf("coating");
      if (item >= 0 && coating >= 0) {
        return Optional.of(
            rows.stream()
                .skip(i + 1L)
                .map(row -> new ItemName(row.cell(item), row.cell(coating), row.where()))
                .filter(name -> !name.item().isEmpty())
                .toList());
      }
    }
    return Optional.empty();
  }

  /**
   * Reads the table from comma-, semicolon- or tab-separated text with the headings Item and
   * Coating.
   *
   * @throws UnusableLedgerException when the headings are not there
   */
  public static List<ItemName> read(String file, LedgerSource source)
      throws IOException, UnusableLedgerException {
    return TextTable.read(
        file,
        source,
        rows ->
            under(
                rows.stream()
                    .map(row -> new TextRow(file + ":" + row.line(), row.fields()))
                    .toList()),
        " is to have the headings Item and Coating in one line; its first is: ");
  }
}
