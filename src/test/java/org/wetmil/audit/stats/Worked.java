package org.wetmil.audit.stats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** One worked example computed with R: {@code r/audit-statistics.R} and its output beside it. */
record Worked(String example, Map<String, Double> figures) {

  static Worked example(String name) {
    CSVFormat format =
        CSVFormat.DEFAULT
            .builder()
            .setCommentMarker('#')
            .setHeader()
            .setSkipHeaderRecord(true)
            .get();
    Map<String, Double> figures = new LinkedHashMap<>();
    try (CSVParser parser =
        CSVParser.parse(
            new InputStreamReader(
                Worked.class.getResourceAsStream("/r/audit-statistics.csv"),
                StandardCharsets.UTF_8),
            format)) {
      for (CSVRecord csv : parser) {
        if (csv.get("example").equals(name)) {
          figures.put(csv.get("figure"), Double.valueOf(csv.get("value")));
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    assertThat(figures).as(name).isNotEmpty();
    return new Worked(name, figures);
  }

  double[] series(String figure) {
    double[] numbers =
        figures.entrySet().stream()
            .filter(entry -> entry.getKey().matches(figure + " \\d+"))
            .mapToDouble(Map.Entry::getValue)
            .toArray();
    assertThat(numbers).as(figure).isNotEmpty();
    return numbers;
  }

  /** Holds a computed figure against R's, to twelve digits. */
  void check(String figure, double computed) {
    double expected = figures.get(figure);
    assertThat(computed)
        .as("%s: %s", example, figure)
        .isCloseTo(expected, within(1e-12 * Math.max(1, Math.abs(expected))));
  }

  void checkSeries(String figure, double... computed) {
    for (int i = 0; i < computed.length; i++) {
      check(figure + " " + (i + 1), computed[i]);
    }
    assertThat(computed).hasSize(series(figure).length);
  }
}
