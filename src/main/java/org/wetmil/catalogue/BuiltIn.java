package org.wetmil.catalogue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.wetmil.ledger.CsvText;
import org.wetmil.quantity.Quantity;

/**
 * Reads the tables that come with the program, and stops at the first odd line.
 *
 * <p>Comment lines {@code #:} declare the columns; the first line after them repeats the headings.
 */
final class BuiltIn {
  private static final Origin BUILT_IN = new Origin.BuiltIn();

  private BuiltIn() {}

  static Table table(String name, String file) {
    List<String> lines = lines(file);
    List<Field> fields =
        lines.stream()
            .filter(line -> line.startsWith("#:"))
            .map(line -> Field.of(line.substring(2)))
            .toList();
    TableSpec spec = new TableSpec(name, fields);
    List<CsvText.Row> records = records(file, lines);
    List<String> headings = fields.stream().map(Field::heading).toList();
    if (!records.get(0).fields().equals(headings)) {
      throw odd(file, records.get(0), "headings are not those declared: " + headings);
    }
    List<Row> rows = new ArrayList<>();
    for (CsvText.Row csv : records.subList(1, records.size())) {
      if (csv.fields().size() != fields.size()) {
        throw odd(file, csv, fields.size() + " fields wanted");
      }
      try {
        rows.add(row(spec, csv.fields()));
      } catch (IllegalArgumentException e) {
        throw odd(file, csv, e.getMessage());
      }
    }
    Table table = new Table(spec, rows);
    if (table.rows().size() != rows.size()) {
      throw new IllegalStateException(file + ": a name stands there twice");
    }
    return table;
  }

  /** Records of a table without declared columns, the heading line left out. */
  static List<CsvText.Row> plain(String file, int width) {
    List<CsvText.Row> records = records(file, lines(file));
    for (CsvText.Row csv : records) {
      if (csv.fields().size() != width) {
        throw odd(file, csv, width + " fields wanted");
      }
    }
    return records.subList(1, records.size());
  }

  private static Row row(TableSpec spec, List<String> texts) {
    List<Entry> entries = new ArrayList<>();
    for (int i = 0; i < texts.size(); i++) {
      entries.add(entry(spec, i, texts));
    }
    return new Row(spec, texts.get(0).strip(), entries);
  }

  private static Entry entry(TableSpec spec, int i, List<String> texts) {
    Field field = spec.fields().get(i);
    String text = texts.get(i).strip();
    Kind kind = isPractice(spec, field, texts) ? Kind.PRACTICE : field.kind();
    String source = kind == Kind.PRACTICE ? "common practice" : field.source();
    Quantity quantity = field.quantity();
    Range range = field.range();
    if (quantity == null) {
      quantity = Field.quantity(texts.get(spec.index("Quantity")));
      range = Range.of(texts.get(spec.index("Range")));
    }
    if (spec.isByRow() && spec.fields().stream().anyMatch(f -> f.heading().equals("Kind"))) {
      kind = Kind.of(texts.get(spec.index("Kind")));
      source = texts.get(spec.index("Source"));
    }
    double number = Double.NaN;
    if (quantity.isNumber() && !text.isEmpty()) {
      number = Double.parseDouble(text);
      if (quantity == Quantity.SHARE && number > 1) {
        number /= 100;
      }
      if (!range.holds(number)) {
        throw new IllegalArgumentException(field.heading() + " " + text + " is out of range");
      }
    } else if (!text.isEmpty() && range.word(text).isEmpty()) {
      throw new IllegalArgumentException(text + " is none of " + range.words());
    }
    return new Entry(text, number, quantity, kind, source, BUILT_IN);
  }

  private static boolean isPractice(TableSpec spec, Field field, List<String> texts) {
    boolean says = spec.fields().stream().anyMatch(f -> f.heading().equals("Practice"));
    return says
        && Arrays.asList(texts.get(spec.index("Practice")).split(";")).contains(field.heading());
  }

  private static List<CsvText.Row> records(String file, List<String> lines) {
    // comment lines become blank ones, so that line numbers stay those of the file
    String body =
        lines.stream()
            .map(line -> line.startsWith("#") ? "" : line)
            .collect(Collectors.joining("\n"));
    try {
      return CsvText.rows(new StringReader(body));
    } catch (IOException e) {
      throw new UncheckedIOException(file, e);
    }
  }

  private static List<String> lines(String file) {
    InputStream stream = BuiltIn.class.getResourceAsStream(file);
    if (stream == null) {
      throw new IllegalStateException("no resource " + file);
    }
    try (BufferedReader reader =
        new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
      return reader.lines().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(file, e);
    }
  }

  private static IllegalStateException odd(String file, CsvText.Row csv, String why) {
    return new IllegalStateException(file + ", line " + csv.line() + ": " + why);
  }
}
