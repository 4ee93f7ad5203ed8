package org.wetmil.checks;

import static org.wetmil.estimate.InputColumn.AREA;
import static org.wetmil.estimate.InputColumn.COUNT;
import static org.wetmil.estimate.InputColumn.OPENINGS;
import static org.wetmil.estimate.InputColumn.ROOM;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.wetmil.catalogue.Kind;
import org.wetmil.catalogue.ListedOpening;
import org.wetmil.catalogue.Names;
import org.wetmil.catalogue.Quoted;
import org.wetmil.catalogue.Row;
import org.wetmil.catalogue.Tables;
import org.wetmil.estimate.Area;
import org.wetmil.estimate.FilledBid;
import org.wetmil.estimate.Openings;
import org.wetmil.measure.MeasuringRule;
import org.wetmil.measure.Taken;
import org.wetmil.quantity.Quantity;
import org.wetmil.quantity.Unit;

/** Openings: typed as one sum on a line, or listed one by one. */
final class OpeningChecks {
  static final List<Check> ALL =
      List.of(
          new Check(
              "openings-of-several",
              Severity.NOTE,
              "Openings of a line that counts several times",
              "Count multiplies the area; the openings of the line come off once, in all.",
              Kind.HOUSE,
              "the Openings column holds the sum of the whole line",
              "Type the openings of all pieces together, or list them with their count.",
              Rule.ofLine(OpeningChecks::ofSeveral)),
          new Check(
              "openings-as-sum",
              Severity.NOTE,
              "Openings are typed as one sum where the rule goes by size",
              "A sum does not tell the size of each opening, so it comes off as it stands.",
              Kind.PUBLISHED,
              "IS 1200 (Part 13):1994, 3.1 to 3.5; DIN 18363 (VOB/C), section 5: by the size of each",
              "List the openings one by one on an Openings sheet, and empty the cell.",
              Rule.ofBid(OpeningChecks::asSum)),
          new Check(
              "openings-twice",
              Severity.WARNING,
              "Openings are both typed on the line and listed for it",
              "Both come off, so that an opening in both places comes off twice.",
              Kind.HOUSE,
              "each opening belongs in one place",
              "Empty the cell, or take the listed ones off the Openings sheet.",
              Rule.ofLine(OpeningChecks::twice)),
          new Check(
              "opening-without-line",
              Severity.WARNING,
              "A listed opening is for no line",
              "It takes nothing off, so that its wall is measured too large.",
              Kind.HOUSE,
              "room and surface as on the bid; a blank surface means walls or siding",
              "Write room and surface as they stand on the bid.",
              Rule.ofBid(bid -> faulty(bid, Openings.Fault.NO_LINE))),
          new Check(
              "opening-without-size",
              Severity.WARNING,
              "A listed opening has no size",
              "Without a size nothing is taken off.",
              Kind.HOUSE,
              "sizes as listed, else the usual ones of the kind",
              "State width and height, or a kind that has a usual size.",
              Rule.ofBid(bid -> faulty(bid, Openings.Fault.NO_SIZE))),
          new Check(
              "opening-kind",
              Severity.WARNING,
              "A kind of opening is not known",
              "The kind says whether an opening goes by its area, its width or its height.",
              Kind.HOUSE,
              "the Opening kinds table",
              "Write one of the kinds offered, or add a row to an Opening kinds sheet.",
              Rule.ofBid(bid -> faulty(bid, Openings.Fault.UNKNOWN_KIND))),
          new Check(
              "other-reveal",
              Severity.NOTE,
              "The other side of an opening is not listed",
              "Where the finishes differ, the opening comes off the side of the narrower reveal.",
              Kind.PUBLISHED,
              "IS 1200 (Part 13):1994, 3.1 to 3.5",
              "List it for the other room too, with its reveal and the same Id.",
              Rule.ofBid(OpeningChecks::otherReveal)));

  private OpeningChecks() {}

  private static Optional<Fault> ofSeveral(Line line) {
    double count = line.number(COUNT);
    Area area = line.filled().area();
    boolean counted = count > 1 && area != null && area.isKnown() && !line.has(AREA);
    if (!counted || !(area.deducted().value() > 0)) {
      return Optional.empty();
    }
    double ft2 = ft2(line, area.deducted().value());
    String off = line.say(Quantity.AREA, ft2);
    String all = line.say(Quantity.AREA, count * ft2);
    return line.found(
        line.has(OPENINGS) ? OPENINGS : COUNT,
        off,
        all,
        "Count is %s, and openings of %s come off once, for all of them together; if each has them, %s."
            .formatted(
                Say.number(count, 2),
                off,
                line.has(OPENINGS) && area.listed().isEmpty()
                    ? "type " + all
                    : "count them %s times".formatted(Say.number(count, 2))));
  }

  /** Once for the bid, but for each sum so small that the rule would take none of it off. */
  private static Stream<Fault> asSum(FilledBid bid) {
    MeasuringRule rule = Openings.rule(bid.bid().catalogue());
    List<Line> sums =
        Line.all(bid)
            .filter(line -> line.filled().area() != null && line.filled().area().lump())
            .filter(line -> line.number(OPENINGS) > 0)
            .toList();
    List<Fault> faults = new ArrayList<>();
    List<Line> large = new ArrayList<>();
    for (Line line : sums) {
      double upToM2 = rule.measuredOverUpToM2(line.surface().floor());
      double upToFt2 = Unit.SQUARE_METRE.to(Quantity.AREA.base(), upToM2);
      if (line.number(OPENINGS) <= upToFt2 * (1 + 1e-9)) {
        faults.add(small(line, rule, upToFt2));
      } else {
        large.add(line);
      }
    }
    large.stream().limit(1).map(line -> sum(line, rule, large.size() - 1)).forEach(faults::add);
    return faults.stream();
  }

