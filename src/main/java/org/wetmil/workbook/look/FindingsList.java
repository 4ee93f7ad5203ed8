package org.wetmil.workbook.look;

import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Function;
import java.util.stream.Stream;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.wetmil.checks.Checks;
import org.wetmil.checks.Finding;
import org.wetmil.checks.Severity;
import org.wetmil.workbook.copy.LeanWorkbook;
import org.wetmil.workbook.copy.RowsLater;

/**
 * A list of findings, one a row, worst first; what those of all workbooks have in common. What says
 * the finding in words is printed, at a size that is read; figures by which the list is filtered
 * and sorted stand to the right of the paper.
 */
public final class FindingsList {
  /** More would make the workbook slow to open; how many there are is said. */
  public static final int MOST = 50_000;

  /** How the words of a column stand in it. */
  public enum Words {
    STRONG,
    ON_ONE_LINE,
    ON_LINES
  }

  /**
   * A column of words.
   *
   * @param width in characters
   */
  public record Column(String heading, int width, Words words, Function<Finding, String> text) {
    static final Column SEVERITY =
        new Column("Severity", 9, Words.STRONG, f -> f.severity().name().toLowerCase(Locale.ROOT));
    public static final Column MEASURED = onLines("Measured", 22, Finding::measured);
    public static final Column LIMIT = onLines("Limit", 22, Finding::limit);

    static Column onLines(String heading, int width, Function<Finding, String> text) {
      return new Column(heading, width, Words.ON_LINES, text);
    }

    public static Column check(int width) {
      return new Column("Check", width, Words.ON_ONE_LINE, Finding::check);
    }

    /** The room of a finding, by what it is in this list. */
    public static Column room(String heading, int width) {
      return onLines(heading, width, Finding::room);
    }

    /** The surface of a finding, by what it is in this list. */
    public static Column surface(String heading, int width) {
      return onLines(heading, width, Finding::surface);
    }

    public static Column message(int width) {
      return onLines("Finding", width, Finding::message);
    }

    public static Column why(int width) {
      return onLines("Why", width, finding -> Checks.get(finding.check()).why());
    }

    public static Column advice(int width) {
      return onLines("What to do", width, finding -> Checks.get(finding.check()).advice());
    }
  }

  /** The last columns on paper, which say where it is: headings and widths, what fills them. */
  public record Place(
      List<String> headings, List<Integer> widths, BiConsumer<Rows, Finding> write) {
    public Place {
      headings = List.copyOf(headings);
      widths = List.copyOf(widths);
    }
  }

  private final List<Column> columns;
  private final Place place;
  private final List<Column> beyond;
  private final int most;
  private final XSSFCellStyle heading;
  private final Map<Words, XSSFCellStyle> styles = new EnumMap<>(Words.class);

  /**
   * @param columns what is printed, after the severity
   * @param beyond what stands to the right of the paper
   */
  public FindingsList(Look look, List<Column> columns, Place place, List<Column> beyond) {
    this(look, columns, place, beyond, MOST);
  }

  FindingsList(Look look, List<Column> columns, Place place, List<Column> beyond, int most) {
    this.columns = withSeverity(columns);
    this.place = place;
    this.beyond = List.copyOf(beyond);
    this.most = most;
    this.heading = look.heading();
    styles.put(Words.STRONG, look.strong());
    styles.put(Words.ON_ONE_LINE, look.text(false));
    styles.put(Words.ON_LINES, look.text(true));
  }

  private static List<Column> withSeverity(List<Column> columns) {
    return Stream.concat(Stream.of(Column.SEVERITY), columns.stream()).toList();
  }

  /** What is to be said where not all findings are listed; empty where they are. */
  public static Optional<String> leftOut(int findings) {
    return leftOut(findings, MOST);
  }

  private static Optional<String> leftOut(int findings, int most) {
    return findings <= most
        ? Optional.empty()
        : Optional.of(
            String.format(
                Locale.ROOT,
                "Findings lists the first %,d of %,d, worst first; %,d more are printed by the run"
                    + " and not listed.",
                most,
                findings,
                findings - most));
  }

  /**
   * Writes the list.
   *
   * @param findings worst first
   */
  public void write(LeanWorkbook workbook, XSSFSheet sheet, List<Finding> findings) {
    int listed = Math.min(most, findings.size());
    Optional<String> more = leftOut(findings.size(), most);
    int count = 1 + listed + (more.isPresent() ? 1 : 0);
    List<Integer> widths =
        Stream.of(widths(columns), place.widths(), widths(beyond)).flatMap(List::stream).toList();
    workbook.later(
        sheet,
        new RowsLater(
            count,
            widths.size(),
            cells -> {
              Rows rows = new Rows(cells).row();
              columns.forEach(column -> rows.text(column.heading(), heading));
              place.headings().forEach(word -> rows.text(word, heading));
              beyond.forEach(column -> rows.text(column.heading(), heading));
              findings.subList(0, listed).forEach(finding -> write(rows, finding));
              more.ifPresent(sentence -> write(rows, sentence));
            }));
    for (int i = 0; i < widths.size(); i++) {
      Pages.width(sheet, i, widths.get(i));
    }
    sheet.createFreezePane(0, 1);
    sheet.setAutoFilter(new CellRangeAddress(0, count - 1, 0, widths.size() - 1));
    sheet.setRepeatingRows(new CellRangeAddress(0, 0, -1, -1));
    Pages.landscape(sheet, widths.size() - beyond.size(), count);
    Pages.narrowMargins(sheet);
  }

  private static List<Integer> widths(List<Column> columns) {
    return columns.stream().map(Column::width).toList();
  }

  private void write(Rows rows, Finding finding) {
    rows.row();
    int lines = write(rows, finding, columns);
    place.write().accept(rows, finding);
    rows.height(Heights.points(Math.max(lines, write(rows, finding, beyond))));
  }

  /** Writes the texts of some columns; gives the lines of the longest. */
  private int write(Rows rows, Finding finding, List<Column> columns) {
    int lines = 1;
    for (Column column : columns) {
      String text = column.text().apply(finding);
      rows.text(text, styles.get(column.words()));
      if (column.words() == Words.ON_LINES) {
        lines = Math.max(lines, Heights.lines(text, column.width()));
      }
    }
    return lines;
  }

  /** The last row, which counts what is not listed. */
  private void write(Rows rows, String leftOut) {
    rows.row();
    for (Column column : columns) {
      boolean note = column == Column.SEVERITY;
      String word = note ? Severity.NOTE.name().toLowerCase(Locale.ROOT) : "";
      boolean says = column.heading().equals(Column.message(0).heading());
      rows.text(says ? leftOut : word, styles.get(column.words()));
      if (says) {
        rows.height(Heights.points(Heights.lines(leftOut, column.width())));
      }
    }
  }
}
