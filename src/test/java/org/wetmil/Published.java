package org.wetmil;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * Figures from outside the project, one file per source under {@code published/}.
 *
 * <p>A file opens with comment lines that name its source and how it was seen. A file without them,
 * or without rows, is a fault: a check that compares nothing must not pass.
 */
public final class Published {
  private Published() {}

  /** One figure of a source. */
  public record Row(String file, CSVRecord csv) {

    public String text(String column) {
      return csv.get(column);
    }

    public double number(String column) {
      return Double.parseDouble(csv.get(column));
    }

    /** Holds a computed figure against the published one, within the tolerance of the row. */
    public void check(double computed) {
      assertThat(computed)
          .as("%s", this)
          .isCloseTo(number("expected"), within(number("tolerance")));
    }

    @Override
    public String toString() {
      return file + " " + csv.toMap();
    }
  }

  public static List<Row> rows(String file) {
    CSVFormat format =
        CSVFormat.DEFAULT
            .builder()
            .setCommentMarker('#')
            .setHeader()
            .setSkipHeaderRecord(true)
            .get();
    try (InputStream stream = Published.class.getResourceAsStream("/published/" + file)) {
      assertThat(stream).as(file).isNotNull();
      try (CSVParser parser =
          CSVParser.parse(new InputStreamReader(stream, StandardCharsets.UTF_8), format)) {
        assertThat(parser.getHeaderComment()).as(file).contains("Source: ", "How seen: ");
        List<Row> rows = parser.stream().map(csv -> new Row(file, csv)).toList();
        assertThat(rows).as(file).isNotEmpty().allMatch(row -> row.csv().isConsistent());
        return rows;
      }
    } catch (IOException e) {
      throw new UncheckedIOException(file, e);
    }
  }
}
