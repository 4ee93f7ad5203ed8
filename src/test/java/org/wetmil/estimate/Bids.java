package org.wetmil.estimate;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.StatedRow;
import org.wetmil.catalogue.TableProblem;
import org.wetmil.catalogue.Tables;
import org.wetmil.quantity.Unit;
import org.wetmil.quantity.UnitSystem;

/** Bids made by hand for tests: cells as a reader would hand them over. */
public final class Bids {
  private Bids() {}

  /** A line of US cells: pairs of column and value, numbers as true numbers. */
  public static BidLine line(Object... cells) {
    return line(UnitSystem.US, cells);
  }

  public static BidLine line(UnitSystem system, Object... cells) {
    Map<InputColumn, InputValue> values = new EnumMap<>(InputColumn.class);
    for (int i = 0; i < cells.length; i += 2) {
      InputColumn column = (InputColumn) cells[i];
      values.put(column, value(column, cells[i + 1], system));
    }
    return new BidLine("Bid", 5, system, false, values);
  }

  private static InputValue value(InputColumn column, Object cell, UnitSystem system) {
    if (!(cell instanceof Number number) || !column.quantity().isNumber()) {
      return InputValue.text(cell.toString());
    }
    Unit unit = column.quantity().unit(system);
    double shown = number.doubleValue();
    double base = unit.to(column.quantity().base(), shown);
    return new InputValue(
        InputValue.State.READ, cell.toString(), base, base, base, shown, unit, "");
  }

  /** The line with a range in one cell, as in 4-6. */
  public static BidLine range(BidLine line, InputColumn column, double low, double high) {
    return changed(
        line,
        column,
        new InputValue(
            InputValue.State.READ,
            low + "-" + high,
            (low + high) / 2,
            low,
            high,
            Double.NaN,
            column.quantity().unit(line.system()),
            ""));
  }

  /** The line with the number of one cell typed as text, so that no formula may point at it. */
  public static BidLine typed(BidLine line, InputColumn column) {
    InputValue was = line.get(column);
    return changed(
        line,
        column,
        new InputValue(
            was.state(),
            was.raw() + "'",
            was.number(),
            was.low(),
            was.high(),
            Double.NaN,
            was.unit(),
            ""));
  }

  /** The line with one cell replaced. */
  public static BidLine changed(BidLine line, InputColumn column, InputValue value) {
    Map<InputColumn, InputValue> values = new EnumMap<>(line.values());
    values.put(column, value);
    return new BidLine(line.sheet(), line.row(), line.system(), line.pressureAtGun(), values);
  }

  public static Bid bid(BidLine... lines) {
    return bid(Catalogue.builtIn(), UnitSystem.US, lines);
  }

  public static Bid bid(Catalogue catalogue, UnitSystem system, BidLine... lines) {
    List<BidLine> numbered = new ArrayList<>();
    Map<InputColumn, Unit> units = new EnumMap<>(InputColumn.class);
    for (BidLine line : lines) {
      numbered.add(
          new BidLine(
              line.sheet(),
              5 + numbered.size(),
              line.system(),
              line.pressureAtGun(),
              line.values(),
              line.earlier()));
      line.values().keySet().forEach(c -> units.put(c, c.quantity().unit(line.system())));
    }
    BidSheet sheet = new BidSheet("Bid", lines[0].system(), true, units, numbered);
    return new Bid("test", system, catalogue, List.of(sheet), List.of(), List.of());
  }

  public static FilledLine fill(BidLine line) {
    return fill(Catalogue.builtIn(), line);
  }

  public static FilledLine fill(Catalogue catalogue, BidLine line) {
    return Estimator.fill(bid(catalogue, line.system(), line)).lines().findFirst().orElseThrow();
  }

  /** The built-in tables with some settings changed: pairs of name and value. */
  public static Catalogue settings(Object... pairs) {
    List<StatedRow> rows = new ArrayList<>();
    for (int i = 0; i < pairs.length; i += 2) {
      rows.add(row(i, "Setting", pairs[i], "Value", pairs[i + 1]));
    }
    return with(Tables.SETTINGS, rows);
  }

  public static Catalogue with(Tables table, List<StatedRow> rows) {
    List<TableProblem> problems = new ArrayList<>();
    Catalogue catalogue = Catalogue.builtIn().with(Map.of(table, rows), UnitSystem.US, problems);
    if (!problems.isEmpty()) {
      throw new IllegalArgumentException(problems.toString());
    }
    return catalogue;
  }

  /** A row of an estimator's table: pairs of heading and value. */
  public static StatedRow row(int number, Object... pairs) {
    Map<String, StatedRow.StatedCell> cells = new LinkedHashMap<>();
    for (int i = 0; i < pairs.length; i += 2) {
      boolean numeric = pairs[i + 1] instanceof Number;
      double value = numeric ? ((Number) pairs[i + 1]).doubleValue() : Double.NaN;
      cells.put(
          pairs[i].toString(),
          new StatedRow.StatedCell(
              "B" + (number + 2), pairs[i + 1].toString(), value, null, numeric, false));
    }
    return new StatedRow("Sheet", number + 2, cells);
  }
}
