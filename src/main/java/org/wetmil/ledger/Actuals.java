package org.wetmil.ledger;

import java.io.IOException;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.wetmil.quantity.Unit;

/**
 * How past jobs came out, read from comma-, semicolon- or tab-separated text. Decimal marks and the
 * order of day and month are found from whole columns.
 *
 * @param lines in the order of the file
 * @param problems cells and lines that could not be used
 * @param doubtfulDate a date whose day and month nothing tells apart; empty for none
 */
public record Actuals(
    List<ActualsLine> lines, List<Problem> problems, Optional<DoubtfulDate> doubtfulDate) {
  public Actuals {
    lines = List.copyOf(lines);
    problems = List.copyOf(problems);
  }

  /**
   * What could not be read.
   *
   * @param line of the file, from 1
   * @param raw the text as it stands there
   * @param expected what would have been read
   */
  public record Problem(long line, String heading, String raw, String expected) {}

  /**
   * A date that is read by an order of day and month which its column does not tell for sure.
   *
   * @param line of the file, from 1; that of the first such date
   * @param raw the text as it stands there
   * @param date as read
   * @param mixed whether other dates of the column are in both orders; else none shows any
   */
  public record DoubtfulDate(long line, String raw, LocalDate date, boolean mixed) {}

  /** No file at all. */
  public static Actuals none() {
    return new Actuals(List.of(), List.of(), Optional.empty());
  }

  /**
   * Reads the list.
   *
   * @param file the name to show
   * @throws UnusableLedgerException when its first line lacks a job, or a figure to compare
   */
  public static Actuals read(String file, LedgerSource source)
      throws IOException, UnusableLedgerException {
    return TextTable.read(
        file,
        source,
        Actuals::under,
        ": its first line is to hold the headings Job and Gallons or Hours, and Coating, Date, Crew"
            + " and Estimator where known; it holds: ");
  }

  /** The rows under headings in the first of them; empty when it has not the headings needed. */
  private static Optional<Actuals> under(List<CsvText.Row> rows) {
    List<String> headings = rows.get(0).fields();
    Map<ActualsColumn, Integer> columns = columns(headings);
    boolean figure = columns.keySet().stream().anyMatch(ActualsColumn::isNumber);
    return columns.containsKey(ActualsColumn.JOB) && figure
        ? Optional.of(new Table(headings, columns, rows.subList(1, rows.size())).read())
        : Optional.empty();
  }

  private static Map<ActualsColumn, Integer> columns(List<String> headings) {
    Map<ActualsColumn, Integer> columns = new EnumMap<>(ActualsColumn.class);
    for (int i = 0; i < headings.size(); i++) {
      int at = i;
      ActualsColumn.find(headings.get(i)).ifPresent(column -> columns.putIfAbsent(column, at));
    }
    return columns;
  }

  /** The rows under the headings. */
  private static final class Table {
    private final Map<ActualsColumn, Integer> columns;
    private final List<CsvText.Row> rows;
    private final Unit paintUnit;
    private final Map<ActualsColumn, LedgerLayout.Mark> marks = new EnumMap<>(ActualsColumn.class);
    private final DateColumn dates = new DateColumn();
    private final List<Problem> problems = new ArrayList<>();

    Table(List<String> headings, Map<ActualsColumn, Integer> columns, List<CsvText.Row> rows) {
      this.columns = columns;
      this.rows = rows;
      this.paintUnit =
          columns.containsKey(ActualsColumn.PAINT)
              ? unit(headings.get(columns.get(ActualsColumn.PAINT)))
              : Unit.GALLON;
    }

    private static Unit unit(String heading) {
      for (String word : heading.split("[\\s()\\[\\]]+")) {
        Optional<Unit> unit = word.isEmpty() ? Optional.empty() : LedgerWords.unit(word);
        if (unit.isPresent()) {
          return unit.get();
        }
      }
      return Unit.GALLON;
    }

    Actuals read() {
      for (ActualsColumn column : ActualsColumn.values()) {
        NumberColumn seen = new NumberColumn();
        for (CsvText.Row row : rows) {
          if (column.isNumber()) {
            seen.see(cell(row, column));
          } else if (column == ActualsColumn.DATE) {
            dates.see(cell(row, column));
          }
        }
        marks.put(column, seen.shown().orElse(LedgerLayout.Mark.POINT));
      }
      List<ActualsLine> lines = new ArrayList<>();
      for (CsvText.Row row : rows) {
        if (row.fields().stream().allMatch(String::isBlank)) {
          continue;
        }
        if (cell(row, ActualsColumn.JOB).isEmpty()) {
          problem(row, ActualsColumn.JOB, "the name of the job");
          continue;
        }
        lines.add(line(row));
      }
      return new Actuals(lines, problems, doubtful());
    }

    /** The first date that could be another, where the column does not tell. */
    private Optional<DoubtfulDate> doubtful() {
      if (!dates.isAmbiguous() || (dates.shown().isPresent() && !dates.isMixed())) {
        return Optional.empty();
      }
      for (CsvText.Row row : rows) {
        DateColumn alone = new DateColumn();
        String text = cell(row, ActualsColumn.DATE);
        alone.see(text);
        if (alone.isAmbiguous()) {
          return DateColumn.read(text, order())
              .map(date -> new DoubtfulDate(row.line(), text, date, dates.isMixed()));
        }
      }
      return Optional.empty();
    }

    private DateOrder order() {
      return dates.shown().orElse(DateOrder.MONTH_FIRST);
    }

    private ActualsLine line(CsvText.Row row) {
      double paint = number(row, ActualsColumn.PAINT);
      return new ActualsLine(
          row.line(),
          cell(row, ActualsColumn.JOB),
          cell(row, ActualsColumn.COATING),
          paintUnit.to(Unit.GALLON, paint),
          number(row, ActualsColumn.HOURS),
          date(row),
          cell(row, ActualsColumn.CREW),
          cell(row, ActualsColumn.ESTIMATOR));
    }

    private double number(CsvText.Row row, ActualsColumn column) {
      String text = cell(row, column);
      if (text.isEmpty()) {
        return Double.NaN;
      }
      Optional<NumberColumn.Value> value = NumberColumn.read(text, marks.get(column));
      if (value.map(NumberColumn.Value::number).filter(n -> n.signum() >= 0).isEmpty()
          || !value.get().word().isEmpty()) {
        problem(row, column, "a number of at least 0, without a unit beside it");
        return Double.NaN;
      }
      return value.map(NumberColumn.Value::number).map(BigDecimal::doubleValue).orElseThrow();
    }

    private LocalDate date(CsvText.Row row) {
      String text = cell(row, ActualsColumn.DATE);
      if (text.isEmpty()) {
        return null;
      }
      Optional<LocalDate> date = DateColumn.read(text, order());
      if (date.isEmpty()) {
        problem(row, ActualsColumn.DATE, "a date, as in 2026-03-04");
      }
      return date.orElse(null);
    }

    private void problem(CsvText.Row row, ActualsColumn column, String expected) {
      problems.add(new Problem(row.line(), column.heading(), cell(row, column), expected));
    }

    private String cell(CsvText.Row row, ActualsColumn column) {
      Integer at = columns.get(column);
      return at == null || at >= row.fields().size() ? "" : row.fields().get(at).strip();
    }
  }
}
