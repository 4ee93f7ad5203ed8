package org.wetmil.checks;

import static org.wetmil.estimate.InputColumn.PRESSURE;
import static org.wetmil.estimate.InputColumn.SPRAYER;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.wetmil.catalogue.Kind;
import org.wetmil.catalogue.Setting;
import org.wetmil.estimate.FilledBid;
import org.wetmil.estimate.Setup;
import org.wetmil.quantity.Count;
import org.wetmil.quantity.Quantity;

/** Pressure at the pump and at the gun. */
final class PressureChecks {
  static final List<Check> ALL =
      List.of(
          new Check(
              "pressure-outside",
              Severity.WARNING,
              "The pressure is outside what airless spraying takes",
              "Below it a coating does not break up; above it paint and tips are wasted.",
              Kind.PUBLISHED,
              "MIL-HDBK-1110 (UFC 3-190-06) 7.5.4.2: 1000 to 3000 psi",
              "Check the figure and its unit; the coating's usual pressure is taken.",
              Rule.ofLine(PressureChecks::outside)),
          new Check(
              "pressure-over-rating",
              Severity.WARNING,
              "The pressure is over the sprayer's rating",
              "A pump does not hold a pressure over its rating.",
              Kind.HOUSE,
              "the Sprayers sheet",
              "Lower the pressure or take another sprayer.",
              Rule.ofLine(PressureChecks::overRating)),
          new Check(
              "pressure-under-coating",
              Severity.WARNING,
              "The pressure is under what the coating needs",
              "A coating that is not broken up leaves heavy edges.",
              Kind.PRACTICE,
              "common practice for the fault; the least pressures are starting points",
              "Raise the pressure or take another sprayer.",
              Rule.ofLine(PressureChecks::underCoating)),
          new Check(
              "hose-loss",
              Severity.WARNING,
              "The hose takes the gun under the coating's least pressure",
              "What counts is the pressure at the gun, after the hose and the rise.",
              Kind.PUBLISHED,
              "Hagen-Poiseuille for the loss; the least pressures are starting points",
              "Take what the finding names: a wider or shorter hose, more pressure or a finer tip.",
              Rule.ofBid(PressureChecks::hoseLoss)),
          new Check(
              "hose-lower-bound",
              Severity.NOTE,
              "The hose loss is a lower bound",
              "The flow in the hose is not laminar, so that the real loss is higher than computed.",
              Kind.PUBLISHED,
              "textbook pipe flow, from memory: laminar up to a Reynolds number of about 2000",
              "Measure the pressure at the gun.",
              Rule.ofLine(PressureChecks::lowerBound)),
          new Check(
              "hose-not-stated",
              Severity.NOTE,
              "No hose is stated",
              "A hose takes pressure; without one the pressure at the pump counts as that at the gun.",
              Kind.HOUSE,
              "said once for a job",
              "Describe the hose on a Sprayers sheet.",
              Rule.ofBid(PressureChecks::noHose)));

  private PressureChecks() {}

  private static Optional<Fault> outside(Line line) {
    double stated = line.number(PRESSURE);
    if (Double.isNaN(stated) || isSprayable(line, stated)) {
      return Optional.empty();
    }
    double least = line.setting(Setting.LEAST_PRESSURE);
    double most = line.setting(Setting.GREATEST_PRESSURE);
    Say.Pair said = line.pair(Quantity.PRESSURE, stated, stated < least ? least : most);
    String limit = line.range(Quantity.PRESSURE, least, most);
    String taken =
        line.isSetUp()
            ? ", so " + line.say(Quantity.PRESSURE, line.filled().setPsi()) + " is set"
            : "";
    return line.found(
        PRESSURE,
        said.measured(),
        limit,
        "%s is outside the %s of airless spraying%s; check the figure and its unit."
            .formatted(said.measured(), limit, taken));
  }

  private static boolean isSprayable(Line line, double psi) {
    return psi >= line.setting(Setting.LEAST_PRESSURE)
        && psi <= line.setting(Setting.GREATEST_PRESSURE);
  }

  /** Whether the pressure set is the one that the line states. */
  private static boolean isStated(Line line) {
    return isSprayable(line, line.number(PRESSURE));
  }

  /** The pressure that the line states, else the one set: at the gun if that is where it counts. */
  private static double sprayedPsi(Line line) {
    return isAtGun(line) ? line.number(PRESSURE) : line.filled().setPsi();
  }

  private static boolean isAtGun(Line line) {
    return isStated(line) && line.filled().line().pressureAtGun();
  }

