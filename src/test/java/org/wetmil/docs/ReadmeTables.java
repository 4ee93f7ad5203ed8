package org.wetmil.docs;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Entry;
import org.wetmil.catalogue.Row;
import org.wetmil.catalogue.Setting;
import org.wetmil.checks.Check;
import org.wetmil.checks.Checks;
import org.wetmil.cli.ComparedSamples;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.estimate.InputColumn;
import org.wetmil.jobs.explain.GoldenLines;
import org.wetmil.quantity.Unit;
import org.wetmil.quantity.UnitSystem;

/** The README's tables, made from the declarations; a test holds the README to them. */
public final class ReadmeTables {
  static final Path README = Path.of("README.md");
  private static final Pattern BLOCK =
      Pattern.compile("<!-- table: ([a-z-]+) -->\n.*?<!-- end -->", Pattern.DOTALL);

  private ReadmeTables() {}

  /** Writes the tables anew. Run by hand; DEVELOPERS.md says how. */
  public static void main(String[] args) throws IOException {
    Files.writeString(README, renewed(Files.readString(README)));
  }

  /** The text with each marked block made anew. */
  static String renewed(String text) {
    Map<String, List<String>> tables = tables();
    Matcher matcher = BLOCK.matcher(text);
    return matcher.replaceAll(
        found -> {
          List<String> table = tables.get(found.group(1));
          if (table == null) {
            throw new IllegalArgumentException("no table " + found.group(1));
          }
          return Matcher.quoteReplacement(
              "<!-- table: "
                  + found.group(1)
                  + " -->\n"
                  + String.join("\n", table)
                  + "\n<!-- end -->");
        });
  }

  static Map<String, List<String>> tables() {
    Map<String, List<String>> tables = new LinkedHashMap<>();
    tables.put("input-columns", inputColumns());
    tables.put("filled-columns", filledColumns());
    tables.put("checks", checks());
    tables.put("settings", settings());
    tables.put("explained", explained());
    tables.put("compared", compared());
    return tables;
  }

  private static List<String> inputColumns() {
    return table(
        List.of("Column", "Unit (US / metric)", "What it holds"),
        Arrays.stream(InputColumn.values())
            .map(
                column ->
                    List.of(
                        column.heading(),
                        units(
                            column.quantity().unit(UnitSystem.US),
                            column.quantity().unit(UnitSystem.METRIC)),
                        column.meaning()))
            .toList());
  }

  private static List<String> filledColumns() {
    return table(
        List.of("Column", "Unit (US / metric)", "What it says"),
        Arrays.stream(FilledColumn.values())
            .map(
                column ->
                    List.of(
                        column.heading(),
                        units(
                            column.quantity().unit(UnitSystem.US),
                            column.quantity().unit(UnitSystem.METRIC)),
                        column.meaning()))
            .toList());
  }

  private static List<String> checks() {
    List<List<String>> rows = new ArrayList<>();
    for (Check check : Checks.ALL) {
      rows.add(
          List.of(
              "`" + check.id() + "`",
              check.severity().name().toLowerCase(Locale.ROOT),
              check.title(),
              check.kind().with(check.source())));
    }
    return table(List.of("Check", "Severity", "What it looks at", "Rests on"), rows);
  }

  private static List<String> settings() {
    List<List<String>> rows = new ArrayList<>();
    for (Setting setting : Setting.values()) {
      Row row = Catalogue.builtIn().row(setting);
      Entry value = row.get("Value");
      String unit = value.quantity().base().symbol();
      rows.add(
          List.of(
              setting.title(),
              (shown(value) + " " + (value.text().isEmpty() ? "" : unit)).strip(),
              value.kind().with(value.source()),
              row.text("Meaning")));
    }
    return table(List.of("Setting", "Built in", "Rests on", "What it does"), rows);
  }

  /** A limit of 10 cm in inches has more digits than a reader wants. */
  private static String shown(Entry value) {
    return Double.isNaN(value.number())
        ? value.text()
        : new BigDecimal(value.text()).round(new MathContext(6)).toPlainString();
  }

  /** A command, and of what it prints the choice of the tip and the last two steps. */
  private static List<String> explained() {
    String sample = "clinic-refit.xlsx";
    String cell = GoldenLines.cellOf("Paint", sample, "5");
    List<String> lines = GoldenLines.explain(sample, cell);
    int tip = step(lines, "Tip code");
    List<String> excerpt = new ArrayList<>();
    excerpt.add("```");
    excerpt.add("java -jar target/wetmil.jar explain sample-workbooks/" + sample + " " + cell);
    excerpt.addAll(List.of("```", "", "prints, among the rest:", "", "```"));
    excerpt.addAll(lines.subList(0, 2));
    excerpt.add("...");
    excerpt.addAll(lines.subList(tip, lines.indexOf("    Not compared:")));
    excerpt.add("...");
    int end = lines.indexOf("No findings on this line.") - 1;
    excerpt.addAll(lines.subList(step(lines, "Spread"), end));
    excerpt.add("```");
    return excerpt;
  }

  /** Of a comparison, what both come to, where the difference is from, and each change. */
  private static List<String> compared() {
    List<String> excerpt = new ArrayList<>(List.of("```"));
    try {
      Path folder = Files.createTempDirectory("compared");
      List<String> lines = ComparedSamples.printed(folder);
      Files.delete(folder.resolve("compared.xlsx"));
      Files.delete(folder);
      excerpt.addAll(lines.subList(0, 6));
      excerpt.add("...");
      excerpt.addAll(lines.subList(lines.indexOf("Of the difference"), lines.size()));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    excerpt.add("```");
    return excerpt;
  }

  private static int step(List<String> lines, String name) {
    for (int i = 0; i < lines.size(); i++) {
      if (lines.get(i).matches("\\d+ +" + name + ": .*")) {
        return i;
      }
    }
    throw new IllegalArgumentException("no step " + name);
  }

  private static String units(Unit us, Unit metric) {
    if (us == metric) {
      return us.symbol();
    }
    return us.symbol() + " / " + metric.symbol();
  }

  private static List<String> table(List<String> headings, List<List<String>> rows) {
    List<String> lines = new ArrayList<>();
    lines.add("| " + String.join(" | ", headings) + " |");
    lines.add("|" + " --- |".repeat(headings.size()));
    rows.forEach(row -> lines.add("| " + String.join(" | ", row) + " |"));
    return lines;
  }
}
