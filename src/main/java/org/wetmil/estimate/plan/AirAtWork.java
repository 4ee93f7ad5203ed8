package org.wetmil.estimate.plan;

import java.util.Optional;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Setting;
import org.wetmil.estimate.EntryPlace;
import org.wetmil.formula.Expr;
import org.wetmil.quantity.Unit;
import org.wetmil.quantity.UnitSystem;
import org.wetmil.trade.Constants;

/**
 * How far the surface is above the dew point of the air at the work, in the units of the job. The
 * same law as {@link org.wetmil.trade.DewPoint}, as formulas over the settings.
 *
 * @param dewPoint temperature at which moisture settles
 * @param above the surface's temperature over that
 * @param wanted how much it is to be above at least
 */
public record AirAtWork(Expr dewPoint, Expr above, Expr wanted) {

  /** Empty where a temperature or the humidity is not stated. */
  public static Optional<AirAtWork> of(Catalogue catalogue, UnitSystem system) {
    boolean stated =
        catalogue.entry(Setting.AIR_TEMPERATURE).isStated()
            && catalogue.entry(Setting.SURFACE_TEMPERATURE).isStated()
            && catalogue.number(Setting.HUMIDITY) > 0;
    if (!stated) {
      return Optional.empty();
    }
    Expr air = setting(catalogue, Setting.AIR_TEMPERATURE, system);
    Expr surface = setting(catalogue, Setting.SURFACE_TEMPERATURE, system);
    Expr humidity = setting(catalogue, Setting.HUMIDITY, system);
    Expr margin = setting(catalogue, Setting.DEW_POINT_MARGIN, system);
    boolean us = system == UnitSystem.US;
    Expr airC = us ? air.minus(Expr.num(32)).over(Expr.num(1.8)) : air;
    Expr a = Expr.num(Constants.MAGNUS_A.value());
    Expr b = Expr.num(Constants.MAGNUS_B_C.value());
    Expr g = Expr.ln(humidity).plus(a.times(airC).over(b.plus(airC)));
    Expr dewC = b.times(g).over(a.minus(g));
    Expr dew = us ? dewC.times(Expr.num(1.8)).plus(Expr.num(32)) : dewC;
    double perFahrenheit = Unit.FAHRENHEIT.si() / Unit.CELSIUS.si();
    Expr wanted = us ? margin : margin.times(Expr.num(perFahrenheit));
    return Optional.of(new AirAtWork(dew, surface.minus(dew), wanted));
  }

  /** Whether the surface is far enough above the dew point. */
  public boolean isEnough() {
    return above.value() >= wanted.value();
  }

  private static Expr setting(Catalogue catalogue, Setting setting, UnitSystem system) {
    var entry = catalogue.entry(setting);
    double shown = entry.quantity().shown(entry.number(), system);
    return Expr.at(EntryPlace.of(catalogue.row(setting), "Value"), shown);
  }
}
