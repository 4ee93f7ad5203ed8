package org.wetmil.workbook.read.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wetmil.estimate.InputColumn;
import org.wetmil.estimate.Remark;
import org.wetmil.measure.DecimalMark;
import org.wetmil.measure.LengthText;
import org.wetmil.measure.NumberText;
import org.wetmil.measure.Typed;
import org.wetmil.quantity.Dimension;
import org.wetmil.quantity.Quantity;
import org.wetmil.quantity.Unit;
import org.wetmil.quantity.UnitSystem;
import org.wetmil.workbook.read.grid.Grid;
import org.wetmil.workbook.read.grid.GridRow;
import org.wetmil.workbook.read.heading.Heading;
import org.wetmil.workbook.read.words.UnitWords;
import org.wetmil.workbook.stream.CellAddress;
import org.wetmil.workbook.stream.CellKind;
import org.wetmil.workbook.stream.RawCell;

/**
 * The units of a sheet: as its headings say, else a title line, a column of units or the cells
 * themselves, else the settings.
 *
 * @param stated whether anything says so
 * @param length the unit of lengths without one, when a title line says it
 */
public record SheetUnits(UnitSystem system, boolean stated, Optional<Unit> length) {
  /** Cells looked at; a sheet that types its units types them from the start. */
  private static final int ROWS = 400;

  public static SheetUnits of(
      Grid grid, List<BidTable> tables, Optional<UnitSystem> settings, List<Remark> remarks) {
    List<Unit> inHeadings = new ArrayList<>();
    for (BidTable table : tables) {
      table.columns().forEach((column, heading) -> heading.unit().ifPresent(inHeadings::add));
    }
    Optional<UnitSystem> said = mostly(inHeadings);
    Optional<Unit> announced = announced(grid, tables, said.isEmpty(), remarks);
    Optional<UnitSystem> found =
        said.or(() -> announced.map(unit -> mostly(List.of(unit)).orElseThrow()))
            .or(() -> mostly(rowUnits(grid, tables)))
            .or(() -> cells(grid, tables, remarks));
    UnitSystem system = found.or(() -> settings).orElse(UnitSystem.US);
    return new SheetUnits(
        system,
        found.isPresent() || settings.isPresent(),
        announced.filter(unit -> unit.dimension() == Dimension.LENGTH));
  }

  /** The unit of a column whose heading states none. */
  public Unit unit(InputColumn column, BidTable table) {
    Heading heading = table.columns().get(column);
    if (heading != null && heading.unit().isPresent()) {
      return heading.unit().get();
    }
    Optional<Unit> beside =
        switch (column) {
          case LENGTH, HEIGHT -> stated(table, InputColumn.WIDTH, InputColumn.LENGTH);
          case WIDTH -> stated(table, InputColumn.LENGTH);
          default -> Optional.empty();
        };
    boolean isLength = column.quantity() == Quantity.LENGTH;
    return beside
        .or(() -> isLength ? length : Optional.empty())
        .orElse(column.quantity().unit(system));
  }

  private static Optional<Unit> stated(BidTable table, InputColumn... columns) {
    Optional<Unit> unit = Optional.empty();
    for (InputColumn column : columns) {
      Heading heading = table.columns().get(column);
      if (heading != null && heading.unit().isPresent()) {
        unit = heading.unit();
      }
    }
    return unit;
  }

  /** The family of most of the units of length and area; of as many, that of the first. */
  private static Optional<UnitSystem> mostly(List<Unit> units) {
    List<Unit> sizes = units.stream().filter(SheetUnits::isSize).toList();
    if (sizes.isEmpty()) {
      return Optional.empty();
    }
    long metric = sizes.stream().filter(UnitWords::isMetric).count();
    long us = sizes.size() - metric;
    boolean isMetric = metric == us ? UnitWords.isMetric(sizes.get(0)) : metric > us;
    return Optional.of(isMetric ? UnitSystem.METRIC : UnitSystem.US);
  }

