package org.wetmil.workbook.start.cobie;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.wetmil.measure.DecimalMark;
import org.wetmil.measure.NumberText;
import org.wetmil.measure.Typed;
import org.wetmil.workbook.read.grid.Grid;
import org.wetmil.workbook.read.grid.GridRow;
import org.wetmil.workbook.stream.CellKind;
import org.wetmil.workbook.stream.RawCell;

/**
 * A sheet of a COBie workbook: headings in its first row, one record a row. Columns are known by
 * their headings, wherever they stand; others are passed over.
 */
final class CobieSheet {
  private final Grid grid;
  private final Map<String, Integer> columns = new HashMap<>();
  private int headingRow = -1;

  private CobieSheet(Grid grid) {
    this.grid = grid;
  }

  /** Reads the headings; a sheet that has none has no rows. */
  static CobieSheet of(Grid grid) {
    CobieSheet sheet = new CobieSheet(grid);
    grid.rows().stream().findFirst().ifPresent(sheet::headings);
    return sheet;
  }

  /** A sheet that is not there. */
  static CobieSheet none() {
    return new CobieSheet(null);
  }

  private void headings(GridRow row) {
    headingRow = row.row();
    for (RawCell cell : row.cells()) {
      columns.putIfAbsent(key(grid.text(cell.row(), cell.column())), cell.column());
    }
  }

  boolean has(String heading) {
    return columns.containsKey(key(heading));
  }

  List<Record> records() {
    List<Record> records = new ArrayList<>();
    if (has("Name")) {
      grid.rows(headingRow + 1, grid.lastRow()).forEach(row -> records.add(new Record(row.row())));
    }
    return records;
  }

  static String key(String text) {
    return text.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]", "");
  }

  /** One row. */
  final class Record {
    private final int row;

    private Record(int row) {
      this.row = row;
    }

    /** The number of the row, from 1. */
    String number() {
      return Integer.toString(row + 1);
    }

    /**
     * The text under the first of these headings that says something; n/a and the like say nothing.
     */
    String text(String... headings) {
      return Stream.of(headings).map(this::one).filter(t -> !t.isEmpty()).findFirst().orElse("");
    }

    private String one(String heading) {
      Integer column = columns.get(key(heading));
      if (column == null) {
        return "";
      }
      RawCell cell = grid.at(row, column);
      String text = cell.kind() == CellKind.ERROR ? "" : grid.texts().exact(cell).strip();
      boolean open = NumberText.read(text, DecimalMark.UNKNOWN) instanceof Typed.NotKnown;
      // programs that know no value write the heading itself
      return open || key(text).equals(key(heading)) ? "" : text;
    }
  }
}
