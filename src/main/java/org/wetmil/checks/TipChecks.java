package org.wetmil.checks;

import static org.wetmil.estimate.InputColumn.COATING;
import static org.wetmil.estimate.InputColumn.TIP;

import java.util.List;
import java.util.Optional;
import org.wetmil.catalogue.Kind;
import org.wetmil.catalogue.Setting;
import org.wetmil.catalogue.Sprayer;
import org.wetmil.estimate.InputColumn;
import org.wetmil.estimate.Setup;
import org.wetmil.estimate.job.TipSwitch;
import org.wetmil.quantity.Quantity;
import org.wetmil.trade.FilterMesh;

/** Orifice and fan against the coating, the surface and the machine. */
final class TipChecks {
  static final List<Check> ALL =
      List.of(
          new Check(
              "orifice-too-fine",
              Severity.WARNING,
              "The planned orifice is finer than usual for the coating",
              "A fine orifice clogs and takes more pressure than a thick coating lets through.",
              Kind.PRACTICE,
              "common practice: a range of orifices for each coating; its ends are starting points",
              "Take a larger orifice, or a finer filter and a trial.",
              Rule.ofLine(TipChecks::tooFine)),
          new Check(
              "orifice-too-coarse",
              Severity.WARNING,
              "The planned orifice is coarser than usual for the coating",
              "Too large an orifice on a thin coating floods the surface and sags.",
              Kind.PUBLISHED,
              "MIL-HDBK-1110 (UFC 3-190-06) 7.5.4.2 for the fault; the ranges are common practice",
              "Take a finer orifice.",
              Rule.ofLine(TipChecks::tooCoarse)),
          new Check(
              "finer-filter",
              Severity.NOTE,
              "The recommended orifice is finer than usual and wants a finer filter",
              "Of the tips at hand only a fine orifice lays the film, and it clogs sooner.",
              Kind.HOUSE,
              "setting Filter share",
              "Strain the coating and fit the filter named.",
              Rule.ofLine(TipChecks::finerFilter)),
          new Check(
              "fan-too-wide",
              Severity.WARNING,
              "The planned fan is too wide for the work",
              "What a fan throws past the work is lost and has to be masked against.",
              Kind.HOUSE,
              "the Surfaces table and setting Narrow fit",
              "Take a narrower fan.",
              Rule.ofLine(TipChecks::fanTooWide)),
          new Check(
              "tip-over-sprayer",
              Severity.WARNING,
              "The planned tip is larger than the sprayer takes",
              "A pump cannot hold its pressure at a tip over its rating.",
              Kind.HOUSE,
              "the Sprayers sheet",
              "Take a finer orifice or another sprayer.",
              Rule.ofLine(TipChecks::overSprayer)),
          new Check(
              "planned-against-recommended",
              Severity.NOTE,
              "The planned tip is not the recommended one",
              "Film, pace, time and paint of both show what switching would change.",
              Kind.DERIVED,
              "both tips by the same laws",
              "Keep the planned tip if its film and pace suit you, else switch.",
              Rule.ofLine(TipChecks::otherPlanned)));

  private TipChecks() {}

  private static Optional<Fault> tooFine(Line line) {
    return Optional.ofNullable(line.filled().planned())
        .filter(Setup::belowUsual)
        .filter(planned -> !isAsRecommended(line, planned))
        .map(planned -> outside(line, planned, line.leastUsualThou(), "finer"));
  }

  /** Where a fine orifice is recommended itself, the note about the filter says all. */
  private static boolean isAsRecommended(Line line, Setup planned) {
    return line.recommended()
        .filter(Setup::belowUsual)
        .filter(setup -> planned.tip().orificeThou() >= setup.tip().orificeThou())
        .isPresent();
  }

  private static Optional<Fault> tooCoarse(Line line) {
    return Optional.ofNullable(line.filled().planned())
        .filter(planned -> planned.tip().orificeThou() > line.coating().orificeToThou())
        .map(planned -> outside(line, planned, line.coating().orificeToThou(), "coarser"));
  }

  private static Fault outside(Line line, Setup planned, int limitThou, String than) {
    String measured = line.say(Quantity.ORIFICE, planned.tip().orificeThou());
    String limit = line.say(Quantity.ORIFICE, limitThou);
    return line.fault(
        TIP,
        measured,
        limit,
        "The %s of %s is %s than the %s at which the usual range for %s %s%s"
            .formatted(
                measured,
                planned.tip().code(),
                than,
                limit,
                line.coating().name(),
                than.equals("finer") ? "begins" : "ends",
                line.instead()));
  }

