package org.wetmil.workbook.start.rooms;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.wetmil.workbook.read.grid.Grid;
import org.wetmil.workbook.read.grid.GridRow;
import org.wetmil.workbook.read.table.TotalWords;
import org.wetmil.workbook.stream.CellAddress;

/**
 * Which rows below the headings are rooms. A name alone is a room too, unless it reads as a title.
 * Whatever is passed over is named.
 */
final class RoomRows {
  private static final int LONGEST_NAME = 60;

  /** "Ground floor", "Level 2", "Main house:". */
  private static final Pattern TITLE =
      Pattern.compile(
          "(?iu)^(?:.*:|(?:\\p{L}{1,12}\\s+|\\d{1,3}(?:st|nd|rd|th|\\.)?\\s*)?"
              + "(?:floor|level|storey|story|wing|phase|geschoss|obergeschoss|stockwerk|etage|ebene"
              + "|planta|piso|nivel)(?:\\s+\\S{1,12})?|basement|erdgeschoss|untergeschoss)$");

  private final Grid grid;
  private final RoomHeadings headings;
  private final List<GridRow> rooms = new ArrayList<>();
  private final List<String> titles = new ArrayList<>();
  private final List<String> totals = new ArrayList<>();
  private final List<String> nameless = new ArrayList<>();
  private final Map<Integer, String> unread = new TreeMap<>();

  RoomRows(Grid grid, RoomHeadings headings) {
    this.grid = grid;
    this.headings = headings;
    grid.rows(headings.firstRow(), grid.lastRow()).forEach(this::take);
  }

  private void take(GridRow row) {
    Set<Integer> stated = stated(row);
    String name = name(row.row());
    String place = Integer.toString(row.row() + 1);
    if (stated.isEmpty()) {
      return;
    }
    if (name.isEmpty()) {
      nameless.add(place);
    } else if (TotalWords.isLabel(name)) {
      totals.add(place);
    } else if (headings.named().containsAll(stated) && isTitle(row.row(), name)) {
      titles.add("\"" + name + "\" (row " + place + ")");
    } else {
      rooms.add(row);
      stated.removeAll(headings.read());
      stated.forEach(column -> unread.computeIfAbsent(column, this::heading));
    }
  }

  /** Columns that hold something in a row. */
  private Set<Integer> stated(GridRow row) {
    return row.cells().stream()
        .map(cell -> cell.column())
        .filter(column -> !text(row.row(), column).isEmpty())
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }

  /** Text that stands alone: named as a storey, as long as a sentence, or set off by a gap. */
  private boolean isTitle(int row, String name) {
    boolean apart = row > headings.firstRow() && grid.rows(row - 1, row - 1).isEmpty();
    return apart || name.length() > LONGEST_NAME || TITLE.matcher(name).matches();
  }

  private String heading(int column) {
    String text = headings.text(column);
    return text.isEmpty() ? "column " + CellAddress.letters(column) : text;
  }

  List<GridRow> rooms() {
    return rooms;
  }

  /** Number and name, as they stand on a door; what stands in two columns is said once. */
  String name(int row) {
    return headings.named().stream()
        .map(column -> text(row, column))
        .filter(text -> !text.isEmpty())
        .distinct()
        .collect(Collectors.joining(" "));
  }

  String text(int row, int column) {
    return grid.texts().exact(grid.seenAt(row, column)).strip();
  }

  /** Sentences that name what is not read. */
  List<String> remarks() {
    List<String> remarks = new ArrayList<>();
    String sheet = "sheet " + grid.sheet() + ": ";
    if (!unread.isEmpty()) {
      remarks.add(sheet + "not read: " + String.join(", ", unread.values()) + ".");
    }
    if (!titles.isEmpty()) {
      remarks.add(
          sheet
              + "taken for titles, which give no line: "
              + Several.of(titles)
              + ". Type a size, or a dash, beside one that is a room.");
    }
    if (!totals.isEmpty()) {
      remarks.add(sheet + "taken for totals, which give no line: row " + Several.of(totals) + ".");
    }
    if (!nameless.isEmpty()) {
      remarks.add(
          sheet
              + "not read, as no room is named there: row "
              + Several.of(nameless)
              + ". Type a name in each that is a room.");
    }
    return remarks;
  }
}
