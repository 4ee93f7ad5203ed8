package org.wetmil.workbook.read.cell;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.MeasuredBy;
import org.wetmil.catalogue.Surface;
import org.wetmil.estimate.InputColumn;
import org.wetmil.estimate.InputValue;
import org.wetmil.measure.Typed;
import org.wetmil.quantity.Unit;
import org.wetmil.workbook.read.grid.CellText;
import org.wetmil.workbook.read.words.SizeText;
import org.wetmil.workbook.stream.CellKind;
import org.wetmil.workbook.stream.RawCell;

/** Reads the cells of a bid line. */
public final class CellReader {
  private final NumberCell numbers;
  private final TextCell words;
  private final Catalogue catalogue;

  public CellReader(CellText texts, Catalogue catalogue) {
    this.numbers = new NumberCell(texts);
    this.words = new TextCell(texts);
    this.catalogue = catalogue;
  }

  /**
   * The values of a line.
   *
   * @param row counted from 0
   * @param cells its cells by input; one of another row is shared with it by a merge
   * @param contexts what is known of each column
   * @param rowUnit the unit that the row states in a column of its own
   */
  public Map<InputColumn, InputValue> line(
      int row,
      Map<InputColumn, RawCell> cells,
      Map<InputColumn, CellContext> contexts,
      Optional<Unit> rowUnit) {
    Map<InputColumn, InputValue> values = new EnumMap<>(InputColumn.class);
    cells.forEach(
        (column, cell) -> {
          InputValue value =
              column.quantity().isNumber()
                  ? numbers.read(contexts.get(column).in(rowUnit), cell)
                  : words.read(column, cell);
          boolean own = cell.row() == row || !column.quantity().isNumber();
          values.put(column, own ? value : unlive(value));
        });
    rowUnit.ifPresent(unit -> measured(values, cells, contexts, unit));
    RawCell size = cells.get(InputColumn.LENGTH);
    if (size != null && size.kind() == CellKind.TEXT) {
      SizeText.read(size.text(), contexts.get(InputColumn.LENGTH).mark())
          .ifPresent(parts -> sizes(values, contexts, size.text().strip(), parts));
    }
    return values;
  }

  /** A quantity whose unit is one of area or length is no count: 450 SF. */
  private void measured(
      Map<InputColumn, InputValue> values,
      Map<InputColumn, RawCell> cells,
      Map<InputColumn, CellContext> contexts,
      Unit unit) {
    InputColumn meant =
        switch (unit.dimension()) {
          case AREA -> InputColumn.AREA;
          case LENGTH -> InputColumn.LENGTH;
          default -> InputColumn.COUNT;
        };
    InputValue count = values.get(InputColumn.COUNT);
    if (meant == InputColumn.COUNT || count == null || !count.hasNumber()) {
      return;
    }
    InputValue there = values.get(meant);
    if (there == null || there.isBlank()) {
      CellContext context =
          new CellContext(meant, unit, true, contexts.get(InputColumn.COUNT).mark());
      values.put(meant, unlive(numbers.read(context, cells.get(InputColumn.COUNT))));
      values.put(InputColumn.COUNT, InputValue.NOTHING);
    }
  }

  /** Several lengths in one cell, in the order in which the trade gives them for the surface. */
  private void sizes(
      Map<InputColumn, InputValue> values,
      Map<InputColumn, CellContext> contexts,
      String raw,
      List<Typed.Value> parts) {
    List<InputColumn> order = order(values, parts.size());
    boolean free =
        order.stream()
            .filter(column -> column != InputColumn.LENGTH)
            .map(values::get)
            .allMatch(value -> value == null || value.isBlank());
    if (!free) {
      return;
    }
    CellContext length = contexts.get(InputColumn.LENGTH);
    if (order.get(0) != InputColumn.LENGTH) {
      values.put(InputColumn.LENGTH, InputValue.NOTHING);
    }
    for (int i = 0; i < parts.size(); i++) {
      Typed.Value part = parts.get(i);
      Unit unit = part.unit().orElse(length.unit());
      CellContext context = new CellContext(order.get(i), unit, true, length.mark());
      values.put(order.get(i), NumberCell.value(context, raw, part.value(), unit, Double.NaN));
    }
  }

  private List<InputColumn> order(Map<InputColumn, InputValue> values, int count) {
    if (count == 3) {
      return List.of(InputColumn.LENGTH, InputColumn.WIDTH, InputColumn.HEIGHT);
    }
    InputValue word = values.getOrDefault(InputColumn.SURFACE, InputValue.NOTHING);
    Surface surface = catalogue.surface(word.raw().strip()).orNull();
    MeasuredBy by = surface == null ? MeasuredBy.LENGTH_X_WIDTH : surface.measuredBy();
    return switch (by) {
      case COUNT_X_SIZE, COUNT_X_UNIT, TRIANGLE -> List.of(InputColumn.WIDTH, InputColumn.HEIGHT);
      case LENGTH_X_HEIGHT -> List.of(InputColumn.LENGTH, InputColumn.HEIGHT);
      case LENGTH_X_GIRTH, COUNT_X_LENGTH_X_GIRTH -> List.of(InputColumn.LENGTH, InputColumn.GIRTH);
      case PERIMETER_X_HEIGHT, LENGTH_X_WIDTH -> List.of(InputColumn.LENGTH, InputColumn.WIDTH);
    };
  }

  /** The value of a cell that is not this row's under this heading: no formula points at it. */
  private static InputValue unlive(InputValue value) {
    return new InputValue(
        value.state(),
        value.raw(),
        value.number(),
        value.low(),
        value.high(),
        Double.NaN,
        value.unit(),
        value.expected());
  }
}
