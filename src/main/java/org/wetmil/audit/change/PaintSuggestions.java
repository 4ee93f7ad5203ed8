package org.wetmil.audit.change;

import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Function;
import org.wetmil.audit.past.PastLine;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Coating;
import org.wetmil.catalogue.Names;
import org.wetmil.catalogue.Surface;
import org.wetmil.catalogue.Tables;
import org.wetmil.quantity.Quantity;

/** Paint factors as figures of one table; each figure's factor is that of the paint (derived). */
final class PaintSuggestions {
  /** Name of the table of losses by coating and surface. */
  static final String LOSSES = "Losses";

  private static final String STICK = "Stick";

  private final Factors factors;
  private final Catalogue catalogue;

  PaintSuggestions(Factors factors, Catalogue catalogue) {
    this.factors = factors;
    this.catalogue = catalogue;
  }

  List<Suggestion> in(PaintTable table) {
    return switch (table) {
      case LOSS -> each(line -> new Pair(line.coating(), line.surface()), this::loss);
      case FILM -> each(line -> new Pair(line.coating(), ""), this::film);
      case AREA -> each(line -> new Pair("", line.surface()), this::area);
    };
  }

  /** Paint goes as one over the share that stays on. */
  private Optional<Suggestion> loss(Pair pair) {
    Surface surface = catalogue.surface(pair.surface()).orNull();
    if (surface == null || pair.coating().isBlank()) {
      return Optional.empty();
    }
    Bounds bounds =
        Bounds.of(catalogue, Tables.SURFACES, STICK)
            .atMost(Bounds.GREATEST_TRANSFER / surface.hit());
    double now = stick(pair, surface);
    double wanted = now / factors.factor(pair.coating(), pair.surface());
    return Optional.of(suggest(LOSSES, pair, STICK, Quantity.SHARE, now, wanted, bounds));
  }

  /** The stick of the pair, where the tables have one already; the coating may be a bid's own. */
  private double stick(Pair pair, Surface surface) {
    return catalogue.rows(Tables.LOSSES).stream()
        .filter(loss -> Names.key(loss.text("Coating")).equals(Names.key(pair.coating())))
        .filter(loss -> Names.key(loss.text("Surface")).equals(Names.key(pair.surface())))
        .map(loss -> loss.number(STICK))
        .reduce((first, last) -> last)
        .filter(stick -> stick > 0)
        .orElse(surface.stick());
  }

  /** Paint goes with the film. */
  private Optional<Suggestion> film(Pair pair) {
    Coating coating = catalogue.coating(pair.coating()).orNull();
    if (coating == null) {
      return Optional.empty();
    }
    Bounds bounds = new Bounds(coating.wetMinMil(), coating.wetMaxMil());
    double now = coating.wetTargetMil();
    double wanted = now * factors.factor(pair.coating(), "");
    return Optional.of(
        suggest(
            Tables.COATINGS.title(), pair, "Wet film target", Quantity.FILM, now, wanted, bounds));
  }

  /** Paint goes with the true area. */
  private Optional<Suggestion> area(Pair pair) {
    Surface surface = catalogue.surface(pair.surface()).orNull();
    if (surface == null) {
      return Optional.empty();
    }
    Bounds bounds = Bounds.of(catalogue, Tables.SURFACES, "Factor");
    double now = surface.factor();
    double wanted = now * factors.factor("", pair.surface());
    return Optional.of(
        suggest(Tables.SURFACES.title(), pair, "Factor", Quantity.NUMBER, now, wanted, bounds));
  }

  private Suggestion suggest(
      String table,
      Pair pair,
      String column,
      Quantity quantity,
      double now,
      double wanted,
      Bounds bounds) {
    return new Suggestion(
        factors.measure(),
        table,
        pair.coating(),
        pair.surface(),
        "",
        column,
        quantity,
        now,
        bounds.hold(wanted),
        factors.factor(pair.coating(), pair.surface()),
        factors.likely(pair.coating(), pair.surface()),
        factors.jobs(pair.coating(), pair.surface()),
        !bounds.holds(wanted));
  }

  private List<Suggestion> each(
      Function<PastLine, Pair> key, Function<Pair, Optional<Suggestion>> suggest) {
    TreeSet<Pair> pairs = new TreeSet<>();
    factors.lines().map(key).forEach(pairs::add);
    return pairs.stream().map(suggest).flatMap(Optional::stream).toList();
  }

  /** A coating on a surface; an empty name is any. */
  private record Pair(String coating, String surface) implements Comparable<Pair> {
    @Override
    public int compareTo(Pair other) {
      int byCoating = coating.compareTo(other.coating);
      return byCoating != 0 ? byCoating : surface.compareTo(other.surface);
    }
  }
}