  private static Optional<Fault> overRating(Line line) {
    if (!line.isSetUp() || line.sprayer() == null) {
      return Optional.empty();
    }
    double wanted = isStated(line) ? line.number(PRESSURE) : line.coating().usualPsi();
    double rating = line.sprayer().greatestPsi();
    if (!(wanted > rating)) {
      return isAtGun(line) ? beyondHose(line, wanted, rating) : Optional.empty();
    }
    Say.Pair said = line.pair(Quantity.PRESSURE, wanted, rating);
    return line.found(
        isStated(line) ? PRESSURE : SPRAYER,
        said.measured(),
        said.limit(),
        "%s%s is over the %s that %s is rated for and that is set; take another sprayer."
            .formatted(
                isStated(line) ? "" : "The usual ",
                said.measured(),
                said.limit(),
                line.sprayer().name()));
  }

  /** A pressure wanted at the gun, which with the loss in the hose is over the rating. */
  private static Optional<Fault> beyondHose(Line line, double wanted, double rating) {
    return line.setups().stream()
        .filter(setup -> setup.gun().gunPsi() < wanted * (1 - 1e-9))
        .findFirst()
        .map(
            setup -> {
              Say.Pair said = line.pair(Quantity.PRESSURE, setup.gun().gunPsi(), wanted);
              return line.fault(
                  PRESSURE,
                  said.measured(),
                  said.limit(),
                  "The %s that %s is rated for leaves %s at the gun and not %s; %s."
                      .formatted(
                          line.say(Quantity.PRESSURE, rating),
                          line.sprayer().name(),
                          said.measured(),
                          said.limit(),
                          HoseAdvice.keeps(line, setup)
                              ? "ask for less there"
                              : "take a wider or shorter hose or another sprayer"));
            });
  }

  private static Optional<Fault> underCoating(Line line) {
    if (!line.isSetUp() || !(sprayedPsi(line) < line.coating().leastPsi())) {
      return Optional.empty();
    }
    Say.Pair said = line.pair(Quantity.PRESSURE, sprayedPsi(line), line.coating().leastPsi());
    return line.found(
        isStated(line) ? PRESSURE : SPRAYER,
        said.measured(),
        said.limit(),
        "%s is under the %s that %s needs to break up; raise it%s."
            .formatted(
                said.measured(),
                said.limit(),
                line.coating().name(),
                line.sprayer() == null ? "" : " or take another sprayer"));
  }

  private static Stream<Fault> hoseLoss(FilledBid bid) {
    HoseAdvice advice = new HoseAdvice();
    return Line.all(bid).flatMap(line -> hoseLoss(line, advice).stream());
  }

  private static Optional<Fault> hoseLoss(Line line, HoseAdvice advice) {
    if (!line.isSetUp() || sprayedPsi(line) < line.coating().leastPsi()) {
      return Optional.empty();
    }
    double least = line.coating().leastPsi();
    return line.setups().stream()
        .filter(setup -> setup.gun().gunPsi() < least)
        .findFirst()
        .map(setup -> hoseLoss(line, setup, least, advice.of(line, setup)));
  }

  private static Fault hoseLoss(Line line, Setup setup, double least, String advice) {
    Say.Pair said = line.pair(Quantity.PRESSURE, setup.gun().gunPsi(), least);
    return line.fault(
        SPRAYER,
        said.measured(),
        said.limit(),
        "Hose and rise leave %s of %s at the gun with %s, under the %s that %s needs; %s."
            .formatted(
                said.measured(),
                line.say(Quantity.PRESSURE, setup.gun().pumpPsi()),
                setup.tip().code(),
                said.limit(),
                line.coating().name(),
                advice));
  }

  private static Optional<Fault> lowerBound(Line line) {
    return line.isSetUp()
        ? line.setups().stream()
            .filter(setup -> !setup.gun().laminar())
            .findFirst()
            .map(setup -> lowerBound(line, setup))
        : Optional.empty();
  }

  private static Fault lowerBound(Line line, Setup setup) {
    String loss = line.say(Quantity.PRESSURE, setup.gun().lossPsi());
    return line.fault(
        SPRAYER,
        loss,
        "",
        "The hose loss of %s with %s is a lower bound, since the flow is not laminar; measure it."
            .formatted(loss, setup.tip().code()));
  }

  private static Stream<Fault> noHose(FilledBid bid) {
    long lines =
        Line.all(bid)
            .filter(line -> line.filled().isCounted())
            .filter(line -> line.sprayer() == null || !line.sprayer().hasHose())
            .filter(line -> !line.filled().line().pressureAtGun())
            .count();
    return lines == 0
        ? Stream.empty()
        : Stream.of(
            Fault.ofJob(
                Count.of(lines, "line"),
                "",
                ("No hose is stated for %s, so no pressure is lost on the way to the gun;"
                        + " describe it on a Sprayers sheet.")
                    .formatted(Count.of(lines, "line"))));
  }
}
