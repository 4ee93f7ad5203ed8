package org.wetmil.ledger;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** Reads comma-separated text as plain rows, each with the line of the file that it begins on. */
public final class CsvText {
  private static final Pattern BREAK = Pattern.compile("\\r\\n|\\r|\\n");

  private CsvText() {}

  /** One record: the line it begins on (from 1) and its fields as written. */
  public record Row(long line, List<String> fields) {}

  /** Reads all records; blank lines are passed over, fields are kept as written. */
  public static List<Row> rows(Reader reader) throws IOException {
    List<Row> rows = new ArrayList<>();
    CSVFormat format = CSVFormat.DEFAULT.builder().setIgnoreEmptyLines(true).get();
    forEach(reader, format, rows::add);
    return rows;
  }

  /**
   * Hands over the records of a text one by one, blank lines too; spaces around fields are dropped.
   *
   * @param quotes whether a quote at the start of a field encloses it
   * @throws org.apache.commons.csv.CSVException when a quote is never closed
   */
  static void forEach(Reader reader, char delimiter, boolean quotes, Consumer<Row> sink)
      throws IOException {
    CSVFormat format =
        CSVFormat.DEFAULT
            .builder()
            .setDelimiter(delimiter)
            .setQuote(quotes ? '"' : null)
            .setIgnoreEmptyLines(false)
            .setIgnoreSurroundingSpaces(true)
            .setTrailingData(true)
            .get();
    forEach(reader, format, sink);
  }

  private static void forEach(Reader reader, CSVFormat format, Consumer<Row> sink)
      throws IOException {
    try (CSVParser parser = CSVParser.parse(reader, format)) {
      for (CSVRecord csv : parser) {
        // the parser stands on the record's last line; breaks inside quotes lie before that
        long line = parser.getCurrentLineNumber() - csv.stream().mapToLong(CsvText::breaks).sum();
        sink.accept(new Row(line, csv.toList()));
      }
    } catch (UncheckedIOException e) {
      throw e.getCause();
    }
  }

  private static long breaks(String field) {
    return field.indexOf('\n') < 0 && field.indexOf('\r') < 0
        ? 0
        : BREAK.matcher(field).results().count();
  }
}
