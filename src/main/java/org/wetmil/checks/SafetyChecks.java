package org.wetmil.checks;

import static org.wetmil.estimate.InputColumn.COATING;
import static org.wetmil.estimate.InputColumn.CONDITION;
import static org.wetmil.estimate.InputColumn.ROOM;

import java.util.List;
import java.util.stream.Stream;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Kind;
import org.wetmil.catalogue.Setting;
import org.wetmil.estimate.FilledBid;
import org.wetmil.estimate.limits.OldPaint;
import org.wetmil.quantity.Count;
import org.wetmil.quantity.Quantity;
import org.wetmil.quantity.Unit;
import org.wetmil.quantity.UnitSystem;
import org.wetmil.trade.DewPoint;

/** Cautions that the figures of a bid call for; never a legal conclusion. */
final class SafetyChecks {
  private static final int MOST_ROOMS_NAMED = 5;

  static final List<Check> ALL =
      List.of(
          new Check(
              "safety-latch",
              Severity.NOTE,
              "Pressures that cut skin",
              "At such pressures a jet is injected through the skin; it looks minor and is not.",
              Kind.PUBLISHED,
              "29 CFR 1926.302(b): airless guns of 1000 psi or more; said once for a job",
              "Use a gun with a safety and a tip guard; an injection is an emergency at once.",
              Rule.ofBid(SafetyChecks::latch)),
          new Check(
              "solvent-indoors",
              Severity.WARNING,
              "A solvent-borne coating is sprayed indoors",
              "Its vapours burn and are breathed.",
              Kind.PUBLISHED,
              "29 CFR 1910.107 on spraying flammable coatings; said once for each coating",
              "Ventilate until the vapours clear, ground the equipment, keep sparks away; follow"
                  + " data sheet and local codes.",
              Rule.ofBid(SafetyChecks::solvent)),
          new Check(
              "lead-paint",
              Severity.WARNING,
              "Old paint in a building from before 1978 may be disturbed",
              "Paint of that age may hold lead, whose dust harms children most.",
              Kind.PUBLISHED,
              "40 CFR 745.83: over 6 ft² per room or 20 ft² outside within 30 days is not minor work;"
                  + " said once for the rooms and once for outside",
              "Have it tested and ask who is licensed before any sanding or scraping.",
              Rule.ofBid(SafetyChecks::lead)),
          new Check(
              "dew-point",
              Severity.WARNING,
              "The surface is too near the dew point",
              "Moisture settles on the surface and under the film.",
              Kind.PUBLISHED,
              "MIL-HDBK-1110 (UFC 3-190-06) 9.6.6: 5 °F above the dew point and rising",
              "Wait, or warm the surface; measure about every four hours.",
              Rule.ofBid(SafetyChecks::dewPoint)),
          new Check(
              "gun-distance",
              Severity.NOTE,
              "The gun distance is outside the usual",
              "Farther off the spray dries on its way; nearer it floods.",
              Kind.PUBLISHED,
              "MIL-HDBK-1110 (UFC 3-190-06): 12 to 15 in for airless",
              "Set a distance within the usual, or try it on a board.",
              Rule.ofBid(SafetyChecks::distance)));

  private SafetyChecks() {}

  private static Stream<Fault> latch(FilledBid bid) {
    double most =
        Line.all(bid)
            .filter(Line::isSetUp)
            .mapToDouble(line -> line.filled().setPsi())
            .max()
            .orElse(0);
    if (most < CheckLimits.LATCH.value()) {
      return Stream.empty();
    }
    UnitSystem system = bid.bid().system();
    String measured = Say.of(Quantity.PRESSURE, most, system);
    String limit = Say.of(Quantity.PRESSURE, CheckLimits.LATCH.value(), system);
    return Stream.of(
        Fault.ofJob(
            measured,
            limit,
            ("Guns run at up to %s, and from %s a gun is to have a safety and its tip a guard;"
                    + " treat an injection as an emergency.")
                .formatted(measured, limit)));
  }

  private static Stream<Fault> solvent(FilledBid bid) {
    return Line.all(bid)
        .filter(line -> line.isSetUp() && line.coating().solventBorne())
        .filter(line -> !line.surface().outdoors())
        .filter(Line.firstOf(line -> line.coating().name()))
        .map(
            line ->
                line.fault(
                    COATING,
                    line.coating().name(),
                    "",
                    ("A solvent-borne coating, %s, is sprayed indoors; ventilate, keep off every"
                            + " source of ignition, ground the equipment and follow its data sheet.")
                        .formatted(line.coating().name())));
  }

