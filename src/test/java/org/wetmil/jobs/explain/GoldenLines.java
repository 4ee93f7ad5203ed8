package org.wetmil.jobs.explain;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.wetmil.workbook.opc.Passwords;

/** Explanations of a US and a metric line of the samples, frozen: outputs of our own, no truth. */
public final class GoldenLines {
  static final Path FOLDER = Path.of("src/test/resources/golden");

  private GoldenLines() {}

  static Map<String, List<String>> all() {
    Map<String, List<String>> all = new LinkedHashMap<>();
    all.put("explain-us.txt", explain("clinic-refit.xlsx", "5"));
    all.put("explain-metric.txt", explain("gym-hall.xlsx", "8"));
    return all;
  }

  /** The lines that explain a cell of a sample. */
  public static List<String> explain(String sample, String cell) {
    return new ExplainJob(Passwords.NONE)
        .explain(Path.of("sample-workbooks", sample), Asked.of(cell));
  }

  /** The cell of a figure in a row of a sample; a new column moves those to its right. */
  public static String cellOf(String figure, String sample, String row) {
    Pattern step = Pattern.compile("\\d+ +" + Pattern.quote(figure) + ": .*\\((\\w+)\\)");
    return explain(sample, row).stream()
        .map(step::matcher)
        .filter(Matcher::matches)
        .map(found -> found.group(1))
        .findFirst()
        .orElseThrow();
  }

  /** Writes them anew. */
  public static void write() throws IOException {
    for (Map.Entry<String, List<String>> golden : all().entrySet()) {
      Files.write(FOLDER.resolve(golden.getKey()), golden.getValue());
    }
  }
}