  private static Optional<Fault> finerFilter(Line line) {
    return line.recommended()
        .filter(setup -> line.isMeasured() && setup.belowUsual())
        .map(
            setup -> {
              String measured = line.say(Quantity.ORIFICE, setup.tip().orificeThou());
              String limit = line.say(Quantity.ORIFICE, line.leastUsualThou());
              String filter =
                  coarsestMesh(line, setup)
                      .map(mesh -> "fit a filter of " + mesh.number() + " mesh or finer")
                      .orElse("strain it well");
              return line.fault(
                  COATING,
                  measured,
                  limit,
                  "The recommended %s of %s is finer than the usual %s for %s; %s."
                      .formatted(
                          measured, setup.tip().code(), limit, line.coating().name(), filter));
            });
  }

  /** The coarsest filter that holds back what would clog a tip; empty when none is fine enough. */
  static Optional<FilterMesh> coarsestMesh(Line line, Setup setup) {
    return FilterMesh.coarsestFor(setup.tip().orificeThou(), line.setting(Setting.FILTER_SHARE));
  }

  private static Optional<Fault> fanTooWide(Line line) {
    Setup planned = line.filled().planned();
    if (planned == null) {
      return Optional.empty();
    }
    double widthIn = line.filled().stroke().widthIn();
    if (line.filled().stroke().narrow()) {
      return line.recommended()
          .filter(setup -> planned.tip().fanDigit() > setup.tip().fanDigit())
          .map(
              setup ->
                  wide(line, planned, setup.fanIn(), "that suits work " + work(line, widthIn)));
    }
    if (!line.filled().stroke().isInside(planned.fanIn())) {
      return Optional.of(wide(line, planned, widthIn, "of the work"));
    }
    int widest = line.surface().widestFanDigit();
    double widestIn = planned.fanIn() * widest / planned.tip().fanDigit();
    return planned.tip().fanDigit() > widest
        ? Optional.of(wide(line, planned, widestIn, "that suits " + line.surface().name()))
        : Optional.empty();
  }

  private static String work(Line line, double widthIn) {
    return line.say(Quantity.GIRTH, widthIn) + " wide";
  }

  private static Fault wide(Line line, Setup planned, double limitIn, String of) {
    Say.Pair said = line.pair(Quantity.FAN_WIDTH, planned.fanIn(), limitIn);
    return line.fault(
        TIP,
        said.measured(),
        said.limit(),
        "The %s fan of %s is wider than the %s %s%s"
            .formatted(said.measured(), planned.tip().code(), said.limit(), of, line.instead()));
  }

  private static Optional<Fault> otherPlanned(Line line) {
    return TipSwitch.of(line.filled())
        .map(
            both -> {
              String planned = side(line, both.planned());
              String recommended = side(line, both.recommended());
              return line.fault(
                  TIP,
                  planned,
                  recommended,
                  "Planned %s; recommended %s.".formatted(planned, recommended));
            });
  }

  private static String side(Line line, TipSwitch.Side side) {
    return "%s: %s wet, %s, %s min, %s"
        .formatted(
            side.setup().tip().code(),
            line.say(Quantity.FILM, side.setup().wetMil()),
            line.say(Quantity.GUN_SPEED, side.setup().speedInPerS()),
            Say.number(60 * side.sprayHours(), 0),
            line.say(Quantity.VOLUME, side.paintGal()));
  }

  private static Optional<Fault> overSprayer(Line line) {
    Setup planned = line.filled().planned();
    Sprayer sprayer = line.sprayer();
    if (planned == null
        || sprayer == null
        || !(planned.tip().orificeThou() > sprayer.greatestOrificeThou())) {
      return Optional.empty();
    }
    Say.Pair said =
        line.pair(Quantity.ORIFICE, planned.tip().orificeThou(), sprayer.greatestOrificeThou());
    return line.found(
        InputColumn.TIP,
        said.measured(),
        said.limit(),
        "The %s of %s is over the %s that %s takes%s"
            .formatted(
                said.measured(),
                planned.tip().code(),
                said.limit(),
                sprayer.name(),
                line.instead()));
  }
}