  private static Stream<Fault> lead(FilledBid bid) {
    List<OldPaint> over = OldPaint.all(bid).stream().filter(OldPaint::isOver).toList();
    List<OldPaint> rooms = over.stream().filter(place -> !place.isOutside()).toList();
    return Stream.concat(
        rooms.isEmpty() ? Stream.empty() : Stream.of(leadInside(bid, rooms)),
        over.stream()
            .filter(OldPaint::isOutside)
            .map(place -> lead(bid, List.of(place), "outside,")));
  }

  /** One finding for all rooms that are past the limit of a room. */
  private static Fault leadInside(FilledBid bid, List<OldPaint> rooms) {
    List<String> names = rooms.stream().map(room -> room.first().line().text(ROOM)).toList();
    boolean few = rooms.size() <= MOST_ROOMS_NAMED && names.stream().noneMatch(String::isEmpty);
    String where = few ? Say.and(names) : Count.of(rooms.size(), "room");
    return lead(bid, rooms, "in " + where + (rooms.size() == 1 ? "," : ", each"));
  }

  private static Fault lead(FilledBid bid, List<OldPaint> places, String where) {
    Line first = new Line(bid.bid().catalogue(), places.get(0).first());
    double ft2 = places.stream().mapToDouble(OldPaint::togetherFt2).sum();
    double earlierFt2 = places.stream().mapToDouble(OldPaint::earlierFt2).sum();
    String earlier =
        earlierFt2 > 0
            ? " (%s of it by earlier work within %d days)"
                .formatted(first.say(Quantity.AREA, earlierFt2), OldPaint.DAYS)
            : "";
    Say.Pair said = first.pair(Quantity.AREA, ft2, places.get(0).limitFt2());
    return first.fault(
        CONDITION,
        said.measured(),
        said.limit(),
        ("Built in %s, and %s%s that may carry old paint or its remains are worked on %s over %s;"
                + " have the paint tested for lead and ask who is licensed.")
            .formatted(
                Say.number(first.setting(Setting.YEAR_BUILT), 0),
                said.measured(),
                earlier,
                where,
                said.limit()));
  }

  private static Stream<Fault> dewPoint(FilledBid bid) {
    Catalogue catalogue = bid.bid().catalogue();
    double airF = catalogue.number(Setting.AIR_TEMPERATURE);
    double surfaceF = catalogue.number(Setting.SURFACE_TEMPERATURE);
    double humidity = catalogue.number(Setting.HUMIDITY);
    if (Double.isNaN(airF) || Double.isNaN(surfaceF) || !(humidity > 0)) {
      return Stream.empty();
    }
    double marginF = catalogue.number(Setting.DEW_POINT_MARGIN);
    double dewF = DewPoint.fahrenheit(airF, humidity * 100);
    if (surfaceF >= dewF + marginF) {
      return Stream.empty();
    }
    UnitSystem system = bid.bid().system();
    Say.Pair said = Say.pair(Quantity.TEMPERATURE, surfaceF, dewF + marginF, system);
    return Stream.of(
        Fault.at(
            Spot.of(catalogue.entry(Setting.SURFACE_TEMPERATURE)),
            said.measured(),
            said.limit(),
            "The surface at %s is under %s, which is %s above the dew point of %s; wait or warm it."
                .formatted(
                    said.measured(),
                    said.limit(),
                    difference(marginF, system),
                    Say.of(Quantity.TEMPERATURE, dewF, system))));
  }

  /** A difference of temperatures, which has no zero to shift. */
  private static String difference(double fahrenheit, UnitSystem system) {
    Unit unit = Quantity.TEMPERATURE.unit(system);
    double shown = fahrenheit * Unit.FAHRENHEIT.si() / unit.si();
    return Say.number(shown, 1) + " " + unit.symbol();
  }

  private static Stream<Fault> distance(FilledBid bid) {
    Catalogue catalogue = bid.bid().catalogue();
    double distance = catalogue.number(Setting.DISTANCE);
    double least = catalogue.number(Setting.LEAST_DISTANCE);
    double most = catalogue.number(Setting.GREATEST_DISTANCE);
    if (distance >= least && distance <= most) {
      return Stream.empty();
    }
    UnitSystem system = bid.bid().system();
    Say.Pair said = Say.pair(Quantity.FAN_WIDTH, distance, distance < least ? least : most, system);
    String limit = Say.range(Quantity.FAN_WIDTH, least, most, system);
    return Stream.of(
        Fault.at(
            Spot.of(catalogue.entry(Setting.DISTANCE)),
            said.measured(),
            limit,
            "A gun distance of %s is outside the usual %s; try it on a board."
                .formatted(said.measured(), limit)));
  }
}
