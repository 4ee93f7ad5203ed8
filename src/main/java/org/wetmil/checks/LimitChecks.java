package org.wetmil.checks;

import java.util.List;
import java.util.stream.Stream;
import org.wetmil.catalogue.Entry;
import org.wetmil.catalogue.Kind;
import org.wetmil.catalogue.Quoted;
import org.wetmil.estimate.FilledBid;
import org.wetmil.estimate.limits.FilmArea;
import org.wetmil.estimate.limits.FilmSpot;
import org.wetmil.estimate.limits.VocUse;
import org.wetmil.quantity.Count;
import org.wetmil.quantity.Quantity;
import org.wetmil.quantity.UnitSystem;
import org.wetmil.trade.FilmAcceptance;

/** Gauge readings against the specification, and solvents against published limits. */
final class LimitChecks {
  static final List<Check> ALL =
      List.of(
          new Check(
              "film-average",
              Severity.WARNING,
              "The film measured is outside the specification",
              "A film that is too thin protects less, one that is too thick may crack or stay soft.",
              Kind.PUBLISHED,
              "coating practice standard of 2012 as quoted by others: 80 to 120 % of a single value",
              "Measure again near by; then another coat, or ask who specified it.",
              Rule.ofBid(LimitChecks::average)),
          new Check(
              "film-spot",
              Severity.WARNING,
              "A spot measured is outside what is accepted of one",
              "An average can hide spots that are bare or that run.",
              Kind.PUBLISHED,
              "coating practice standard, from memory: 80 % of the least to 120 % of the most",
              "Measure outwards from it until two spots conform, and mend what does not.",
              Rule.ofBid(LimitChecks::spots)),
          new Check(
              "film-readings-few",
              Severity.NOTE,
              "There are few readings for an average",
              "A spot is the mean of three readings, an area that of five spots.",
              Kind.PUBLISHED,
              "coating practice standard as told in an article: five spots in each 100 ft² or so",
              "Read more spots.",
              Rule.ofBid(LimitChecks::few)),
          new Check(
              "film-not-judged",
              Severity.NOTE,
              "Film readings are not judged",
              "Without a line that specifies a film there is nothing to hold them against.",
              Kind.HOUSE,
              "room and surface of the readings against those of the lines",
              "Name room and surface as the line does, and state its Specified dry film.",
              Rule.ofBid(LimitChecks::notJudged)),
          new Check(
              "voc-over-limit",
              Severity.WARNING,
              "A coating as thinned has more solvent than its category allows",
              "It may not be allowed here, and local rules are often stricter.",
              Kind.PUBLISHED,
              "40 CFR 59 subpart D and 2004/42/CE by category, or a row of your own",
              "Thin less or take another product; check your local rule.",
              Rule.ofBid(LimitChecks::vocOver)),
          new Check(
              "voc-not-judged",
              Severity.NOTE,
              "A coating's solvent is not judged",
              "Its category is stated, and the figure or the limit is missing.",
              Kind.HOUSE,
              "the Coatings and VOC limits sheets",
              "State VOC as the data sheet has it, and a category of the VOC limits.",
              Rule.ofBid(LimitChecks::vocNotJudged)));

  private LimitChecks() {}

  private static Stream<Fault> average(FilledBid bid) {
    UnitSystem system = bid.bid().system();
    return FilmArea.all(bid).stream()
        .filter(
            area ->
                area.accepted()
                    .filter(a -> a.isUnder(area.meanMil()) || a.isOver(area.meanMil()))
                    .isPresent())
        .map(
            area -> {
              FilmAcceptance accepted = area.accepted().orElseThrow();
              boolean under = accepted.isUnder(area.meanMil());
              Say.Pair said =
                  Say.pair(
                      Quantity.FILM,
                      area.meanMil(),
                      under ? accepted.leastMil() : accepted.mostMil(),
                      system);
              return fault(
                  area,
                  area.spots().get(0),
                  said.measured(),
                  Say.range(Quantity.FILM, accepted.leastMil(), accepted.mostMil(), system),
                  "The readings average %s dry, %s the %s accepted of %s."
                      .formatted(
                          said.measured(), under ? "under" : "over", said.limit(), place(area)));
            });
  }

  private static Stream<Fault> spots(FilledBid bid) {
    return FilmArea.all(bid).stream()
        .flatMap(area -> area.spotsOutside().stream().map(spot -> spot(bid, area, spot)));
  }

