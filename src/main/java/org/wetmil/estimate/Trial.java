package org.wetmil.estimate;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.quantity.Unit;
import org.wetmil.trade.TipCode;

/**
 * A line filled once more with other cells, by the very steps that fill a bid, so that nothing is
 * advised that was not tried. Its room is not known here: area, film and flow hold, the covering of
 * the floor does not.
 */
public final class Trial {
  private final Catalogue catalogue;
  private final FilledLine filled;

  public Trial(Catalogue catalogue, FilledLine filled) {
    this.catalogue = catalogue;
    this.filled = filled;
  }

  /** With so many coats. */
  public FilledLine coats(int coats) {
    return fill(Map.of(InputColumn.COATS, number(coats, Unit.ONE)), filled.line().pressureAtGun());
  }

  /** With this tip planned, at the pressure that the line has. */
  public Setup tip(TipCode tip) {
    return fill(Map.of(InputColumn.TIP, text(tip)), filled.line().pressureAtGun()).planned();
  }

  /** With this tip planned and a pressure stated, at the pump or at the gun. */
  public Setup tip(TipCode tip, double psi, boolean atGun) {
    Map<InputColumn, InputValue> cells =
        Map.of(InputColumn.TIP, text(tip), InputColumn.PRESSURE, number(psi, Unit.PSI));
    return fill(cells, atGun).planned();
  }

  /** The tips that can be chosen for the line: those on hand, or in stock where none are listed. */
  public List<TipCode> tips() {
    return TipChooser.available(catalogue, filled.work());
  }

  private FilledLine fill(Map<InputColumn, InputValue> cells, boolean atGun) {
    BidLine line = filled.line();
    Map<InputColumn, InputValue> changed = new EnumMap<>(InputColumn.class);
    changed.putAll(line.values());
    changed.putAll(cells);
    BidLine other = new BidLine(line.sheet(), line.row(), line.system(), atGun, changed);
    return Estimator.fill(catalogue, other);
  }

  private static InputValue number(double number, Unit unit) {
    return new InputValue(InputValue.State.READ, "", number, number, number, Double.NaN, unit, "");
  }

  private static InputValue text(TipCode tip) {
    return InputValue.text(tip.code());
  }
}
