package org.wetmil.workbook.fill.beside;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.apache.poi.ss.util.CellReference;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Coating;
import org.wetmil.estimate.Figure;
import org.wetmil.estimate.FilledBid;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.estimate.FilledLine;
import org.wetmil.estimate.InputValue;
import org.wetmil.estimate.Work;
import org.wetmil.workbook.read.ReadWorkbook;
import org.wetmil.workbook.read.ReadableCopy;
import org.wetmil.workbook.read.SheetLayout;
import org.wetmil.workbook.read.TableLayout;
import org.wetmil.workbook.read.earlier.MarkedColumn;
import org.wetmil.workbook.stream.CellKind;
import org.wetmil.workbook.stream.PackageReader;
import org.wetmil.workbook.stream.RawCell;
import org.wetmil.workbook.stream.SheetPart;

/**
 * A filled bid as it stands: what its filled columns hold, the estimator's changes included, laid
 * over what would be computed from its input columns.
 */
public final class StoredFigures {
  private static final List<FilledColumn> TAKEN =
      List.of(
          FilledColumn.NET_AREA,
          FilledColumn.COATS,
          FilledColumn.DRY_FILM,
          FilledColumn.SPREAD,
          FilledColumn.PAINT,
          FilledColumn.COUNTED);

  /**
   * What was read.
   *
   * @param missing addresses of cells without a usable value, whose computed value stands in
   */
  public record Result(FilledBid bid, List<String> missing) {}

  private final Catalogue catalogue;
  private final Map<String, List<MarkedColumn>> marks;
  private final Map<String, Map<Long, RawCell>> cells = new HashMap<>();
  private final List<String> missing = new ArrayList<>();

  private StoredFigures(Catalogue catalogue, List<MarkedColumn> filled) {
    this.catalogue = catalogue;
    this.marks = filled.stream().collect(Collectors.groupingBy(MarkedColumn::sheet));
  }

  /**
   * Lays what a filled workbook holds over what was computed from its inputs.
   *
   * @param read the workbook as read
   * @param computed the same, filled anew in memory
   */
  public static Result over(ReadableCopy copy, ReadWorkbook read, FilledBid computed) {
    StoredFigures stored = new StoredFigures(computed.bid().catalogue(), read.filledColumns());
    try (PackageReader reader = copy.open()) {
      reader.sheets().stream()
          .filter(sheet -> stored.marks.containsKey(sheet.name()))
          .forEach(sheet -> stored.load(reader, sheet));
    }
    Map<String, SheetLayout> layouts = new HashMap<>();
    read.layouts().forEach(layout -> layouts.put(layout.sheet(), layout));
    List<FilledBid.FilledSheet> sheets =
        computed.sheets().stream()
            .map(sheet -> stored.sheet(sheet, layouts.get(sheet.sheet().name())))
            .toList();
    return new Result(new FilledBid(computed.bid(), sheets), List.copyOf(stored.missing));
  }

  private void load(PackageReader reader, SheetPart sheet) {
    List<MarkedColumn> ours = marks.get(sheet.name());
    Map<Long, RawCell> kept = new HashMap<>();
    reader.rows(
        sheet,
        row -> {
          row.cells().stream()
              .filter(cell -> ours.stream().anyMatch(m -> holds(m, cell)))
              .forEach(cell -> kept.put(key(cell.row(), cell.column()), cell));
          return true;
        });
    cells.put(sheet.name(), kept);
  }

  private static boolean holds(MarkedColumn mark, RawCell cell) {
    return mark.range().contains(cell.row(), cell.column());
  }

  private FilledBid.FilledSheet sheet(FilledBid.FilledSheet computed, SheetLayout layout) {
    if (layout == null || !marks.containsKey(layout.sheet())) {
      return computed;
    }
    List<FilledLine> lines = new ArrayList<>();
    Iterator<FilledLine> each = computed.lines().iterator();
    for (int slot = 0; slot < layout.tables().size(); slot++) {
      TableLayout table = layout.tables().get(slot);
      for (int i = 0; i < table.lineRows().size(); i++) {
        lines.add(line(each.next(), layout.sheet(), slot));
      }
    }
    return new FilledBid.FilledSheet(computed.sheet(), lines);
  }

  private FilledLine line(FilledLine computed, String sheet, int slot) {
    if (!computed.isFilled()) {
      return computed;
    }
    Map<FilledColumn, Figure> figures = new EnumMap<>(computed.figures());
    for (FilledColumn column : TAKEN) {
      Figure figure = figures.get(column);
      if (figure != null && !Double.isNaN(figure.number())) {
        figures.put(column, figure(figure, computed, sheet, slot, column));
      }
    }
    Work work = computed.work();
    Coating coating =
        cell(sheet, slot, computed, FilledColumn.COATING_USED)
            .map(cell -> catalogue.coating(cell.text()).orNull())
            .orElse(work.coating());
    return new FilledLine(
        coating.name().equals(work.coating().name()) ? work : work.with(coating),
        computed.area(),
        computed.stroke(),
        computed.coats(),
        computed.setPsi(),
        computed.recommended(),
        computed.planned(),
        computed.followed(),
        figures);
  }

  private Figure figure(
      Figure computed, FilledLine line, String sheet, int slot, FilledColumn column) {
    Optional<RawCell> cell = cell(sheet, slot, line, column);
    double value = cell.map(StoredFigures::number).orElse(Double.NaN);
    if (!Double.isNaN(value)) {
      if (computed instanceof Figure.Typed typed) {
        return new Figure.Typed(value, typed.formula(), typed.own());
      }
      return computed instanceof Figure.Live live
          ? new Figure.Live(live.formula(), value)
          : new Figure.Choice(value);
    }
    missing.add(
        mark(sheet, slot, line, column)
            .map(
                m ->
                    sheet
                        + "!"
                        + new CellReference(row(line), m.range().firstColumn()).formatAsString())
            .orElse(sheet + " row " + line.line().row()));
    return computed;
  }

  /** NaN for what is no number, or one that no job comes near. */
  private static double number(RawCell cell) {
    double number = cell.kind() == CellKind.NUMBER ? Double.parseDouble(cell.text()) : Double.NaN;
    return Math.abs(number) <= InputValue.MOST ? number : Double.NaN;
  }

  private Optional<RawCell> cell(String sheet, int slot, FilledLine line, FilledColumn column) {
    return mark(sheet, slot, line, column)
        .map(mark -> cells.get(sheet).get(key(row(line), mark.range().firstColumn())));
  }

  /** The only mark of a column in a row, or of several the one of the line's table. */
  private Optional<MarkedColumn> mark(
      String sheet, int slot, FilledLine line, FilledColumn column) {
    List<MarkedColumn> inRow =
        marks.getOrDefault(sheet, List.of()).stream()
            .filter(mark -> mark.column() == column)
            .filter(mark -> mark.range().contains(row(line), mark.range().firstColumn()))
            .toList();
    return inRow.size() < 2
        ? inRow.stream().findFirst()
        : inRow.stream().filter(mark -> mark.slot() == slot + 1).findFirst();
  }

  private static int row(FilledLine line) {
    return line.line().row() - 1;
  }

  private static long key(int row, int column) {
    return (long) row << 20 | column;
  }
}
