package org.wetmil.workbook.read.table;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Lookup;
import org.wetmil.catalogue.Quoted;
import org.wetmil.estimate.InputColumn;
import org.wetmil.estimate.Remark;
import org.wetmil.workbook.read.grid.Grid;
import org.wetmil.workbook.read.grid.GridRow;
import org.wetmil.workbook.read.heading.Heading;
import org.wetmil.workbook.stream.CellAddress;
import org.wetmil.workbook.stream.CellKind;
import org.wetmil.workbook.stream.RawCell;

/**
 * Titles of sections that name a room or a floor above its lines, in a table whose lines name none.
 * Where one line names its own, or stands above the first title, nothing is taken from titles: then
 * they may be options, phases or notes.
 */
public final class SectionTitles {
  private static final int LONGEST = 50;

  /** What is no name of a room: sentences, notes, and parts of the bid. */
  private static final Pattern NO_ROOM =
      Pattern.compile(
          "(?iu)(?:notes?|hinweise?|anmerkung(?:en)?|notas?|observaci(?:ó|o)n(?:es)?|scope|options?"
              + "|alternates?|allowances?|exclusions?|painting|coatings?|malerarbeiten|pintura"
              + "|interior|exterior|innen|außen|aussen|general|allgemein|continued|phase|fase"
              + "|page|seite|p(?:á|a)gina)\\b.*|.*[.!?;]|.*:\\s*\\S.*|.*\\b(?:https?|www)\\b.*");

  private static final Pattern FLOOR =
      Pattern.compile(
          "(?iu)(?:(?:ground|first|second|third|fourth|fifth|sixth|top|upper|lower|\\d{1,2}(?:st"
              + "|nd|rd|th)) (?:floor|storey|story|level)|(?:floor|level|lvl|storey|story|ebene"
              + "|etage|stockwerk|nivel|piso|planta)\\s*[\\d-]{1,3}|basement|erdgeschoss|eg"
              + "|untergeschoss|kellergeschoss|ug|dachgeschoss|dg|\\d{1,2}\\.? ?(?:og|ug"
              + "|obergeschoss|untergeschoss|stock)|planta (?:baja|alta|primera|segunda|tercera)"
              + "|(?:primera|segunda|tercera) planta|(?:primer|segundo|tercer) piso|s(?:ó|o)tano)");

  private final Grid grid;
  private final BidTable table;
  private final Catalogue catalogue;
  private final Map<Integer, RowKind> kinds;
  private final Map<Integer, Map<InputColumn, RawCell>> byLine = new HashMap<>();
  private final Map<InputColumn, Set<RawCell>> used = new EnumMap<>(InputColumn.class);

  /**
   * @param kinds the rows of the table from the top
   */
  public SectionTitles(
      Grid grid, BidTable table, Catalogue catalogue, Map<Integer, RowKind> kinds) {
    this.grid = grid;
    this.table = table;
    this.catalogue = catalogue;
    this.kinds = kinds;
    for (InputColumn column : List.of(InputColumn.FLOOR, InputColumn.ROOM)) {
      if (isAskedFor(column)) {
        read(column);
      }
    }
  }

  /** By row, the titles that name room and floor of a line. */
  public Map<Integer, Map<InputColumn, RawCell>> byLine() {
    return byLine;
  }

  /** What is said of it. */
  public List<Remark> remarks() {
    List<Remark> remarks = new ArrayList<>();
    used.forEach(
        (column, titles) -> {
          RawCell first = titles.iterator().next();
          remarks.add(
              new Remark(
                  "section-titles",
                  grid.sheet(),
                  new CellAddress(first.row(), first.column()).toString(),
                  first.text(),
                  ("No line names its %s, so it is read from the title above: %s%s. If that is"
                          + " something else, fill in a column %s.")
                      .formatted(
                          column.heading().toLowerCase(Locale.ROOT),
                          Quoted.of(name(first.text())),
                          titles.size() == 1 ? "" : " and " + (titles.size() - 1) + " more",
                          column.heading())));
        });
    return remarks;
  }

