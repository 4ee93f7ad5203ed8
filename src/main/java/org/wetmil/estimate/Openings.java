package org.wetmil.estimate;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.ListedOpening;
import org.wetmil.catalogue.MeasuredBy;
import org.wetmil.catalogue.Names;
import org.wetmil.catalogue.OpeningKind;
import org.wetmil.catalogue.Setting;
import org.wetmil.catalogue.Surface;
import org.wetmil.measure.MeasuringRule;
import org.wetmil.measure.Opening;
import org.wetmil.measure.Taken;
import org.wetmil.quantity.Quantity;
import org.wetmil.quantity.Unit;
import org.wetmil.quantity.UnitSystem;

/**
 * Openings listed one by one, laid on the lines whose face they interrupt: the first line of the
 * room and surface, and the first with each other coating, since every coating covers the same
 * face.
 */
public final class Openings {
  private final MeasuringRule rule;
  private final List<Listing> listings;
  private final Map<Object, List<Placed>> byLine = new HashMap<>();

  /** Why a listed opening takes nothing off any line. */
  public enum Fault {
    /** No line has this room and surface. */
    NO_LINE,
    /** Neither the listing nor its kind states a size. */
    NO_SIZE,
    /** The kind is not known: taken as an opening that goes by its area. */
    UNKNOWN_KIND
  }

  /** A listing that a check reports; with an unknown kind it still counts. */
  public record Faulty(ListedOpening listed, Fault fault) {}

  /** A listed opening on a line, with what the rule takes off and adds there. */
  public record Placed(ListedOpening listed, Taken taken) {

    public double deducted(UnitSystem system) {
      return shown(taken.deductedM2(), system);
    }

    public double added(UnitSystem system) {
      return shown(taken.addedM2(), system);
    }

    /** Without the last bits that going to metres and back leaves. */
    private static double shown(double m2, UnitSystem system) {
      double exact = Unit.SQUARE_METRE.to(Quantity.AREA.unit(system), m2);
      return new BigDecimal(exact).round(new MathContext(12)).doubleValue();
    }
  }

  private record Listing(
      ListedOpening listed, List<Work> lines, Opening opening, List<Faulty> faults) {
    boolean inFloor() {
      return lines.get(0).surface().floor();
    }
  }

  Openings(Catalogue catalogue, List<Work> works) {
    this.rule = rule(catalogue);
    Map<String, List<Work>> rooms =
        catalogue.openings().isEmpty()
            ? Map.of()
            : works.stream()
                .filter(work -> work.surface() != null)
                .collect(Collectors.groupingBy(work -> key(work.line().text(InputColumn.ROOM))));
    this.listings =
        catalogue.openings().stream()
            .map(
                listed ->
                    listing(catalogue, rooms.getOrDefault(key(listed.room()), List.of()), listed))
            .toList();
    List<Listing> placed = listings.stream().filter(each -> each.opening() != null).toList();
    List<Taken> taken =
        Taken.measure(
            rule,
            placed.stream().map(Listing::opening).toList(),
            placed.stream().map(Listing::inFloor).toList());
    for (int i = 0; i < placed.size(); i++) {
      Placed here = new Placed(placed.get(i).listed(), taken.get(i));
      for (Work work : placed.get(i).lines()) {
        byLine.computeIfAbsent(place(work.line()), none -> new ArrayList<>()).add(here);
      }
    }
  }

  /** The rule that the bid is measured by. */
  public static MeasuringRule rule(Catalogue catalogue) {
    return MeasuringRule.find(catalogue.text(Setting.MEASURING_RULE)).orElseThrow();
  }

  /** Listings that a check reports, in the order of their sheet. */
  public static List<Faulty> faulty(FilledBid filled) {
    if (filled.bid().catalogue().openings().isEmpty()) {
      return List.of();
    }
    List<Work> works = filled.lines().map(FilledLine::work).toList();
    return new Openings(filled.bid().catalogue(), works)
        .listings.stream().flatMap(listing -> listing.faults().stream()).toList();
  }

  MeasuringRule rule() {
    return rule;
  }

  /** Openings listed for a line, in the order of their sheet. */
  List<Placed> of(BidLine line) {
    return byLine.getOrDefault(place(line), List.of());
  }

  private static Listing listing(Catalogue catalogue, List<Work> room, ListedOpening listed) {
    List<Work> lines = lines(catalogue, room, listed);
    List<Faulty> faults = new ArrayList<>();
    OpeningKind known = catalogue.openingKind(listed.kind()).orNull();
    OpeningKind kind = known == null ? catalogue.openingKind("opening").orNull() : known;
    if (known == null && !listed.kind().isBlank()) {
      faults.add(new Faulty(listed, Fault.UNKNOWN_KIND));
    }
    if (lines.isEmpty()) {
      faults.add(new Faulty(listed, Fault.NO_LINE));
      return new Listing(listed, lines, null, faults);
    }
    Opening opening = opening(listed, kind, lines.get(0));
    if (opening == null) {
      faults.add(new Faulty(listed, Fault.NO_SIZE));
    }
    return new Listing(listed, lines, opening, faults);
  }

  /** Null when a size is missing. */
  private static Opening opening(ListedOpening listed, OpeningKind kind, Work work) {
    boolean gap = isByLength(work.surface());
    double widthFt = stated(listed.widthFt(), kind.widthFt());
    double heightFt = gap ? work.girthIn() / 12 : stated(listed.heightFt(), kind.heightFt());
    if (!(widthFt > 0 && heightFt > 0)) {
      return null;
    }
    return new Opening(
        gap ? Opening.Role.GAP : kind.role(),
        Unit.FOOT.to(Unit.METRE, widthFt),
        Unit.FOOT.to(Unit.METRE, heightFt),
        listed.count(),
        Unit.INCH.to(Unit.METRE, listed.revealIn()),
        kind.sill(),
        listed.otherFace(),
        listed.id());
  }

  private static List<Work> lines(Catalogue catalogue, List<Work> room, ListedOpening listed) {
    Surface surface = catalogue.surface(listed.surface()).orNull();
    Set<String> coatings = new HashSet<>();
    return room.stream()
        .filter(
            work ->
                listed.surface().isBlank()
                    ? isUpright(work.surface())
                    : surface != null && work.surface().name().equals(surface.name()))
        .filter(work -> coatings.add(coating(work)))
        .toList();
  }

  private static String coating(Work work) {
    return work.coating() == null
        ? key(work.line().text(InputColumn.COATING))
        : work.coating().name();
  }

  private static boolean isUpright(Surface surface) {
    return surface.measuredBy() == MeasuredBy.PERIMETER_X_HEIGHT
        || (surface.measuredBy() == MeasuredBy.LENGTH_X_HEIGHT && !surface.joinery());
  }

  static boolean isByLength(Surface surface) {
    return surface.measuredBy() == MeasuredBy.LENGTH_X_GIRTH
        || surface.measuredBy() == MeasuredBy.COUNT_X_LENGTH_X_GIRTH;
  }

  private static double stated(double own, double usual) {
    return Double.isNaN(own) ? usual : own;
  }

  private static Object place(BidLine line) {
    return List.of(line.sheet(), line.row());
  }

  private static String key(String text) {
    return Names.key(text);
  }
}
