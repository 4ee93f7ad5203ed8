package org.wetmil.checks;

import static org.wetmil.estimate.InputColumn.AREA;
import static org.wetmil.estimate.InputColumn.GIRTH;
import static org.wetmil.estimate.InputColumn.OPENINGS;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.wetmil.catalogue.Kind;
import org.wetmil.catalogue.Setting;
import org.wetmil.estimate.Area;
import org.wetmil.estimate.BidLine;
import org.wetmil.estimate.GreatestSizes;
import org.wetmil.estimate.InputColumn;
import org.wetmil.estimate.InputValue;
import org.wetmil.quantity.Quantity;
import org.wetmil.quantity.Unit;

/** Areas and dimensions that cannot be what was meant. */
final class AreaChecks {
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
              "setting Greatest wall height, of railings and fences 20 ft; a likely height is to 40 ft",
              "Type the unit with the number, as in 96 in.",
              Rule.ofLine(UnitSlips::heightUnit)),
          new Check(
              "height-in-metres",
              Severity.WARNING,
              "Most walls of a sheet are so low that metres are likely",
              "Metres taken as feet make the area of the walls a third of what it is, or less.",
              Kind.HOUSE,
              "most walls around rooms under 5 ft, where the number is 5 to 40 ft in metres",
              "Write the unit in the heading, as in Height (m); the other sizes are likely in it, too.",
              Rule.ofBid(LowWalls::inMetres)),
          new Check(
              "length-unit",
              Severity.WARNING,
              "A length looks like millimetres or centimetres",
              "A length in the wrong unit makes the area many times too large.",
              Kind.HOUSE,
              "over 100 m where it would be 0.5 to 60 m in millimetres or centimetres",
              "Type the unit with the number, as in 3810 mm.",
              Rule.ofCells(UnitSlips::lengthUnit)),
          new Check(
              "size-beyond",
              Severity.WARNING,
              "A size is past what any line has",
              "Taken as it stands it would swamp the job, so it counts as not stated; a line that"
                  + " needs it stays out of totals, order and price.",
              Kind.HOUSE,
              "settings Greatest height, room side and length taken; the greatest of the others",
              "Type the size with its unit; if it is true, raise the setting or part the line.",
              Rule.ofCells(AreaChecks::beyond)),
          new Check(
              "size-not-used",
              Severity.WARNING,
              "A size is stated that does not count",
              "Pieces take their usual area each, so that large ones come out too small.",
              Kind.HOUSE,
              "surfaces measured by count x unit, or by count x size where that is not whole",
              "State the area, or width and height where the surface goes by them.",
              Rule.ofLine(UnusedSizes::ofPieces)),
          new Check(
              "piece-too-large",
              Severity.WARNING,
              "One piece is many times as large as is usual",
              "Sizes in the wrong unit make the area many times too large.",
              Kind.HOUSE,
              "the surface's usual piece and how many of it one piece may be as large as",
              "Type the unit with the number, as in 24 in.",
              Rule.ofLine(PieceSizes::tooLarge)),
          new Check(
              "girth-of-trim",
              Severity.WARNING,
              "The girth is more than trim has",
              "Trim is painted in one stroke; a wide girth is a wall, or a wrong unit.",
              Kind.HOUSE,
              "setting Greatest trim girth",
              "Check the girth; it is the width around the profile.",
              Rule.ofLine(AreaChecks::girthOfTrim)),
          new Check(
              "girth-too-small",
              Severity.WARNING,
              "The girth is less than any work has",
              "Feet under inches, or metres under millimetres, leave next to nothing to paint.",
              Kind.HOUSE,
              "the least girth of any work",
              "Type the unit with the number, as in 0.5 ft.",
              Rule.ofLine(SmallSizes::girth)),
          new Check(
              "area-of-pieces",
              Severity.WARNING,
              "The area is less than one piece has",
              "A count of doors taken for their area leaves next to nothing to paint.",
              Kind.HOUSE,
              "the surface's usual piece, and the share of it that is taken for a count",
              "Write the count under Count; an area is that of all faces.",
              Rule.ofLine(SmallSizes::area)),
          new Check(
              "soffit-width",
              Severity.WARNING,
              "A soffit is as wide as a room",
              "Soffits are measured in inches; taken as feet they are many times too wide.",
              Kind.HOUSE,
              "the width of a soffit past which a smaller unit is suspected",
              "Type the unit with the number, as in 24 in.",
              Rule.ofLine(UnitSlips::soffit)));

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
    if (area == null || !area.isKnown() || !(area.deducted().value() > 0)) {
      return Optional.empty();
    }
    Unit unit = Quantity.AREA.unit(line.system());
    double gross = unit.to(Quantity.AREA.base(), area.gross().value());
    double openings = unit.to(Quantity.AREA.base(), area.deducted().value());
    if (openings < gross * (1 - 1e-12)) {
      return Optional.empty();
    }
    String measured = line.say(Quantity.AREA, openings);
    String limit = line.say(Quantity.AREA, gross);
    return line.found(
        line.has(OPENINGS) ? OPENINGS : null,
        measured,
        limit,
        "Openings of %s take the whole %s of the surface; check both.".formatted(measured, limit));
  }

  private static Stream<Fault> beyond(Line line) {
    return Stream.concat(
        Arrays.stream(InputColumn.values())
            .filter(column -> line.cell(column).state() == InputValue.State.BEYOND)
            .map(column -> beyond(line, column)),
        tooLarge(line).stream());
  }

  private static Fault beyond(Line line, InputColumn column) {
    BidLine bidLine = line.filled().line();
    double most = GreatestSizes.of(column, bidLine, line.catalogue());
    Setting setting = GreatestSizes.setting(column, bidLine);
    Say.Pair said = line.pair(column.quantity(), line.cell(column).high(), most);
    Optional<Unit> likely = setting == null ? Optional.empty() : LikelyUnit.of(line, column);
    boolean stops = ReadingChecks.isNeeded(line, column);
    String raise = setting == null ? "" : "; if it is true, raise the setting " + setting.title();
    return line.fault(
            column,
            said.measured(),
            said.limit(),
            "%s %s is over the %s that a line is taken with%s, so %s%s."
                .formatted(
                    column.heading(),
                    said.measured(),
                    said.limit(),
                    likely.map(unit -> " and looks like " + LikelyUnit.word(unit)).orElse(""),
                    stops ? "the line stays out of the totals" : "it counts as not stated",
                    likely
                        .map(unit -> "; type " + UnitSlips.typed(line, column, unit))
                        .orElse(raise)))
        .stopping(stops);
  }

  /** Sizes that are each possible can still make an area that is not. */
  private static Optional<Fault> tooLarge(Line line) {
    Area area = line.filled().area();
    if (area == null || !area.isTooLarge()) {
      return Optional.empty();
    }
    Unit unit = Quantity.AREA.unit(line.system());
    Say.Pair said =
        line.pair(
            Quantity.AREA,
            unit.to(Quantity.AREA.base(), area.gross().value()),
            GreatestSizes.AREA.value());
    return Optional.of(
        line.fault(
                null,
                said.measured(),
                said.limit(),
                "The sizes of this line make %s, over the %s that a line is taken with; correct them."
                    .formatted(said.measured(), said.limit()))
            .stopping(true));
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
