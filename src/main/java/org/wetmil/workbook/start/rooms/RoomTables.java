package org.wetmil.workbook.start.rooms;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.wetmil.estimate.InputColumn;
import org.wetmil.quantity.UnitSystem;
import org.wetmil.workbook.read.grid.Grid;
import org.wetmil.workbook.read.grid.GridRow;
import org.wetmil.workbook.read.heading.HeadingFinder;
import org.wetmil.workbook.stream.CellKind;
import org.wetmil.workbook.stream.SheetPart;

/** Finds the tables of rooms of a workbook by their headings, one on each sheet that has one. */
public final class RoomTables {
  private final List<SheetPart> sheets;
  private final Function<SheetPart, Grid> grids;
  private final List<String> bids = new ArrayList<>();

  public RoomTables(List<SheetPart> sheets, Function<SheetPart, Grid> grids) {
    this.sheets = sheets;
    this.grids = grids;
  }

  /** The rooms; empty when no sheet has a table of rooms. */
  public Optional<RoomList> read() {
    List<RoomTable> tables = new ArrayList<>();
    List<String> others = new ArrayList<>();
    for (SheetPart sheet : sheets) {
      boolean seen = sheet.visibility() == SheetPart.Visibility.VISIBLE;
      Optional<RoomTable> table = seen ? table(grids.apply(sheet)) : Optional.empty();
      table.ifPresentOrElse(
          tables::add, () -> others.add(sheet.name() + (seen ? "" : " (hidden)")));
    }
    if (tables.isEmpty()) {
      return Optional.empty();
    }
    List<String> remarks = new ArrayList<>();
    Optional<UnitSystem> stated =
        tables.stream().flatMap(table -> table.system().stream()).findFirst();
    UnitSystem system = stated.orElse(UnitSystem.US);
    List<Room> rooms = tables.stream().flatMap(table -> table.rooms(system).stream()).toList();
    if (stated.isEmpty() && !rooms.isEmpty()) {
      remarks.add(
          "no heading states a unit; feet and ft² are taken. Write the unit in the headings, as in"
              + " Area (m²), if they are others.");
    }
    tables.forEach(table -> remarks.addAll(table.remarks()));
    if (!others.isEmpty()) {
      remarks.add("no table of rooms, so not read: sheet " + String.join(", ", others) + ".");
    }
    List<String> names = tables.stream().map(RoomTable::sheet).toList();
    String source = "a table of rooms, sheet " + String.join(", ", names);
    return Optional.of(new RoomList(source, system, rooms, List.of(), remarks));
  }

  /** The row of the first forty that names most facts of a room, one of them its name. */
  private Optional<RoomTable> table(Grid grid) {
    RoomHeadings best = null;
    int bestRow = -1;
    for (GridRow row : grid.rows(0, HeadingFinder.FIRST_ROWS - 1)) {
      RoomHeadings found = RoomHeadings.of(grid, row);
      if (found.areRooms() && (best == null || found.size() > best.size())) {
        best = found;
        bestRow = row.row();
      }
    }
    if (best == null) {
      return Optional.empty();
    }
    if (isBid(grid, bestRow)) {
      bids.add(grid.sheet());
      return Optional.empty();
    }
    return Optional.of(new RoomTable(grid, best.settled()));
  }

  /** Whether the headings name surfaces: then the lines of a bid stand below, not rooms. */
  private static boolean isBid(Grid grid, int row) {
    return grid.rows(row, row).stream()
        .flatMap(each -> each.cells().stream())
        .filter(cell -> cell.kind() == CellKind.TEXT)
        .map(cell -> RoomFact.heading(cell.column(), cell.text()))
        .anyMatch(heading -> heading.candidates().equals(List.of(InputColumn.SURFACE)));
  }

  /** Sheets that are bids already, as seen while reading. */
  public List<String> bids() {
    return List.copyOf(bids);
  }
}
