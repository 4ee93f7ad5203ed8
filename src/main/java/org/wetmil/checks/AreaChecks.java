package org.wetmil.checks;

import static org.wetmil.estimate.InputColumn.AREA;
import static org.wetmil.estimate.InputColumn.GIRTH;
import static org.wetmil.estimate.InputColumn.HEIGHT;
import static org.wetmil.estimate.InputColumn.LENGTH;
import static org.wetmil.estimate.InputColumn.OPENINGS;
import static org.wetmil.estimate.InputColumn.WIDTH;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.wetmil.catalogue.Kind;
import org.wetmil.catalogue.MeasuredBy;
import org.wetmil.catalogue.Setting;
import org.wetmil.estimate.Area;
import org.wetmil.estimate.InputColumn;
import org.wetmil.quantity.Quantity;
import org.wetmil.quantity.Unit;
import org.wetmil.quantity.UnitSystem;

/** Areas and dimensions that cannot be what was meant. */
final class AreaChecks {
  /** Heights that walls and gables have, in feet (house). */
  private static final double LEAST_LIKELY_FT = 5;

  private static final double GREATEST_LIKELY_FT = 40;

  /** Lengths that pieces of a building have, in metres (house). */
  private static final double LEAST_LIKELY_M = 0.02;

  private static final double GREATEST_LIKELY_M = 60;

  /** Length in metres past which millimetres are suspected (house). */
  private static final double LONG_M = 100;

  static final List<Check> ALL =
      List.of(
          new Check(
              "area-against-dimensions",
              Severity.WARNING,
              "Stated area and dimensions disagree",
              "A stated area wins over the dimensions, so that a slip in it is paid for.",
              Kind.HOUSE,
              "setting Area tolerance",
              "Correct the one that is wrong, or empty the area.",
              Rule.ofLine(AreaChecks::againstDimensions)),
          new Check(
              "openings-against-wall",
              Severity.WARNING,
              "Openings take the whole surface",
              "A net area under 0 counts as 0, and nothing is painted.",
              Kind.DERIVED,
              "the net area is the gross area less its openings",
              "Check the openings; they are a sum in square measure, not a count.",
              Rule.ofLine(AreaChecks::openings)),
          new Check(
              "height-unit",
              Severity.WARNING,
              "A height looks like inches or millimetres",
              "A height in the wrong unit makes the area many times too large.",
              Kind.HOUSE,
              "setting Greatest wall height; a likely height is 5 to 40 ft",
              "Type the unit with the number, as in 96 in.",
              Rule.ofLine(AreaChecks::heightUnit)),
          new Check(
              "length-unit",
              Severity.WARNING,
              "A length looks like millimetres",
              "A length in the wrong unit makes the area a thousand times too large.",
              Kind.HOUSE,
              "over 100 m where a thousandth of it would be 0.02 to 60 m",
              "Type the unit with the number, as in 3810 mm.",
              Rule.ofCells(AreaChecks::lengthUnit)),
          new Check(
              "girth-of-trim",
              Severity.WARNING,
              "The girth is more than trim has",
              "Trim is painted in one stroke; a wide girth is a wall, or a wrong unit.",
              Kind.HOUSE,
              "setting Greatest trim girth",
              "Check the girth; it is the width around the profile.",
              Rule.ofLine(AreaChecks::girthOfTrim)));

  private AreaChecks() {}

  private static Optional<Fault> againstDimensions(Line line) {
    Area area = line.filled().area();
    if (area == null || !(line.number(AREA) > 0) || !(area.byDimensions() > 0)) {
      return Optional.empty();
    }
    Unit unit = Quantity.AREA.unit(line.system());
    double stated = line.number(AREA);
    double byDimensions = unit.to(Quantity.AREA.base(), area.byDimensions());
    double off = stated / byDimensions - 1;
    if (Math.abs(off) <= line.setting(Setting.AREA_TOLERANCE) + 1e-9) {
      return Optional.empty();
    }
    Say.Pair said = line.pair(Quantity.AREA, stated, byDimensions);
    return line.found(
        AREA,
        said.measured(),
        said.limit(),
        "The stated %s is more than %s %s the %s of the dimensions; correct one of them."
            .formatted(
                said.measured(),
                Say.percent(line.setting(Setting.AREA_TOLERANCE)),
                off > 0 ? "over" : "under",
                said.limit()));
  }

