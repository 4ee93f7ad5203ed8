package org.wetmil.workbook.read.earlier;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.wetmil.catalogue.Origin;
import org.wetmil.catalogue.StatedRow.StatedCell;
import org.wetmil.catalogue.Tables;
import org.wetmil.estimate.EntryPlace;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.measure.DecimalMark;
import org.wetmil.measure.NumberText;
import org.wetmil.measure.Typed;
import org.wetmil.quantity.Unit;
import org.wetmil.workbook.read.grid.CellText;
import org.wetmil.workbook.read.grid.Grid;
import org.wetmil.workbook.read.grid.GridRow;
import org.wetmil.workbook.stream.CellAddress;
import org.wetmil.workbook.stream.CellKind;
import org.wetmil.workbook.stream.RawCell;

/**
 * The Basis sheet of an earlier fill: the list of fills, and the values that somebody typed over.
 *
 * <p>A value was typed over when it differs from the one under As filled beside it; one that is
 * said to be the estimator's already stays so until its cell is emptied. Where the value follows a
 * cell of the estimator's by a formula, that cell speaks.
 */
public final class EarlierBasis {
  private static final double SAME = 1e-12;

  private final Grid grid;
  private final Map<String, Integer> columns = new HashMap<>();
  private int headingRow = -1;

  /**
   * A value of the estimator's on Basis.
   *
   * @param sheetRow where it stands, from 1
   * @param asFilled what stood there before; the same where it was typed before an earlier fill
   */
  public record Yours(
      Tables table,
      String row,
      String figure,
      String sheet,
      int sheetRow,
      StatedCell value,
      String asFilled) {}

  public EarlierBasis(Grid grid) {
    this.grid = grid;
    for (GridRow row : grid.rows()) {
      if (headingRow < 0 && hasHeadings(row.row(), BasisWords.FIGURES.subList(0, 4))) {
        headingRow = row.row();
        row.cells().forEach(cell -> columns.put(text(cell.row(), cell.column()), cell.column()));
      }
    }
  }

  private boolean hasHeadings(int row, List<String> headings) {
    for (int i = 0; i < headings.size(); i++) {
      if (!text(row, i).equals(headings.get(i))) {
        return false;
      }
    }
    return true;
  }

  /** The fills, oldest first. */
  public List<EarlierFill> fills() {
    List<EarlierFill> fills = new ArrayList<>();
    for (GridRow row : grid.rows()) {
      if (hasHeadings(row.row(), BasisWords.FILLS)) {
        for (int at = row.row() + 1; !text(at, 0).isEmpty(); at++) {
          fills.add(new EarlierFill(text(at, 0), text(at, 1), text(at, 2), text(at, 3)));
        }
        break;
      }
    }
    return fills;
  }

  /** Whether a hose was stated, so that flows stand as numbers and not as formulas. */
  public boolean hasHose() {
    return figureRows().stream().anyMatch(row -> text(row, BasisWords.FIGURE).startsWith("Hose"));
  }

  /** The values that are the estimator's, from the top. */
  public List<Yours> yours() {
    List<Yours> yours = new ArrayList<>();
    if (columns.keySet().containsAll(BasisWords.FIGURES)) {
      figureRows().forEach(row -> yours(row).ifPresent(yours::add));
    }
    return yours;
  }

  /** The figure that stands in a cell of the list, as formulas know it. */
  Optional<EntryPlace> figure(CellAddress at) {
    return at.row() > headingRow
            && columns.keySet().containsAll(BasisWords.FIGURES)
            && columns.get(BasisWords.VALUE) == at.column()
            && Tables.find(text(at.row(), BasisWords.TABLE)).isPresent()
        ? Optional.of(
            new EntryPlace(
                text(at.row(), BasisWords.TABLE),
                text(at.row(), BasisWords.ROW),
                text(at.row(), BasisWords.FIGURE)))
        : Optional.empty();
  }