  private static boolean isSize(Unit unit) {
    return switch (unit) {
      case MIL, THOU, MICROMETRE -> false;
      default -> unit.dimension() == Dimension.LENGTH || unit.dimension() == Dimension.AREA;
    };
  }

  private static Optional<Unit> announced(
      Grid grid, List<BidTable> tables, boolean needed, List<Remark> remarks) {
    int end = tables.stream().mapToInt(each -> each.block().firstRow()).min().orElse(0);
    for (GridRow row : grid.rows(0, end - 1)) {
      for (RawCell cell : row.cells()) {
        Optional<Unit> unit =
            cell.kind() == CellKind.TEXT ? UnitWords.announced(cell.text()) : Optional.empty();
        if (unit.isPresent()) {
          if (needed) {
            remarks.add(
                new Remark(
                    "unit-from-text",
                    grid.sheet(),
                    new CellAddress(cell.row(), cell.column()).toString(),
                    cell.text(),
                    "Sizes without a unit are read in %s, as this line says."
                        .formatted(unit.get().symbol())));
          }
          return unit;
        }
      }
    }
    return Optional.empty();
  }

  private static List<Unit> rowUnits(Grid grid, List<BidTable> tables) {
    List<Unit> units = new ArrayList<>();
    for (BidTable table : tables) {
      table
          .chosen()
          .units()
          .ifPresent(
              heading -> {
                for (GridRow row : rows(grid, table)) {
                  UnitWords.find(grid.text(row.row(), heading.column())).ifPresent(units::add);
                }
              });
    }
    return units;
  }

  /** The family that most cells are typed in; numbers without a unit beside both are told of. */
  private static Optional<UnitSystem> cells(
      Grid grid, List<BidTable> tables, List<Remark> remarks) {
    List<Unit> typed = typed(grid, tables);
    Optional<UnitSystem> found = mostly(typed);
    long metric = typed.stream().filter(UnitWords::isMetric).count();
    if (metric > 0 && metric < typed.size()) {
      BareSizes.first(grid, tables)
          .ifPresent(
              cell ->
                  remarks.add(
                      new Remark(
                          "units-mixed",
                          grid.sheet(),
                          new CellAddress(cell.row(), cell.column()).toString(),
                          grid.texts().shown(cell),
                          ("Some sizes are typed in feet or inches, some in metres or millimetres;"
                                  + " those without a unit are taken as %s, as most are.")
                              .formatted(
                                  found.orElseThrow() == UnitSystem.US ? "feet" : "metres"))));
    }
    return found;
  }

  private static List<Unit> typed(Grid grid, List<BidTable> tables) {
    List<Unit> units = new ArrayList<>();
    for (BidTable table : tables) {
      table
          .columns()
          .forEach(
              (column, heading) -> {
                boolean area = column.quantity() == Quantity.AREA;
                if (area || column.quantity() == Quantity.LENGTH) {
                  for (GridRow row : rows(grid, table)) {
                    unitIn(grid, grid.at(row.row(), heading.column()), area).ifPresent(units::add);
                  }
                }
              });
    }
    return units;
  }

  static Optional<Unit> unitIn(Grid grid, RawCell cell, boolean area) {
    if (cell.kind() == CellKind.NUMBER) {
      return UnitWords.inFormat(grid.texts().format(cell));
    }
    if (cell.kind() != CellKind.TEXT) {
      return Optional.empty();
    }
    Typed typed =
        area
            ? NumberText.read(cell.text(), DecimalMark.UNKNOWN)
            : LengthText.read(cell.text(), DecimalMark.UNKNOWN);
    return typed instanceof Typed.Value value ? value.unit() : Optional.empty();
  }

  static List<GridRow> rows(Grid grid, BidTable table) {
    int last = Math.min(table.lastRow(), table.firstRow() + ROWS);
    return List.copyOf(grid.rows(table.firstRow(), last));
  }
}