  private static Fault spot(FilledBid bid, FilmArea area, FilmSpot spot) {
    UnitSystem system = bid.bid().system();
    FilmAcceptance accepted = area.accepted().orElseThrow();
    boolean under = spot.meanMil() < accepted.leastSpotMil();
    Say.Pair said =
        Say.pair(
            Quantity.FILM,
            spot.meanMil(),
            under ? accepted.leastSpotMil() : accepted.mostSpotMil(),
            system);
    return fault(
        area,
        spot,
        said.measured(),
        Say.range(Quantity.FILM, accepted.leastSpotMil(), accepted.mostSpotMil(), system),
        "A spot of %s has %s dry, %s the %s accepted of a spot."
            .formatted(place(area), said.measured(), under ? "under" : "over", said.limit()));
  }

  private static Stream<Fault> few(FilledBid bid) {
    return FilmArea.all(bid).stream()
        .filter(area -> area.accepted().isPresent())
        .filter(
            area ->
                area.spots().size() < area.spotsWanted()
                    || area.spots().stream()
                        .anyMatch(spot -> spot.rows().size() < FilmAcceptance.READINGS_OF_SPOT))
        .map(
            area -> {
              int spots = Math.max(area.spotsWanted(), area.spots().size());
              int wanted = FilmAcceptance.READINGS_OF_SPOT * spots;
              String measured = Count.of(area.readings(), "reading");
              return fault(
                  area,
                  area.spots().get(0),
                  measured,
                  wanted + " readings",
                  "%s %s in %s of %s, where a surface of its size is judged by %s of %s each."
                      .formatted(
                          measured,
                          area.readings() == 1 ? "stands" : "stand",
                          Count.of(area.spots().size(), "spot"),
                          place(area),
                          Count.of(spots, "spot"),
                          Count.of(FilmAcceptance.READINGS_OF_SPOT, "reading")));
            });
  }

  private static Stream<Fault> notJudged(FilledBid bid) {
    return FilmArea.all(bid).stream()
        .filter(area -> area.accepted().isEmpty())
        .map(
            area ->
                fault(
                    area,
                    area.spots().get(0),
                    Count.of(area.readings(), "reading"),
                    "",
                    area.known()
                        ? "%s of %s cannot be judged, since no line specifies its dry film."
                            .formatted(Count.of(area.readings(), "reading"), place(area))
                        : "%s of %s cannot be judged, since no line of the bid is for it."
                            .formatted(Count.of(area.readings(), "reading"), place(area))));
  }

  private static String place(FilmArea area) {
    return Quoted.of(area.surface().isEmpty() ? area.room() : area.room() + ": " + area.surface());
  }

  private static Fault fault(
      FilmArea area, FilmSpot spot, String measured, String limit, String message) {
    Entry reading = spot.rows().get(0).get("Reading");
    return new Fault(
        Spot.of(reading), area.room(), area.surface(), measured, limit, message, false);
  }

  private static Stream<Fault> vocOver(FilledBid bid) {
    return VocUse.all(bid).stream()
        .filter(VocUse::isOver)
        .map(
            use -> {
              Say.Pair said =
                  Say.pair(
                      Quantity.CONCENTRATION, use.thinnedGL(), use.limitGL(), bid.bid().system());
              return Fault.at(
                  Spot.of(use.coating().row().get("VOC category")),
                  said.measured(),
                  said.limit(),
                  "%s%s has %s of VOC, over the %s of %s (%s); check your local rule, which may be stricter."
                      .formatted(
                          use.coating().name(),
                          use.thinnerShare() > 0
                              ? " thinned by " + Say.percent(use.thinnerShare())
                              : "",
                          said.measured(),
                          said.limit(),
                          use.category(),
                          rule(use)));
            });
  }

  private static String rule(VocUse use) {
    String rule = use.limit().text("Rule");
    return rule.isEmpty() ? "your limit" : rule;
  }

  private static Stream<Fault> vocNotJudged(FilledBid bid) {
    return VocUse.all(bid).stream()
        .filter(use -> !use.isJudged())
        .map(
            use ->
                Fault.at(
                    Spot.of(use.coating().row().get("VOC category")),
                    Quoted.of(use.category()),
                    "",
                    use.limit() == null
                        ? "No VOC limit is called %s; name a category of the VOC limits."
                            .formatted(Quoted.of(use.category()))
                        : "%s states no VOC as %s counts it (%s); take it from the data sheet."
                            .formatted(
                                use.coating().name(),
                                Quoted.of(use.category()),
                                use.limit().text("Counted"))));
  }
}
