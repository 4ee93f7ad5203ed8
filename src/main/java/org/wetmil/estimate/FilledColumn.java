package org.wetmil.estimate;

import java.util.Arrays;
import java.util.List;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Setting;
import org.wetmil.catalogue.Tables;
import org.wetmil.formula.Place;
import org.wetmil.measure.MeasuringRule;
import org.wetmil.quantity.Quantity;
import org.wetmil.quantity.UnitSystem;

/** The columns that Wetmil fills, in the order in which they stand. */
public enum FilledColumn implements Place {
  GROSS("Gross area", Quantity.AREA, 1, false, "area before openings"),
  DEDUCTED("Openings off", Quantity.AREA, 1, false, "area that the measuring rule takes off"),
  ADDED("Reveals added", Quantity.AREA, 1, false, "area that the measuring rule adds"),
  NET_AREA("Net area", Quantity.AREA, 1, false, "area painted once, openings off"),
  RUNNING("Running length", Quantity.LENGTH, 1, false, "narrow work that the rule takes by length"),
  ORIFICE("Recommended orifice", Quantity.ORIFICE, 0, false, "orifice of the recommended tip"),
  FAN("Recommended fan", Quantity.FAN_WIDTH, 0, false, "fan width of the recommended tip"),
  TIP_CODE("Tip code", Quantity.TEXT, 0, false, "code of the recommended tip"),
  PRESSURE("Pressure to set", Quantity.PRESSURE, 0, false, "pressure to set at the pump"),
  SPEED("Gun speed", Quantity.GUN_SPEED, 1, false, "pace that lays the target, held into the band"),
  COATS("Coats to apply", Quantity.NUMBER, 0, false, "coats"),
  WET_FILM("Wet film per coat", Quantity.FILM, 1, false, "wet film laid at that pace"),
  DRY_FILM("Dry film total", Quantity.FILM, 1, false, "dry film of all coats"),
  SPREAD("Spread", Quantity.SPREAD, 0, false, "practical spread of one coat"),
  PAINT("Paint", Quantity.VOLUME, 2, false, "unthinned coating for all coats"),
  LABOUR("Labour", Quantity.TIME, 2, false, "person-hours of the line's own tasks"),
  PAINT_COST("Paint cost", Quantity.NUMBER, 2, false, "paint at its cheapest stated price"),
  LABOUR_COST("Labour cost", Quantity.NUMBER, 2, false, "labour at its rate with burden"),
  COATING_USED("Coating used", Quantity.TEXT, 0, true, "the coating as understood"),
  COUNTED("Counted", Quantity.NUMBER, 0, true, "1 in the totals, 0 left out"),
  FLOW("Flow", Quantity.FLOW, 3, true, "flow of one gun at the tip"),
  SPRAY("Spray", Quantity.TIME, 2, true, "hours of spraying"),
  ROLL("Back-roll time", Quantity.TIME, 2, true, "hours of back-rolling"),
  MASK("Masking", Quantity.TIME, 2, true, "hours of covering and masking, taking down included"),
  PREPARE("Preparation", Quantity.TIME, 2, true, "hours of preparation"),
  PAINT_LOW("Paint low", Quantity.VOLUME, 2, true, "one line of ten takes less paint"),
  PAINT_HIGH("Paint high", Quantity.VOLUME, 2, true, "one line of ten takes more paint"),
  LABOUR_LOW("Labour low", Quantity.TIME, 2, true, "one line of ten takes fewer hours"),
  LABOUR_HIGH("Labour high", Quantity.TIME, 2, true, "one line of ten takes more hours"),
  COST_LOW("Cost low", Quantity.NUMBER, 2, true, "one line of ten costs less"),
  COST_HIGH("Cost high", Quantity.NUMBER, 2, true, "one line of ten costs more"),
  FINDINGS("Findings", Quantity.TEXT, 0, false, "what to look at, one finding a line");

  private final String heading;
  private final Quantity quantity;
  private final int decimals;
  private final boolean grouped;
  private final String meaning;

  FilledColumn(String heading, Quantity quantity, int decimals, boolean grouped, String meaning) {
    this.heading = heading;
    this.quantity = quantity;
    this.decimals = decimals;
    this.grouped = grouped;
    this.meaning = meaning;
  }

  /** The heading without its unit. */
  public String heading() {
    return heading;
  }

  /** The heading with the unit of a family. */
  public String heading(UnitSystem system) {
    String symbol = quantity.unit(system).symbol();
    return symbol.isEmpty() ? heading : heading + " (" + symbol + ")";
  }

  public Quantity quantity() {
    return quantity;
  }

  /** Decimals shown; the value itself is never rounded. */
  public int decimals(UnitSystem system) {
    if (system == UnitSystem.US) {
      return decimals;
    }
    return switch (quantity) {
      case ORIFICE -> 2;
      case FILM, PRESSURE -> 0;
      case SPREAD, VOLUME -> 1;
      case FLOW -> 2;
      case FAN_WIDTH -> 1;
      default -> decimals;
    };
  }

  /** The columns that a bid shows: measuring when asked for, money when prices are stated. */
  public static List<FilledColumn> shown(Catalogue catalogue) {
    return Arrays.stream(values()).filter(column -> column.isShown(catalogue)).toList();
  }

  private boolean isShown(Catalogue catalogue) {
    return switch (this) {
      case GROSS, DEDUCTED, ADDED -> catalogue.entry(Setting.SHOW_MEASURING).isYes();
      case RUNNING ->
          catalogue.entry(Setting.SHOW_MEASURING).isYes()
              && Openings.rule(catalogue) == MeasuringRule.IS_1200_13;
      case LABOUR_COST -> catalogue.entry(Setting.LABOUR_RATE).isStated();
      case PAINT_COST ->
          catalogue.rows(Tables.COATINGS).stream().anyMatch(row -> row.get("Price").isStated());
      case COST_LOW, COST_HIGH -> LABOUR_COST.isShown(catalogue) || PAINT_COST.isShown(catalogue);
      default -> true;
    };
  }

  /** Whether it stands in the outline group that can be folded away. */
  public boolean isGrouped() {
    return grouped;
  }

  public String meaning() {
    return meaning;
  }
}
