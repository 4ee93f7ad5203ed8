package org.wetmil.workbook.read.heading;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Quoted;
import org.wetmil.estimate.InputColumn;
import org.wetmil.estimate.Remark;
import org.wetmil.quantity.Unit;
import org.wetmil.workbook.read.grid.Grid;
import org.wetmil.workbook.stream.CellAddress;

/** Settles which heading of a table names which input, asking the values where words do not say. */
public final class ColumnChooser {
  private static final Pattern NUMBER_WORD =
      Pattern.compile("(?iu)#|\\b(?:no|nr|num|number|id|code|nummer|número|numero)\\b|raumn");

  private final Grid grid;
  private final HeadingBlock block;
  private final int lastRow;
  private final Catalogue catalogue;
  private final Map<InputColumn, Heading> columns = new EnumMap<>(InputColumn.class);
  private final Map<Integer, ColumnValues> values = new HashMap<>();
  private final List<Remark> remarks = new ArrayList<>();
  private final Map<InputColumn, Heading> inches = new EnumMap<>(InputColumn.class);
  private Heading secondRoom;
  private Heading units;

  public ColumnChooser(Grid grid, HeadingBlock block, int lastRow, Catalogue catalogue) {
    this.grid = grid;
    this.block = block;
    this.lastRow = lastRow;
    this.catalogue = catalogue;
  }

  /** The columns of the table; what is settled first keeps its place. */
  public ChosenColumns choose() {
    findUnits();
    for (Heading heading : block.headings()) {
      if (heading.isCertain() && !heading.equals(units) && !isPlace(heading)) {
        claim(heading, heading.candidates().get(0));
      }
    }
    for (Heading heading : block.headings()) {
      if (isPlace(heading) && columns.putIfAbsent(InputColumn.ROOM, heading) == null) {
        readAs(heading, InputColumn.ROOM);
      }
    }
    for (Heading heading : block.headings()) {
      if (heading.candidates().size() > 1) {
        settle(heading);
      }
    }
    for (InputColumn wanted : List.of(InputColumn.SURFACE, InputColumn.COATING)) {
      if (!columns.containsKey(wanted)) {
        guess(wanted);
      }
    }
    return new ChosenColumns(
        columns,
        Optional.ofNullable(secondRoom),
        numberFirst(),
        inches,
        Optional.ofNullable(units),
        remarks);
  }

  /** In schedules Area is often a part of the building: then words stand under it. */
  private boolean isPlace(Heading heading) {
    return heading.candidates().equals(List.of(InputColumn.AREA))
        && heading.unit().isEmpty()
        && values(heading).areWords();
  }

  private void findUnits() {
    units =
        block.headings().stream()
            .filter(HeadingWords::isUnitColumn)
            .filter(heading -> values(heading).areUnits())
            .findFirst()
            .orElse(null);
  }

  private void claim(Heading heading, InputColumn column) {
    Heading before = columns.putIfAbsent(column, heading);
    if (before == null) {
      return;
    }
    if (column == InputColumn.ROOM && secondRoom == null) {
      secondRoom = heading;
      return;
    }
    if (isInchesOf(before, heading)) {
      inches.put(column, heading);
      return;
    }
    remark(
        "heading-twice",
        heading,
        "Two columns are headed as %s: %s and %s. The first is used; rename one of them."
            .formatted(column.heading(), Quoted.of(before.text()), Quoted.of(heading.text())));
  }

  private static boolean isInchesOf(Heading feet, Heading inches) {
    return feet.unit().equals(Optional.of(Unit.FOOT))
        && inches.unit().equals(Optional.of(Unit.INCH))
        && inches.column() == feet.column() + 1;
  }

  private void settle(Heading heading) {
    List<InputColumn> free =
        heading.candidates().stream().filter(each -> !columns.containsKey(each)).toList();
    List<InputColumn> fitting = free.stream().filter(each -> fits(heading, each, free)).toList();
    if (fitting.size() == 1) {
      columns.put(fitting.get(0), heading);
      readAs(heading, fitting.get(0));
    } else if (!free.isEmpty() && !values(heading).isEmpty()) {
      remark(
          "heading-ambiguous",
          heading,
          "%s can mean %s, and nothing on the sheet decides. It is not used; name the column "
                  .formatted(Quoted.of(heading.text()), names(free))
              + "with one of these words.");
    }
  }

  /** Of words with two meanings, the values decide between names, numbers and other texts. */
  private boolean fits(Heading heading, InputColumn column, List<InputColumn> free) {
    ColumnValues cells = values(heading);
    if (cells.isEmpty()) {
      return false;
    }
    if (column == InputColumn.LENGTH && free.contains(InputColumn.AREA)) {
      return cells.areSizes();
    }
    if (column.quantity().isNumber()) {
      return cells.areNumbers();
    }
    if (ColumnValues.hasNames(column)) {
      return cells.areNamesOf(column);
    }
    return !cells.areNumbers()
        && free.stream().noneMatch(each -> each != column && cells.areNamesOf(each));
  }

  private void guess(InputColumn wanted) {
    block.headings().stream()
        .filter(heading -> !columns.containsValue(heading))
        .filter(heading -> !heading.equals(units) && !heading.equals(secondRoom))
        .filter(heading -> !heading.isCertain() && values(heading).areNamesOf(wanted))
        .findFirst()
        .ifPresent(
            heading -> {
              columns.put(wanted, heading);
              remarks.removeIf(each -> each.address().equals(address(heading)));
              readAs(heading, wanted);
            });
  }

  private void readAs(Heading heading, InputColumn column) {
    remark(
        "heading-read-as",
        heading,
        "%s is read as %s, since what stands under it is that."
            .formatted(Quoted.of(heading.text()), column.heading()));
  }

  private boolean numberFirst() {
    if (secondRoom == null) {
      return true;
    }
    boolean first = NUMBER_WORD.matcher(columns.get(InputColumn.ROOM).text()).find();
    boolean second = NUMBER_WORD.matcher(secondRoom.text()).find();
    return first || !second;
  }

  private ColumnValues values(Heading heading) {
    return values.computeIfAbsent(
        heading.column(),
        column -> new ColumnValues(grid, column, block.lastRow() + 1, lastRow, catalogue));
  }

  private static String names(List<InputColumn> columns) {
    return columns.stream().map(InputColumn::heading).collect(Collectors.joining(" or "));
  }

  private String address(Heading heading) {
    return new CellAddress(block.headingRow(), heading.column()).toString();
  }

  private void remark(String check, Heading heading, String message) {
    remarks.add(new Remark(check, grid.sheet(), address(heading), heading.text(), message));
  }
}