  /** The codes of the formulas that the fill wrote; none when an older program filled. */
  Map<FilledColumn, Set<String>> formulaCodes() {
    Map<FilledColumn, Set<String>> codes = new EnumMap<>(FilledColumn.class);
    if (!columns.keySet().containsAll(BasisWords.FIGURES)) {
      return codes;
    }
    for (int row : figureRows()) {
      if (text(row, BasisWords.TABLE).equals(FormulaShapes.TABLE)) {
        String column = text(row, BasisWords.ROW);
        Set<String> shapes = Set.of(text(row, BasisWords.AS_FILLED).split(" "));
        Stream.of(FilledColumn.values())
            .filter(each -> each.heading().equals(column))
            .forEach(each -> codes.put(each, shapes));
      }
    }
    return codes;
  }

  /** Every value that a table has a figure for, whoever's it is, from the top. */
  public List<Yours> all() {
    return columns.keySet().containsAll(BasisWords.FIGURES)
        ? figureRows().stream()
            .filter(row -> !text(row, BasisWords.VALUE).isEmpty())
            .flatMap(row -> value(row).stream())
            .toList()
        : List.of();
  }

  private List<Integer> figureRows() {
    return headingRow < 0
        ? List.of()
        : grid.rows(headingRow + 1, grid.lastRow()).stream().map(GridRow::row).toList();
  }

  private Optional<Yours> yours(int row) {
    RawCell value = grid.at(row, columns.get(BasisWords.VALUE));
    String raw = grid.texts().exact(value).strip();
    return raw.isEmpty() || !isYours(row, value) ? Optional.empty() : value(row);
  }

  private Optional<Yours> value(int row) {
    RawCell value = grid.at(row, columns.get(BasisWords.VALUE));
    String raw = grid.texts().exact(value).strip();
    return Tables.find(text(row, BasisWords.TABLE))
        .map(
            table ->
                new Yours(
                    table,
                    text(row, BasisWords.ROW),
                    text(row, BasisWords.FIGURE),
                    grid.sheet(),
                    row + 1,
                    cell(row, value, raw),
                    text(row, BasisWords.AS_FILLED)));
  }

  private boolean isYours(int row, RawCell value) {
    String from = text(row, BasisWords.WHERE_FROM);
    if (from.equals(Origin.OnBasis.TEXT)) {
      return true;
    }
    boolean followsCell = from.contains("!") && value.formula() != null;
    return !followsCell && !isAsFilled(value, grid.at(row, columns.get(BasisWords.AS_FILLED)));
  }

  private boolean isAsFilled(RawCell value, RawCell filled) {
    if (value.kind() == CellKind.NUMBER && filled.kind() == CellKind.NUMBER) {
      double one = CellText.number(value);
      double other = CellText.number(filled);
      return Math.abs(one - other) <= SAME * Math.abs(other);
    }
    return grid.texts().exact(value).strip().equals(grid.texts().exact(filled).strip());
  }

  /** A unit in the cell wins over the one beside it. */
  private StatedCell cell(int row, RawCell value, String raw) {
    Unit unit = Unit.find(text(row, BasisWords.UNIT)).orElse(null);
    double number = CellText.number(value);
    if (value.kind() == CellKind.TEXT
        && NumberText.read(raw, DecimalMark.UNKNOWN) instanceof Typed.Value typed) {
      number = typed.value();
      unit = typed.unit().orElse(unit);
    }
    boolean isNumber = value.kind() == CellKind.NUMBER;
    boolean percent = grid.texts().isPercent(value);
    String address = new CellAddress(row, columns.get(BasisWords.VALUE)).toString();
    return new StatedCell(address, raw, number, unit, isNumber, percent);
  }

  private String text(int row, String heading) {
    return text(row, columns.get(heading));
  }

  private String text(int row, int column) {
    return grid.texts().exact(grid.at(row, column)).strip();
  }
}
