package org.wetmil.audit.change;

import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import org.wetmil.audit.past.PastLine;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Surface;
import org.wetmil.catalogue.Tables;
import org.wetmil.quantity.Quantity;

/**
 * Factors on hours as the trigger share of a surface.
 *
 * <p>A surface has spray hours S and other hours O. The factor f is on all of them, but the trigger
 * share moves only S; and a paint factor p already slows the gun, since more paint goes through the
 * same tip. So S p t / t' + O = f (S + O), and t' = t p S / (f (S + O) - O) (derived).
 */
final class PaceSuggestions {
  private static final String COLUMN = "Trigger share";

  private final Factors hours;
  private final Optional<Factors> paint;
  private final Catalogue catalogue;

  /**
   * @param paint the paint factors that are written at the same time
   */
  PaceSuggestions(Factors hours, Optional<Factors> paint, Catalogue catalogue) {
    this.hours = hours;
    this.paint = paint;
    this.catalogue = catalogue;
  }

  List<Suggestion> all() {
    TreeMap<String, Time> times = new TreeMap<>();
    hours.lines().forEach(line -> times.merge(line.surface(), time(line), Time::plus));
    return times.entrySet().stream()
        .flatMap(entry -> suggestion(entry.getKey(), entry.getValue()).stream())
        .toList();
  }

  private Optional<Suggestion> suggestion(String name, Time time) {
    Surface surface = catalogue.surface(name).orNull();
    if (surface == null || !(time.spray() > 0)) {
      return Optional.empty();
    }
    Bounds bounds = Bounds.of(catalogue, Tables.SURFACES, COLUMN);
    double factor = hours.factor("", name);
    double now = surface.triggerShare();
    double spray = factor * (time.spray() + time.other()) - time.other();
    // Not even a gun that never rests would save so many hours.
    double wanted = spray > 0 ? now * time.sprayAfter() / spray : Double.POSITIVE_INFINITY;
    return Optional.of(
        new Suggestion(
            hours.measure(),
            Tables.SURFACES.title(),
            "",
            name,
            "",
            COLUMN,
            Quantity.SHARE,
            now,
            bounds.hold(wanted),
            factor,
            hours.likely("", name),
            hours.jobs("", name),
            !bounds.holds(wanted)));
  }

  private Time time(PastLine line) {
    double spray = Double.isNaN(line.sprayHours()) ? line.hours() : line.sprayHours();
    double slower =
        paint.map(factors -> factors.factor(line.coating(), line.surface())).orElse(1.0);
    double whole = line.estimated(hours.measure());
    double share = spray / line.hours();
    return Double.isNaN(whole * share)
        ? new Time(0, 0, 0)
        : new Time(whole * share, whole * share * slower, whole * (1 - share));
  }

  /**
   * Hours on a surface.
   *
   * @param spray with the gun, as bid
   * @param sprayAfter with the gun, with the paint factors
   * @param other without the gun
   */
  private record Time(double spray, double sprayAfter, double other) {
    Time plus(Time more) {
      return new Time(spray + more.spray, sprayAfter + more.sprayAfter, other + more.other);
    }
  }
}
