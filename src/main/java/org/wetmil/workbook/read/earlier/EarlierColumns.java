package org.wetmil.workbook.read.earlier;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.wetmil.catalogue.Quoted;
import org.wetmil.estimate.BidLine;
import org.wetmil.estimate.BidSheet;
import org.wetmil.estimate.EarlierCells;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.estimate.InputColumn;
import org.wetmil.estimate.Remark;
import org.wetmil.formula.Written;
import org.wetmil.quantity.Unit;
import org.wetmil.quantity.UnitSystem;
import org.wetmil.workbook.read.grid.CellText;
import org.wetmil.workbook.read.grid.OwnMarks;
import org.wetmil.workbook.stream.CellAddress;
import org.wetmil.workbook.stream.CellKind;
import org.wetmil.workbook.stream.RawCell;

/**
 * The cells of the filled columns of a bid sheet that hold no formula of ours, given back to their
 * lines.
 */
public final class EarlierColumns {
  /** A line that a fill writes: it begins with the name of a column, or counts the rest. */
  private static final Pattern FINDING =
      Pattern.compile(
          "Note: |(?:Note on )?(?:Line|"
              + Stream.of(InputColumn.values())
                  .map(column -> Pattern.quote(column.heading()))
                  .collect(Collectors.joining("|"))
              + "): |\\.\\.\\. and \\d+ more");

  private final BidSheet sheet;
  private final boolean kept;
  private final OurFormulas formulas;
  private final List<MarkedColumn> columns = new ArrayList<>();
  private final Map<MarkedColumn, Unit> units = new HashMap<>();
  private final Map<Integer, List<RawCell>> byRow = new HashMap<>();

  /**
   * @param cells those of the earlier fill that hold no formula of ours
   * @param formulas tells how those of others are written again
   * @param passedOver columns of which nobody can tell what was typed
   * @param kept whether what was typed over a formula stays
   */
  public EarlierColumns(
      BidSheet sheet,
      List<OwnMarks.Filled> marks,
      List<RawCell> cells,
      OurFormulas formulas,
      Set<FilledColumn> passedOver,
      boolean kept) {
    this.sheet = sheet;
    this.formulas = formulas;
    this.kept = kept;
    cells.forEach(cell -> byRow.computeIfAbsent(cell.row(), r -> new ArrayList<>()).add(cell));
    MarkedColumn.of(marks, sheet.name()).stream()
        .filter(column -> !passedOver.contains(column.column()))
        .forEach(columns::add);
    columns.forEach(column -> units.put(column, unit(column)));
  }

  /** The sheet with its lines' cells of the earlier fill. */
  public BidSheet attached() {
    if (columns.isEmpty()) {
      return sheet;
    }
    Map<Integer, Integer> linesInRow = new HashMap<>();
    sheet.lines().forEach(line -> linesInRow.merge(line.row(), 1, Integer::sum));
    Map<Integer, Integer> seen = new HashMap<>();
    List<BidLine> lines =
        sheet.lines().stream()
            .map(
                line -> {
                  int nth = seen.merge(line.row(), 1, Integer::sum) - 1;
                  return line.with(cells(line.row() - 1, nth, linesInRow.get(line.row())));
                })
            .toList();
    return new BidSheet(
        sheet.name(), sheet.system(), sheet.unitsStated(), sheet.columnUnits(), lines);
  }

  /** What was written into the column Findings, line by line beside what a fill writes there. */
  public List<Remark> written() {
    List<Remark> remarks = new ArrayList<>();
    byRow.values().stream()
        .flatMap(List::stream)
        .filter(cell -> cell.kind() == CellKind.TEXT)
        .filter(cell -> MarkedColumn.above(columns, cell).filter(this::isFindings).isPresent())
        .sorted(Comparator.comparingInt(RawCell::row).thenComparingInt(RawCell::column))
        .forEach(cell -> remark(cell).ifPresent(remarks::add));
    return remarks;
  }

  private boolean isFindings(MarkedColumn column) {
    return column.column() == FilledColumn.FINDINGS;
  }

  private Optional<Remark> remark(RawCell cell) {
    String own =
        cell.text()
            .lines()
            .filter(line -> !line.isBlank() && !FINDING.matcher(line).lookingAt())
            .collect(Collectors.joining(" "))
            .strip();
    String address = new CellAddress(cell.row(), cell.column()).toString();
    return own.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Remark(
                "typed-on-our-sheet",
                sheet.name(),
                address,
                own,
                "%s was written in %s of the column Findings, which is made anew."
                    .formatted(Quoted.of(own), address)));
  }

  /** Tables side by side share rows: their lines take the blocks of columns in order. */
  private EarlierCells cells(int row, int nth, int lines) {
    Map<Integer, Map<MarkedColumn, RawCell>> slots = new TreeMap<>();
    for (RawCell cell : byRow.getOrDefault(row, List.of())) {
      MarkedColumn.above(columns, cell)
          .ifPresent(
              column ->
                  slots.computeIfAbsent(column.slot(), s -> new HashMap<>()).put(column, cell));
    }
    return slots.size() == lines ? cells(List.copyOf(slots.values()).get(nth)) : EarlierCells.NONE;
  }

  private EarlierCells cells(Map<MarkedColumn, RawCell> found) {
    Map<FilledColumn, Double> numbers = new EnumMap<>(FilledColumn.class);
    Map<FilledColumn, String> words = new EnumMap<>(FilledColumn.class);
    Map<FilledColumn, Written> written = new EnumMap<>(FilledColumn.class);
    found.forEach(
        (column, cell) -> {
          double number = CellText.number(cell);
          if (Double.isFinite(number)) {
            Unit base = column.column().quantity().base();
            numbers.put(column.column(), units.get(column).to(base, number));
            if (cell.formula() != null) {
              written.put(column.column(), written(column, cell));
            }
          } else if (cell.formula() != null) {
            words.put(column.column(), "=" + cell.formula());
          } else if (cell.kind() == CellKind.TEXT && !cell.text().isBlank()) {
            words.put(column.column(), cell.text().strip());
          }
        });
    return new EarlierCells(numbers, words, written, kept && isMarked(found));
  }

  /** In other units than before, a formula would come to another size. */
  private Written written(MarkedColumn column, RawCell cell) {
    boolean same = units.get(column) == column.column().quantity().unit(sheet.system());
    return same ? formulas.written(cell, column) : new Written(cell.formula(), List.of());
  }

  /** Below what the earlier fill wrote there was no formula of ours to type over. */
  private static boolean isMarked(Map<MarkedColumn, RawCell> found) {
    return found.entrySet().stream()
        .allMatch(each -> each.getValue().row() <= each.getKey().range().lastRow());
  }

  /** The unit that the heading of the earlier fill states. */
  private Unit unit(MarkedColumn marked) {
    FilledColumn column = marked.column();
    String heading =
        byRow.getOrDefault(marked.range().firstRow(), List.of()).stream()
            .filter(cell -> cell.column() == marked.range().firstColumn())
            .map(RawCell::text)
            .findFirst()
            .orElse("");
    UnitSystem system =
        Stream.of(UnitSystem.values())
            .filter(each -> heading.startsWith(column.heading(each)))
            .findFirst()
            .orElse(sheet.system());
    return column.quantity().unit(system);
  }
}
