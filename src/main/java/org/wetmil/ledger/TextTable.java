package org.wetmil.ledger;

import java.io.IOException;
import java.io.Reader;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.apache.commons.csv.CSVException;

/** Reads a small table as text, under whichever delimiter makes one of it. */
final class TextTable {
  static final char[] DELIMITERS = {',', ';', '\t'};

  private TextTable() {}

  /**
   * Reads a table.
   *
   * @param file the name to show
   * @param table what the rows are, parted at one delimiter; empty when they are no such table
   * @param wanted what is to be there, said after the file, before the first line that is
   * @throws UnusableLedgerException when it is no such table under any delimiter
   */
  static <T> T read(
      String file,
      LedgerSource source,
      Function<List<CsvText.Row>, Optional<T>> table,
      String wanted)
      throws IOException, UnusableLedgerException {
    TextEncoding encoding = TextEncoding.of(source);
    String firstLine = "";
    for (char delimiter : DELIMITERS) {
      List<CsvText.Row> rows = new ArrayList<>();
      try (Reader reader = encoding.open(source)) {
        CsvText.forEach(reader, delimiter, true, rows::add);
      } catch (CSVException e) {
        throw new UnusableLedgerException(file + ": a quote is opened and never closed.");
      }
      if (rows.isEmpty()) {
        continue;
      }
      Optional<T> found = table.apply(rows);
      if (found.isPresent()) {
        return found.get();
      }
      firstLine =
          firstLine.isEmpty() ? UnusableLedgerException.row(rows.get(0).fields()) : firstLine;
    }
    throw new UnusableLedgerException(file + wanted + firstLine + ".");
  }
}
