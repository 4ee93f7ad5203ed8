package org.wetmil.workbook.read.table;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Lookup;
import org.wetmil.estimate.InputColumn;
import org.wetmil.measure.DecimalMark;
import org.wetmil.measure.NumberText;
import org.wetmil.measure.Typed;
import org.wetmil.workbook.read.grid.Grid;
import org.wetmil.workbook.read.grid.GridRow;
import org.wetmil.workbook.read.heading.Heading;
import org.wetmil.workbook.stream.CellKind;
import org.wetmil.workbook.stream.RawCell;

/** Tells what each row of a table is. */
public final class TableRows {
  private static final Set<InputColumn> MEASURES =
      Set.of(
          InputColumn.LENGTH,
          InputColumn.WIDTH,
          InputColumn.HEIGHT,
          InputColumn.COUNT,
          InputColumn.AREA,
          InputColumn.GIRTH);

  private static final int SAME_WORDS_AS_HEADINGS = 3;

  private final Grid grid;
  private final BidTable table;
  private final Catalogue catalogue;
  private final Map<Integer, String> headingTexts = new HashMap<>();
  private final BitSet headingRows = new BitSet();

  public TableRows(Grid grid, BidTable table, Catalogue catalogue) {
    this.grid = grid;
    this.table = table;
    this.catalogue = catalogue;
    table.again().forEach(each -> headingRows.set(each.firstRow(), each.lastRow() + 1));
    for (Heading heading : table.columns().values()) {
      headingTexts.put(heading.column(), grid.text(table.block().headingRow(), heading.column()));
    }
  }

  /** The rows that hold something, from the top, each with its kind. */
  public Map<Integer, RowKind> sorted() {
    Map<Integer, RowKind> kinds = new LinkedHashMap<>();
    for (GridRow row : grid.rows(table.firstRow(), table.lastRow())) {
      List<RawCell> cells = cells(row);
      if (!cells.isEmpty()) {
        kinds.put(row.row(), kind(row.row(), cells));
      }
    }
    leaveOutBelow(kinds);
    for (GridRow row : grid.rows(table.lastRow() + 1, table.endRow())) {
      if (!isTotal(row.row(), cells(row)) && isSurelyLine(row.row())) {
        kinds.put(row.row(), RowKind.BELOW);
      }
    }
    return kinds;
  }

  private List<RawCell> cells(GridRow row) {
    return row.cells().stream()
        .filter(cell -> cell.column() >= table.firstColumn())
        .filter(cell -> cell.column() <= table.lastColumn())
        .filter(cell -> cell.kind() != CellKind.TEXT || !grid.texts().shown(cell).strip().isEmpty())
        .toList();
  }

  private RowKind kind(int row, List<RawCell> cells) {
    if (headingRows.get(row) || repeatsHeadings(row)) {
      return RowKind.REPEATED_HEADING;
    }
    if (isTotal(row, cells)) {
      return RowKind.TOTAL;
    }
    boolean alone = cells.size() == 1 && cells.get(0).kind() == CellKind.TEXT && !isUnderMerge(row);
    boolean line = !alone && (isNamed(row) || isMeasured(row));
    return line ? RowKind.LINE : RowKind.TITLE;
  }

  private boolean repeatsHeadings(int row) {
    int same = 0;
    for (Heading heading : table.columns().values()) {
      RawCell cell = grid.at(row, heading.column());
      boolean repeats =
          cell.kind() == CellKind.TEXT
              && cell.text().strip().equalsIgnoreCase(headingTexts.get(heading.column()));
      same += repeats ? 1 : 0;
    }
    return same >= SAME_WORDS_AS_HEADINGS;
  }

  private boolean isTotal(int row, List<RawCell> cells) {
    Optional<RawCell> first =
        cells.stream().filter(cell -> cell.kind() == CellKind.TEXT).findFirst();
    if (first.isPresent() && TotalWords.isLabel(first.get().text().strip())) {
      return true;
    }
    boolean labelled =
        cells.stream()
            .filter(cell -> cell.kind() == CellKind.TEXT)
            .anyMatch(cell -> TotalWords.isLabel(cell.text().strip()));
    boolean painted =
        !text(row, InputColumn.SURFACE).isEmpty() && !text(row, InputColumn.COATING).isEmpty();
    return !painted && (labelled || TotalWords.addsUp(row, cells));
  }

  /** Whether the row shares its room with the row above it. */
  private boolean isUnderMerge(int row) {
    Heading room = table.columns().get(InputColumn.ROOM);
    return room != null
        && grid.isCovered(row, room.column())
        && !text(row, InputColumn.ROOM).isEmpty();
  }

  private boolean isNamed(int row) {
    return !text(row, InputColumn.SURFACE).isEmpty() || !text(row, InputColumn.COATING).isEmpty();
  }

  private boolean isMeasured(int row) {
    return MEASURES.stream()
        .map(table.columns()::get)
        .filter(heading -> heading != null)
        .map(heading -> grid.at(row, heading.column()))
        .anyMatch(
            cell ->
                cell.kind() != CellKind.TEXT
                    ? cell.kind() != CellKind.BLANK || cell.formula() != null
                    : NumberText.read(cell.text(), DecimalMark.UNKNOWN) instanceof Typed.Value);
  }

  private String text(int row, InputColumn column) {
    Heading heading = table.columns().get(column);
    if (heading == null) {
      return "";
    }
    RawCell seen = grid.seenAt(row, heading.column());
    return seen.column() == heading.column() ? grid.texts().shown(seen).strip() : "";
  }

  /**
   * Rows at the end, parted from the lines by a blank row, that paint nothing that is known: a
   * signature, a legend, a sum of prices.
   */
  private void leaveOutBelow(Map<Integer, RowKind> kinds) {
    List<Integer> lines = new ArrayList<>();
    kinds.forEach(
        (row, kind) -> {
          if (kind == RowKind.LINE) {
            lines.add(row);
          }
        });
    int end = lines.size();
    while (end > 0 && !isSurelyLine(lines.get(end - 1))) {
      end--;
    }
    if (end == 0) {
      return;
    }
    boolean parted = false;
    for (int i = end; i < lines.size(); i++) {
      parted |= lines.get(i) > lines.get(i - 1) + 1 && !holdsSomething(kinds, lines.get(i) - 1);
      if (parted) {
        kinds.put(lines.get(i), RowKind.BELOW);
      }
    }
  }

  private static boolean holdsSomething(Map<Integer, RowKind> kinds, int row) {
    return kinds.containsKey(row) && kinds.get(row) != RowKind.TOTAL;
  }

  private boolean isSurelyLine(int row) {
    boolean known =
        catalogue.surface(text(row, InputColumn.SURFACE)) instanceof Lookup.Found
            || catalogue.coating(text(row, InputColumn.COATING)) instanceof Lookup.Found;
    return known || (isNamed(row) && isMeasured(row));
  }

  /** How many rows there are of each kind, blank rows between the first and the last included. */
  public static Map<RowKind, Integer> count(Map<Integer, RowKind> kinds) {
    Map<RowKind, Integer> counts = new EnumMap<>(RowKind.class);
    kinds.values().forEach(kind -> counts.merge(kind, 1, Integer::sum));
    if (!kinds.isEmpty()) {
      int first = kinds.keySet().iterator().next();
      int last = kinds.keySet().stream().mapToInt(Integer::intValue).max().orElse(first);
      int blank = last - first + 1 - kinds.size();
      if (blank > 0) {
        counts.put(RowKind.BLANK, blank);
      }
    }
    return counts;
  }
}
