package org.wetmil.checks;

import static org.wetmil.estimate.InputColumn.COATING;
import static org.wetmil.estimate.InputColumn.GIRTH;
import static org.wetmil.estimate.InputColumn.HEIGHT;
import static org.wetmil.estimate.InputColumn.TIP;
import static org.wetmil.estimate.InputColumn.WIDTH;

import java.util.List;
import java.util.Optional;
import org.wetmil.catalogue.Kind;
import org.wetmil.catalogue.Narrowest;
import org.wetmil.catalogue.Setting;
import org.wetmil.estimate.Setup;
import org.wetmil.estimate.Stroke;
import org.wetmil.quantity.Quantity;
import org.wetmil.trade.Film;

/** The film that a tip lays at a pace that a hand can keep. */
final class FilmChecks {
  static final List<Check> ALL =
      List.of(
          new Check(
              "film-too-thick",
              Severity.WARNING,
              "The planned tip lays too thick a film",
              "A film over what the coating takes in one coat runs and dries badly.",
              Kind.HOUSE,
              "the coating's greatest wet film; its data sheet wins",
              "Take a finer orifice or a wider fan.",
              Rule.ofLine(line -> line.plannedOther().flatMap(setup -> thick(line, setup)))),
          new Check(
              "film-too-thin",
              Severity.WARNING,
              "The planned tip lays too thin a film",
              "A film under the least of the coating does not cover or protect.",
              Kind.HOUSE,
              "the coating's least wet film; its data sheet wins",
              "Take a larger orifice or a narrower fan.",
              Rule.ofLine(line -> line.plannedOther().flatMap(setup -> thin(line, setup)))),
          new Check(
              "gun-speed",
              Severity.WARNING,
              "The planned tip asks for a pace no hand keeps",
              "The film is laid by the pace; outside the comfortable band it will not be kept.",
              Kind.HOUSE,
              "settings Broad and Joinery slowest, fastest; a film as near as Fine step is let pass",
              "Take a tip that lays the film at a comfortable pace.",
              Rule.ofLine(line -> line.plannedOther().flatMap(setup -> pace(line, setup)))),
          new Check(
              "film-out-of-reach",
              Severity.WARNING,
              "No tip at hand lays the film",
              "The recommended tip is the nearest there is, and its film is outside the range.",
              Kind.HOUSE,
              "the coating's least and greatest wet film; its data sheet wins",
              "Change the coats, the pressure or the tips on hand.",
              Rule.ofLine(
                  line ->
                      line.recommended()
                          .filter(setup -> line.isMeasured())
                          .filter(setup -> !setup.inside() && setup.gun().flowGpm() > 0)
                          .map(setup -> outOfReach(line, setup)))),
          new Check(
              "narrow-step",
              Severity.NOTE,
              "The work is about as wide as one stroke covers",
              "At that width the figures make a step, from one stroke to strokes that overlap.",
              Kind.HOUSE,
              "setting Narrow work; within a tenth of it",
              "Decide how it will be sprayed; change the setting Narrow work if it is the other way.",
              Rule.ofLine(FilmChecks::narrowStep)));

  private FilmChecks() {}

  private static Optional<Fault> narrowStep(Line line) {
    if (!line.isSetUp() || line.surface().narrowest() instanceof Narrowest.Fixed) {
      return Optional.empty();
    }
    double widthIn = line.filled().stroke().widthIn();
    double stepIn = line.setting(Setting.NARROW_WORK);
    double overlap = line.setting(Setting.OVERLAP);
    if (!(Math.abs(widthIn / stepIn - 1) <= CheckLimits.NEAR_NARROW.value() + 1e-9)
        || !(overlap > 0)) {
      return Optional.empty();
    }
    boolean narrow = line.filled().stroke().narrow();
    Say.Pair said = line.pair(Quantity.GIRTH, widthIn, stepIn);
    String times = Say.number(1 / (1 - overlap), 1);
    return line.found(
        switch ((Narrowest.Of) line.surface().narrowest()) {
          case GIRTH, HALF_GIRTH -> GIRTH;
          case HEIGHT -> HEIGHT;
          case WIDTH, LESSER -> WIDTH;
        },
        said.measured(),
        said.limit(),
        narrow
            ? "Work %s wide counts as one stroke, as all up to %s; where it takes overlapping strokes, spraying takes about %s times as long."
                .formatted(said.measured(), said.limit(), times)
            : "Work %s wide counts as overlapping strokes, as all over %s; where one stroke does it, spraying takes about %s of the time."
                .formatted(said.measured(), said.limit(), Say.percent(1 - overlap)));
  }

