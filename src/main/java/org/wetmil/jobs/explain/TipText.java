package org.wetmil.jobs.explain;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Coating;
import org.wetmil.catalogue.Setting;
import org.wetmil.catalogue.Sprayer;
import org.wetmil.estimate.FilledLine;
import org.wetmil.estimate.Setup;
import org.wetmil.estimate.Stroke;
import org.wetmil.estimate.TipComparison;
import org.wetmil.estimate.WhyNot;
import org.wetmil.estimate.Work;
import org.wetmil.quantity.Quantity;

/** Words the choice of the tip: those that were compared in a table, the others by their reason. */
final class TipText {
  private final Catalogue catalogue;
  private final FilledLine filled;
  private final Work work;
  private final Coating coating;
  private final Stroke stroke;
  private final TipComparison comparison;

  TipText(Catalogue catalogue, FilledLine filled, TipComparison comparison) {
    this.catalogue = catalogue;
    this.filled = filled;
    this.work = filled.work();
    this.coating = work.coating();
    this.stroke = filled.stroke();
    this.comparison = comparison;
  }

  void write(Page page, int indent) {
    if (!filled.recommended().isTip()) {
      page.line(indent, 2, "No tip at hand serves: each has a reason below.");
    } else {
      page.line(
          indent,
          2,
          ("Each tip at the pace that lays the target, held between %s and %s. Wanted, in this"
                  + " order: a film inside %s; the film nearest %s (within %s counts as on"
                  + " it); the widest fan; the pace nearest %s; the smaller orifice.")
              .formatted(
                  pace(stroke.slowestInPerS()),
                  pace(stroke.fastestInPerS()),
                  range(coating.wetMinMil(), coating.wetMaxMil(), Quantity.FILM),
                  film(filled.coats().targetMil()),
                  fineStep(),
                  pace(stroke.easyInPerS())));
    }
    page.line(
        indent,
        2,
        ("A fan is twice the first digit in inches at 12 in, here at %s. Film and pace of each tip"
                + " come by the steps Flow, Gun speed and Wet film with its own orifice and fan.")
            .formatted(
                Numbers.of(
                    catalogue.number(Setting.DISTANCE), Quantity.FAN_WIDTH, filled.system())));
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("Tip", "Orifice", "Fan", "Wet film", "Pace", "Why not"));
    Map<WhyNot, List<TipComparison.Tip>> others = new LinkedHashMap<>();
    for (TipComparison.Tip tip : comparison.tips()) {
      if (tip.lost().isEmpty() || tip.lost().get().isCompared()) {
        rows.add(row(tip));
      } else {
        others.computeIfAbsent(tip.lost().get(), any -> new ArrayList<>()).add(tip);
      }
    }
    if (rows.size() > 1) {
      page.table(indent, rows);
    }
    if (!others.isEmpty()) {
      page.line(indent, 2, rows.size() > 1 ? "Not compared:" : "Not taken:");
    }
    others.forEach(
        (why, tips) ->
            page.line(
                indent + 2,
                2,
                reason(why, tips)
                    + ": "
                    + tips.stream()
                        .map(tip -> tip.code().code())
                        .collect(Collectors.joining(" "))));
    if (filled.planned() != null) {
      page.line(indent, 2, planned());
    }
  }

  /** The setting is a natural logarithm; one that small is the share itself, near enough. */
  private String fineStep() {
    double share = Math.exp(catalogue.number(Setting.FINE_STEP)) - 1;
    return "a factor of " + Numbers.plain(Math.round(1000 * (1 + share)) / 1000.0);
  }

  private String planned() {
    String code = filled.planned().tip().code();
    if (filled.planned().tip().equals(filled.recommended().tip())) {
      return "Planned: " + code + ", the same.";
    }
    return "Planned: %s. Film, paint and hours follow the %s tip (setting Figures follow)."
        .formatted(code, filled.followed() == filled.recommended() ? "recommended" : "planned");
  }

  private List<String> row(TipComparison.Tip tip) {
    Setup setup = tip.setup();
    return List.of(
        tip.code().code(),
        Numbers.of(tip.code().orificeThou(), Quantity.ORIFICE, filled.system()),
        Numbers.of(setup.fanIn(), Quantity.FAN_WIDTH, filled.system()),
        film(setup.wetMil()),
        pace(setup.speedInPerS()),
        tip.lost().map(why -> compared(why, setup)).orElse("taken"));
  }

  private String film(double mil) {
    return Numbers.brief(mil, Quantity.FILM, filled.system());
  }

  private String pace(double inPerS) {
    return Numbers.brief(inPerS, Quantity.GUN_SPEED, filled.system());
  }

  private String thou(double thou) {
    return Numbers.of(thou, Quantity.ORIFICE, filled.system());
  }

  private String range(double low, double high, Quantity quantity) {
    return Numbers.brief(low, quantity, filled.system())
        + " to "
        + Numbers.brief(high, quantity, filled.system());
  }

  private String compared(WhyNot why, Setup setup) {
    return switch (why) {
      case FILM_OUTSIDE -> "film outside" + held(setup);
      case FILM_FURTHER -> "film further off" + held(setup);
      case FINER_NO_NEARER -> "finer than usual, and its film is no nearer";
      case NARROWER_FAN -> "narrower fan";
      case PACE_FURTHER -> "pace further from the easy one";
      case LARGER_ORIFICE -> "larger orifice, the rest alike";
      default -> throw new IllegalArgumentException(why.name());
    };
  }

  /** A film is off its target where the pace for it is outside the band. */
  private String held(Setup setup) {
    double wanted = setup.speedInPerS() * setup.wetMil() / filled.coats().targetMil();
    boolean inside = wanted <= stroke.fastestInPerS() && wanted >= stroke.slowestInPerS();
    return inside ? "" : ": wants " + pace(wanted);
  }

  private String reason(WhyNot why, List<TipComparison.Tip> tips) {
    Sprayer sprayer = work.sprayer();
    return switch (why) {
      case NOT_AT_HAND -> catalogue.tipsOnHand().isEmpty() ? "Not in Stock tips" : "Not on hand";
      case NO_GUARD -> "No guard on hand takes them";
      case BELOW_LEAST ->
          "Orifice under " + thou(coating.leastOrificeThou()) + ", the least for " + coating.name();
      case ABOVE_GREATEST ->
          "Orifice over "
              + thou(coating.orificeToThou())
              + ", the greatest usual for "
              + coating.name();
      case FINER_NOT_NEEDED ->
          "Orifice under "
              + thou(from())
              + ", finer than usual for "
              + coating.name()
              + " and not needed";
      case ABOVE_SPRAYER ->
          "Orifice over the "
              + thou(sprayer.greatestOrificeThou())
              + " that "
              + sprayer.name()
              + " takes";
      case PAST_PUMP -> pump(sprayer, tips);
      case NO_FLOW -> "Nothing reaches the gun: hose and lift take the whole pressure";
      case WIDER_THAN_SUITS ->
          "Fan wider than suits "
              + work.surface().name()
              + " (first digit over "
              + work.surface().widestFanDigit()
              + ")";
      case WIDER_THAN_WORK -> "Fan wider than the work, " + width(1);
      case NOT_NARROWEST -> "All fans are too wide, and these are not the narrowest";
      case DOES_NOT_COVER ->
          "Fan under "
              + width(catalogue.number(Setting.NARROW_FIT))
              + ", which does not cover the work in one stroke";
      case WIDER_THAN_NEEDED -> "Wider than the narrowest fan that covers the work";
      case NOT_WIDEST -> "No fan covers the work, and these are not the widest";
      default -> throw new IllegalArgumentException(why.name());
    };
  }

  private double from() {
    return work.surface().joinery() ? coating.joineryFromThou() : coating.orificeFromThou();
  }

  private String width(double share) {
    return Numbers.brief(share * stroke.widthIn(), Quantity.FAN_WIDTH, filled.system());
  }

  private String pump(Sprayer sprayer, List<TipComparison.Tip> tips) {
    double least =
        tips.stream().mapToDouble(tip -> tip.setup().gun().flowGpm()).min().orElseThrow();
    double guns = Double.isNaN(sprayer.guns()) ? catalogue.number(Setting.GUNS) : sprayer.guns();
    double wanted = guns * least * catalogue.number(Setting.PUMP_RESERVE);
    return "The pump gives %s; %s with these %s %s or more, Pump reserve included"
        .formatted(
            Numbers.brief(sprayer.greatestFlowGpm(), Quantity.FLOW, filled.system()),
            Numbers.plain(guns) + (guns == 1 ? " gun" : " guns"),
            guns == 1 ? "wants" : "want",
            Numbers.brief(wanted, Quantity.FLOW, filled.system()));
  }
}
