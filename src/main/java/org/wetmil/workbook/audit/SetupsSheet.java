package org.wetmil.workbook.audit;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.wetmil.audit.Audit;
import org.wetmil.audit.MeasureAudit;
import org.wetmil.audit.past.Measure;
import org.wetmil.audit.past.PastLine;
import org.wetmil.audit.ratio.SetupRatio;
import org.wetmil.checks.Check;
import org.wetmil.checks.Checks;
import org.wetmil.workbook.look.Look;
import org.wetmil.workbook.look.Rows;

/** The list of checks that fired on past lines, and whether such lines ran over. */
final class SetupsSheet {
  private static final String[] HEADINGS = {
    "Check",
    "What",
    "Severity",
    "Lines",
    "Bids",
    "Most on",
    "Where",
    "Measure",
    "Jobs with it",
    "Jobs without",
    "Difference of mean logs",
    "Over the others",
    "Low",
    "High",
    "Reading"
  };
  private static final int[] WIDTHS = {26, 44, 10, 7, 7, 34, 44, 9, 8, 9, 11, 9, 8, 8, 46};
  private static final int MOST_SURFACES = 3;
  private static final int MOST_CELLS = 3;

  private final XSSFSheet sheet;
  private final Look look;
  private final Audit audit;
  private final Map<String, Cells> cells = new HashMap<>();

  SetupsSheet(XSSFSheet sheet, Look look, AuditBook book) {
    this.sheet = sheet;
    this.look = look;
    this.audit = book.audit();
    book.jobs()
        .forEach(
            job ->
                job.fired()
                    .forEach(
                        fired ->
                            cells
                                .computeIfAbsent(fired.check(), any -> new Cells())
                                .add(job.file(), fired)));
  }

  /** The first cells on which a check fired, and how many more there are. */
  private static final class Cells {
    private final StringBuilder first = new StringBuilder();
    private String file = "";
    private int count;

    void add(String in, FiredCheck fired) {
      count++;
      if (count <= MOST_CELLS) {
        first
            .append(first.isEmpty() ? "" : ", ")
            .append(in.equals(file) ? "" : in + " ")
            .append(fired.sheet())
            .append('!')
            .append(fired.address());
        file = in;
      }
    }

    @Override
    public String toString() {
      return count <= MOST_CELLS
          ? first.toString()
          : first + " and " + (count - MOST_CELLS) + " more";
    }
  }

  void write() {
    Rows rows = ListSheet.begin(sheet, look, HEADINGS, WIDTHS);
    Map<String, Map<String, Long>> surfaces = new TreeMap<>();
    Map<String, Integer> bids = new HashMap<>();
    audit
        .bids()
        .forEach(
            bid -> {
              bid.lines().forEach(line -> count(line, surfaces));
              bid.lines().stream()
                  .flatMap(line -> line.fired().stream())
                  .distinct()
                  .forEach(check -> bids.merge(check, 1, Integer::sum));
            });
    surfaces.forEach(
        (check, on) -> {
          List<MeasureAudit> measures = audit.measures();
          if (measures.isEmpty()) {
            begin(rows, check, on, bids.get(check));
          }
          for (MeasureAudit one : measures) {
            begin(rows, check, on, bids.get(check));
            one.setups().stream()
                .filter(setup -> setup.check().equals(check))
                .forEach(setup -> outcome(rows, one.measure(), setup));
          }
        });
    ListSheet.end(sheet, look, HEADINGS.length, rows);
  }

  private static void count(PastLine line, Map<String, Map<String, Long>> surfaces) {
    line.fired()
        .forEach(
            check ->
                surfaces
                    .computeIfAbsent(check, any -> new TreeMap<>())
                    .merge(line.surface(), 1L, Long::sum));
  }

  private void begin(Rows rows, String id, Map<String, Long> on, int bids) {
    Check check = Checks.get(id);
    rows.row()
        .text(id, look.strong())
        .text(check.title(), look.text(false))
        .text(check.severity().name().toLowerCase(Locale.ROOT), look.text(false))
        .number(on.values().stream().mapToLong(Long::longValue).sum(), look.number(0))
        .number(bids, look.number(0))
        .text(most(on), look.aside())
        .text(String.valueOf(cells.getOrDefault(id, new Cells())), look.aside());
  }

  private static String most(Map<String, Long> on) {
    return on.entrySet().stream()
        .sorted(Map.Entry.<String, Long>comparingByValue(Comparator.reverseOrder()))
        .limit(MOST_SURFACES)
        .map(entry -> entry.getKey() + " (" + entry.getValue() + ")")
        .collect(Collectors.joining(", "));
  }

  private void outcome(Rows rows, Measure measure, SetupRatio setup) {
    rows.text(measure.word(), look.text(false))
        .number(setup.jobsFired(), look.number(0))
        .number(setup.jobsQuiet(), look.number(0))
        .number(Math.log(setup.over()), look.number(3))
        .number(setup.over(), look.number(2))
        .number(setup.likely().low(), look.number(2))
        .number(setup.likely().high(), look.number(2))
        .text(reading(measure, setup), look.aside());
  }

  private static String reading(Measure measure, SetupRatio setup) {
    if (setup.isTooFew()) {
      return "too few jobs to tell";
    }
    if (!setup.likely().excludes(1)) {
      return "no more than luck explains";
    }
    return String.format(
        Locale.ROOT,
        "such lines took %.0f %% %s %s than the others",
        100 * Math.abs(setup.over() - 1),
        setup.over() > 1 ? "more" : "less",
        measure.word());
  }
}