  private static Optional<Fault> thick(Line line, Setup setup) {
    double most = line.coating().wetMaxMil();
    return setup.inside() || setup.wetMil() < most
        ? Optional.empty()
        : film(line, setup, most, "over the", "takes");
  }

  private static Optional<Fault> thin(Line line, Setup setup) {
    double least = line.coating().wetMinMil();
    return setup.inside() || setup.wetMil() > least
        ? Optional.empty()
        : film(line, setup, least, "under the", "needs");
  }

  private static Optional<Fault> film(
      Line line, Setup setup, double limitMil, String beyond, String does) {
    Say.Pair said = line.pair(Quantity.FILM, setup.wetMil(), limitMil);
    return line.found(
        TIP,
        said.measured(),
        said.limit(),
        "%s lays %s wet even at %s (the target takes %s), %s %s that %s %s in one coat%s"
            .formatted(
                setup.tip().code(),
                said.measured(),
                line.say(Quantity.GUN_SPEED, setup.speedInPerS()),
                line.say(Quantity.GUN_SPEED, wantedInPerS(line, setup)),
                beyond,
                said.limit(),
                line.coating().name(),
                does,
                line.instead()));
  }

  /** The pace that would lay the target. */
  private static double wantedInPerS(Line line, Setup setup) {
    return Film.speedInPerS(
        setup.gun().flowGpm(),
        line.surface().stick(),
        line.filled().coats().targetMil(),
        setup.fanIn(),
        line.filled().stroke().overlap());
  }

  /** A pace out of the band whose film is still inside; a film outside says its pace itself. */
  private static Optional<Fault> pace(Line line, Setup setup) {
    Stroke stroke = line.filled().stroke();
    double targetMil = line.filled().coats().targetMil();
    double off = Math.abs(Math.log(setup.wetMil() / targetMil));
    if (!setup.inside() || off <= line.setting(Setting.FINE_STEP)) {
      return Optional.empty();
    }
    String measured = line.say(Quantity.GUN_SPEED, wantedInPerS(line, setup));
    String limit = line.range(Quantity.GUN_SPEED, stroke.slowestInPerS(), stroke.fastestInPerS());
    return line.found(
        TIP,
        measured,
        limit,
        "%s would have to move at %s to lay %s wet, outside the comfortable %s%s"
            .formatted(
                setup.tip().code(),
                measured,
                line.say(Quantity.FILM, targetMil),
                limit,
                line.instead()));
  }

  private static Fault outOfReach(Line line, Setup setup) {
    boolean thick = setup.wetMil() > line.coating().wetMaxMil();
    double limitMil = thick ? line.coating().wetMaxMil() : line.coating().wetMinMil();
    Say.Pair said = line.pair(Quantity.FILM, setup.wetMil(), limitMil);
    return line.fault(
        COATING,
        said.measured(),
        said.limit(),
        "The nearest tip, %s, lays %s wet even at the %s comfortable %s, %s the %s of %s; %s."
            .formatted(
                setup.tip().code(),
                said.measured(),
                thick ? "fastest" : "slowest",
                line.say(Quantity.GUN_SPEED, setup.speedInPerS()),
                thick ? "over" : "under",
                said.limit(),
                line.coating().name(),
                thick
                    ? "lower the pressure or have a finer or wider tip on hand"
                    : "plan more coats or have a larger or narrower tip on hand"));
  }
}