  private static Fault small(Line line, MeasuringRule rule, double upToFt2) {
    Say.Pair said = line.pair(Quantity.AREA, line.number(OPENINGS), upToFt2);
    return line.fault(
        OPENINGS,
        said.measured(),
        said.limit(),
        "Openings of %s come off as typed, though %s measures over each of up to %s, and none of these can be larger; empty the cell to measure by the rule."
            .formatted(said.measured(), rule.title(), said.limit()));
  }

  private static Fault sum(Line line, MeasuringRule rule, int others) {
    String measured = line.say(Quantity.AREA, line.number(OPENINGS));
    return line.fault(
        OPENINGS,
        measured,
        rule.title(),
        "Openings of %s come off as typed, since %s goes by the size of each and a sum does not tell it%s; list them one by one on an Openings sheet."
            .formatted(
                measured,
                rule.title(),
                others == 0
                    ? ""
                    : " (%s more such %s)".formatted(others, others == 1 ? "line" : "lines")));
  }

  private static Optional<Fault> twice(Line line) {
    Area area = line.filled().area();
    if (area == null || !area.isKnown() || !(line.number(OPENINGS) > 0)) {
      return Optional.empty();
    }
    double listedM2 = area.listed().stream().mapToDouble(each -> each.taken().deductedM2()).sum();
    if (!(listedM2 > 0) || !(area.deducted().value() > 0)) {
      return Optional.empty();
    }
    String typed = line.say(Quantity.AREA, line.number(OPENINGS));
    String listed = line.say(Quantity.AREA, Unit.SQUARE_METRE.to(Quantity.AREA.base(), listedM2));
    return line.found(
        OPENINGS,
        typed,
        "",
        "Openings of %s are typed here and %s are listed for the line, and both come off; state each opening in one place."
            .formatted(typed, listed));
  }

  private static Stream<Fault> faulty(FilledBid bid, Openings.Fault fault) {
    return Openings.faulty(bid).stream()
        .filter(each -> each.fault() == fault)
        .map(each -> faulty(bid, each));
  }

  private static Fault faulty(FilledBid bid, Openings.Faulty faulty) {
    ListedOpening listed = faulty.listed();
    return switch (faulty.fault()) {
      case NO_LINE -> noLine(bid, listed);
      case NO_SIZE ->
          at(
              listed.row(),
              "Width",
              "empty",
              "width and height",
              "Neither this opening in %s nor its kind states a size, so nothing comes off; state width and height."
                  .formatted(listed.room()));
      case UNKNOWN_KIND -> unknownKind(bid, listed);
    };
  }

  private static Fault noLine(FilledBid bid, ListedOpening listed) {
    List<String> rooms = Line.all(bid).map(line -> line.text(ROOM)).distinct().toList();
    boolean there = rooms.stream().anyMatch(room -> isSame(room, listed.room()));
    String of = listed.surface().isBlank() ? "walls or siding" : Quoted.of(listed.surface());
    String room = Quoted.of(listed.room());
    String near =
        Say.or(Names.nearest(listed.room(), rooms.stream().filter(each -> !each.isEmpty())));
    String advice =
        there || near.isEmpty() ? "write room and surface as on the bid" : "write " + near;
    return at(
        listed.row(),
        there ? "Surface" : "Room",
        room,
        there ? "" : near,
        there
            ? "No line of %s is for %s, so this opening takes nothing off; %s."
                .formatted(room, of, advice)
            : "No line is in %s, so this opening takes nothing off; %s.".formatted(room, advice));
  }

  private static boolean isSame(String room, String other) {
    return Names.key(room).equals(Names.key(other));
  }

  private static Fault unknownKind(FilledBid bid, ListedOpening listed) {
    String kind = Quoted.of(listed.kind());
    List<String> known =
        bid.bid().catalogue().rows(Tables.OPENING_KINDS).stream().map(Row::name).toList();
    List<String> near = Names.nearest(listed.kind(), known.stream());
    return at(
        listed.row(),
        "Kind",
        kind,
        Say.or(near),
        "%s is not a known kind of opening, so it goes by its area; write %s."
            .formatted(kind, Say.or(near.isEmpty() ? known : near)));
  }

  private static Stream<Fault> otherReveal(FilledBid bid) {
    return Line.all(bid)
        .filter(line -> line.filled().area() != null && line.filled().area().isKnown())
        .flatMap(line -> line.filled().area().listed().stream())
        .filter(each -> each.taken().why() == Taken.Why.OTHER_REVEAL_UNKNOWN)
        .map(Openings.Placed::listed)
        .distinct()
        .map(
            listed ->
                at(
                    listed.row(),
                    "Other face",
                    "different",
                    "",
                    "The other face of this opening in %s is different and not listed, so it comes off here whole; list it for the other room under the same Id."
                        .formatted(listed.room())));
  }

  private static Fault at(Row row, String heading, String measured, String limit, String message) {
    Spot cell = Spot.of(row.get(heading));
    return Fault.at(
        cell.equals(Spot.JOB) ? Spot.of(row.get("Room")) : cell, measured, limit, message);
  }

  private static double ft2(Line line, double shown) {
    return Quantity.AREA.unit(line.system()).to(Quantity.AREA.base(), shown);
  }
}
