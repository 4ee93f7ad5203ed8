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
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
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
    TableSpec spec = new TableSpec(name, fields(file, lines));
    List<String> headings = spec.fields().stream().map(Field::heading).toList();
    List<Row> rows = new ArrayList<>();
    Set<String> names = new HashSet<>();
    for (CsvText.Row csv : records(file, lines, headings)) {
      try {
        Row row = row(spec, csv.fields());
        if (!names.add(Names.key(row.name()))) {
          throw new IllegalArgumentException("the name " + row.name() + " stands there twice");
        }
        rows.add(row);
      } catch (IllegalArgumentException e) {
        throw odd(file, csv.line(), e.getMessage());
      }
    }
    return new Table(spec, rows);
  }

  /** Records of a table without declared columns, which has these headings. */
  static List<CsvText.Row> plain(String file, List<String> headings) {
    return records(file, lines(file), headings);
  }

  private static List<Field> fields(String file, List<String> lines) {
    List<Field> fields = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      if (lines.get(i).startsWith("#:")) {
        try {
          fields.add(Field.of(lines.get(i).substring(2)));
        } catch (IllegalArgumentException e) {
          throw odd(file, i + 1, e.getMessage());
        }
      }
    }
    return fields;
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
    Optional<String> surer = surer(spec, field, texts);
    Kind kind = surer.isEmpty() ? field.kind() : Kind.PRACTICE;
    String source = surer.isEmpty() ? field.source() : "common practice";
    if (surer.isPresent() && !surer.get().isEmpty()) {
      kind = Kind.PUBLISHED;
      source = surer.get();
    }
    Quantity quantity = field.quantity();
    Range range = field.range();
    if (quantity == null) {
      quantity = Field.quantity(texts.get(spec.index("Quantity")));
      range = Range.of(texts.get(spec.index("Range")));
    }
    if (spec.isByRow() && spec.has("Kind")) {
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

  /**
   * What makes a figure of this row surer than its column: nothing, common practice (an empty text)
   * or a published source.
   */
  private static Optional<String> surer(TableSpec spec, Field field, List<String> texts) {
    if (!spec.has("Practice")) {
      return Optional.empty();
    }
    return Arrays.stream(texts.get(spec.index("Practice")).split(";"))
        .filter(part -> part.equals(field.heading()) || part.startsWith(field.heading() + ":"))
        .map(part -> part.substring(field.heading().length()).replaceFirst("^:\\s*", ""))
        .findFirst();
  }

  /** All records after the heading line, each as wide as it. */
  private static List<CsvText.Row> records(String file, List<String> lines, List<String> headings) {
    List<CsvText.Row> records = records(file, lines);
    if (records.isEmpty()) {
      throw new IllegalStateException(file + ": no heading line");
    }
    if (!records.get(0).fields().equals(headings)) {
      throw odd(file, records.get(0).line(), "headings are not those declared: " + headings);
    }
    for (CsvText.Row csv : records) {
      if (csv.fields().size() != headings.size()) {
        throw odd(file, csv.line(), headings.size() + " fields wanted");
      }
    }
    return records.subList(1, records.size());
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

  private static IllegalStateException odd(String file, long line, String why) {
    return new IllegalStateException(file + ", line " + line + ": " + why);
  }
}
