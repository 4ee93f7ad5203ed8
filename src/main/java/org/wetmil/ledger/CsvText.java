package org.wetmil.ledger;

import java.io.IOException;
import java.io.Reader;
import java.util.ArrayList;
import java.util.List;
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
    CSVFormat format = CSVFormat.DEFAULT.builder().setIgnoreEmptyLines(true).get();
    List<Row> rows = new ArrayList<>();
    try (CSVParser parser = CSVParser.parse(reader, format)) {
      for (CSVRecord csv : parser) {
        // the parser stands on the record's last line; breaks inside quotes lie before that
        long line = parser.getCurrentLineNumber() - csv.stream().mapToLong(CsvText::breaks).sum();
        rows.add(new Row(line, csv.toList()));
      }
    }
    return rows;
  }

  private static long breaks(String field) {
    return BREAK.matcher(field).results().count();
  }
}
