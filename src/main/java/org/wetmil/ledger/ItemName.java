package org.wetmil.ledger;

import java.io.IOException;
import java.io.Reader;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVException;

/**
 * A row of the bookkeeper's own table: what an item of the ledgers is called in the bids.
 *
 * @param item the item or description as the ledger writes it
 * @param coating the coating; blank or "none" when the item is no coating
 */
public record ItemName(String item, String coating) {
  private static final char[] DELIMITERS = {',', ';', '\t'};

  /**
   * Reads the table from comma-, semicolon- or tab-separated text with the headings Item and
   * Coating.
   *
   * @throws UnusableLedgerException when the headings are not there
   */
  public static List<ItemName> read(String file, LedgerSource source)
      throws IOException, UnusableLedgerException {
    TextEncoding encoding = TextEncoding.of(source);
    List<String> firstLine = List.of();
    for (char delimiter : DELIMITERS) {
      List<List<String>> rows = new ArrayList<>();
      try (Reader reader = encoding.open(source)) {
        CsvText.forEach(reader, delimiter, true, row -> rows.add(row.fields()));
      } catch (CSVException e) {
        throw new UnusableLedgerException(file + ": a quote is opened and never closed");
      }
      List<String> headings =
          rows.isEmpty() ? List.of() : rows.get(0).stream().map(LedgerWords::key).toList();
      int item = headings.indexOf("item");
      int coating = headings.indexOf("coating");
      if (item >= 0 && coating >= 0) {
        return rows.stream()
            .skip(1)
            .map(row -> new ItemName(cell(row, item), cell(row, coating)))
            .filter(name -> !name.item().isEmpty())
            .toList();
      }
      firstLine = firstLine.isEmpty() && !rows.isEmpty() ? rows.get(0) : firstLine;
    }
    throw new UnusableLedgerException(
        file
            + " is to have the headings Item and Coating in its first line; it has: "
            + String.join(" | ", firstLine));
  }

  private static String cell(List<String> row, int at) {
    return at < row.size() ? row.get(at).strip() : "";
  }
}