  /** The name in a title: {@code Lobby:} is Lobby. */
  static String name(String title) {
    String bare = title.strip();
    String name = bare.endsWith(":") ? bare.substring(0, bare.length() - 1).strip() : bare;
    return name.replaceAll("\\s+", " ");
  }

  private boolean isAskedFor(InputColumn column) {
    Heading heading = table.columns().get(column);
    boolean second = column == InputColumn.ROOM && table.chosen().secondRoom().isPresent();
    return !second
        && (heading == null
            || kinds.entrySet().stream()
                .filter(each -> each.getValue() == RowKind.LINE)
                .allMatch(each -> text(grid.seenAt(each.getKey(), heading.column())).isEmpty()));
  }

  private void read(InputColumn column) {
    RawCell title = aboveHeadings(column).orElse(null);
    Map<Integer, RawCell> found = new HashMap<>();
    for (GridRow row : grid.rows(table.firstRow(), table.lastRow())) {
      if (kinds.get(row.row()) == RowKind.LINE) {
        if (title == null) {
          return;
        }
        found.put(row.row(), title);
      } else if (!kinds.containsKey(row.row()) || kinds.get(row.row()) == RowKind.TITLE) {
        Optional<RawCell> alone = alone(row.row());
        if (alone.filter(cell -> names(column, cell)).isPresent()) {
          title = alone.get();
        } else if (column == InputColumn.ROOM && alone.filter(this::isFloor).isPresent()) {
          title = null;
        }
      }
    }
    found.forEach(
        (row, cell) ->
            byLine.computeIfAbsent(row, r -> new EnumMap<>(InputColumn.class)).put(column, cell));
    if (!found.isEmpty()) {
      used.put(column, new LinkedHashSet<>());
      found.keySet().stream().sorted().forEach(row -> used.get(column).add(found.get(row)));
    }
  }

  /** Where headings come again below each title, the first title stands above the first ones. */
  private Optional<RawCell> aboveHeadings(InputColumn column) {
    List<Integer> again = table.again().stream().map(block -> block.firstRow() - 1).toList();
    boolean each =
        !again.isEmpty() && again.stream().allMatch(row -> title(column, row).isPresent());
    return each ? title(column, table.block().firstRow() - 1) : Optional.empty();
  }

  private Optional<RawCell> title(InputColumn column, int row) {
    return alone(row).filter(cell -> names(column, cell));
  }

  /** The only cell of a row as far as the table goes; left of it, of the whole row. */
  private Optional<RawCell> alone(int row) {
    List<RawCell> cells = new ArrayList<>();
    grid.rows(row, row).forEach(each -> cells.addAll(each.cells()));
    cells.removeIf(cell -> text(cell).isEmpty());
    List<RawCell> within =
        cells.stream()
            .filter(cell -> cell.column() >= table.firstColumn())
            .filter(cell -> cell.column() <= table.lastColumn())
            .toList();
    List<RawCell> seen = within.isEmpty() ? cells : within;
    return seen.size() == 1 && seen.get(0).column() <= table.lastColumn()
        ? Optional.of(seen.get(0))
        : Optional.empty();
  }

  private boolean names(InputColumn column, RawCell cell) {
    String name = name(cell.text());
    return column == InputColumn.FLOOR
        ? isFloor(cell)
        : cell.kind() == CellKind.TEXT
            && cell.formula() == null
            && name.length() <= LONGEST
            && !isFloor(cell)
            && !NO_ROOM.matcher(name).matches()
            && !(catalogue.surface(name) instanceof Lookup.Found)
            && !(catalogue.coating(name) instanceof Lookup.Found);
  }

  private boolean isFloor(RawCell cell) {
    return cell.kind() == CellKind.TEXT && FLOOR.matcher(name(cell.text())).matches();
  }

  private String text(RawCell cell) {
    return grid.texts().shown(cell).strip();
  }
}