  private static Optional<Fault> openings(Line line) {
    Area area = line.filled().area();
    double openings = line.number(OPENINGS);
    if (area == null || !area.isKnown() || !(openings > 0)) {
      return Optional.empty();
    }
    Unit unit = Quantity.AREA.unit(line.system());
    double gross = unit.to(Quantity.AREA.base(), area.gross().value());
    if (openings < gross * (1 - 1e-12)) {
      return Optional.empty();
    }
    String measured = line.say(Quantity.AREA, openings);
    String limit = line.say(Quantity.AREA, gross);
    return line.found(
        OPENINGS,
        measured,
        limit,
        "Openings of %s take the whole %s of the surface; check both.".formatted(measured, limit));
  }

  private static Optional<Fault> heightUnit(Line line) {
    double high = line.number(HEIGHT);
    double limit = line.setting(Setting.GREATEST_WALL_HEIGHT);
    if (line.system() != UnitSystem.US || line.surface() == null || !isUpright(line)) {
      return Optional.empty();
    }
    double asInches = Unit.INCH.to(Unit.FOOT, high);
    double asMillimetres = Unit.MILLIMETRE.to(Unit.FOOT, high);
    boolean inches = isLikely(asInches);
    if (!(high > limit) || !(inches || isLikely(asMillimetres))) {
      return Optional.empty();
    }
    String measured = line.say(Quantity.LENGTH, high);
    String most = line.say(Quantity.LENGTH, limit);
    String number = Say.number(high, 1);
    return line.found(
        HEIGHT,
        measured,
        most,
        "A height of %s is over %s and looks like %s; if so, type %s %s."
            .formatted(
                measured, most, inches ? "inches" : "millimetres", number, inches ? "in" : "mm"));
  }

  private static boolean isLikely(double heightFt) {
    return heightFt >= LEAST_LIKELY_FT && heightFt <= GREATEST_LIKELY_FT;
  }

  private static boolean isUpright(Line line) {
    MeasuredBy way = line.surface().measuredBy();
    return way == MeasuredBy.PERIMETER_X_HEIGHT
        || way == MeasuredBy.LENGTH_X_HEIGHT
        || way == MeasuredBy.TRIANGLE;
  }

  private static Stream<Fault> lengthUnit(Line line) {
    return line.system() == UnitSystem.METRIC
        ? Stream.of(LENGTH, WIDTH, HEIGHT)
            .filter(column -> looksLikeMillimetres(metres(line, column)))
            .map(column -> lengthUnit(line, column))
        : Stream.empty();
  }

  private static boolean looksLikeMillimetres(double metres) {
    double asMillimetres = metres / 1000;
    return metres > LONG_M && asMillimetres >= LEAST_LIKELY_M && asMillimetres <= GREATEST_LIKELY_M;
  }

  private static double metres(Line line, InputColumn column) {
    return Quantity.LENGTH.shown(line.number(column), UnitSystem.METRIC);
  }

  private static Fault lengthUnit(Line line, InputColumn column) {
    String measured = line.say(Quantity.LENGTH, line.number(column));
    String limit = Say.number(LONG_M, 0) + " m";
    return line.fault(
        column,
        measured,
        limit,
        "%s is over %s and looks like millimetres; if so, type %s mm."
            .formatted(measured, limit, Say.number(metres(line, column), 1)));
  }

  private static Optional<Fault> girthOfTrim(Line line) {
    double limit = line.setting(Setting.GREATEST_TRIM_GIRTH);
    if (line.surface() == null || !line.surface().trim() || !(line.number(GIRTH) > limit)) {
      return Optional.empty();
    }
    Say.Pair said = line.pair(Quantity.GIRTH, line.number(GIRTH), limit);
    return line.found(
        GIRTH,
        said.measured(),
        said.limit(),
        "A girth of %s is over the %s that trim has; check it and its unit."
            .formatted(said.measured(), said.limit()));
  }
}
