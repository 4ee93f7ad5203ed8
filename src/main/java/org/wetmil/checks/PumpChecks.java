package org.wetmil.checks;

import static org.wetmil.estimate.InputColumn.SPRAYER;
import static org.wetmil.estimate.InputColumn.TIP;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.wetmil.catalogue.BucketTest;
import org.wetmil.catalogue.Kind;
import org.wetmil.catalogue.Setting;
import org.wetmil.catalogue.Sprayer;
import org.wetmil.estimate.Setup;
import org.wetmil.quantity.Quantity;
import org.wetmil.trade.FilterMesh;
import org.wetmil.trade.Flow;

/** Flow against the pump and the filter. */
final class PumpChecks {
  static final List<Check> ALL =
      List.of(
          new Check(
              "flow-beyond-pump",
              Severity.WARNING,
              "The planned tip passes more than the pump gives",
              "A pump that cannot keep up drops its pressure, and the fan breaks up into fingers.",
              Kind.HOUSE,
              "the Sprayers sheet and setting Pump reserve",
              "Take a finer orifice or a larger pump.",
              Rule.ofLine(PumpChecks::beyondPump)),
          new Check(
              "guns-past-pump",
              Severity.WARNING,
              "The guns together pass more than the pump gives",
              "One gun alone is within the pump; all together drop its pressure.",
              Kind.HOUSE,
              "the Sprayers sheet and settings Guns and Pump reserve",
              "Run fewer guns, or finer orifices on each.",
              Rule.ofLine(PumpChecks::gunsPastPump)),
          new Check(
              "filter-too-coarse",
              Severity.WARNING,
              "The filter is coarser than the orifice allows",
              "What passes the filter and not the tip clogs it.",
              Kind.HOUSE,
              "setting Filter share; openings of ASTM E11, from memory",
              "Fit the filter named, or a finer one that the coating passes.",
              Rule.ofLine(PumpChecks::filter)),
          new Check(
              "no-tip",
              Severity.WARNING,
              "No tip at hand serves the line",
              "Paint and hours then rest on the target film at an easy pace.",
              Kind.HOUSE,
              "tips on hand or in stock, within the limits of the sprayer",
              "Have a tip of the size named, or take another sprayer.",
              Rule.ofLine(PumpChecks::noTip)),
          new Check(
              "bucket-test-high",
              Severity.WARNING,
              "A bucket test shows more than an ideal orifice passes",
              "No orifice passes more than its diameter lets through: the tip is worn or a mark wrong.",
              Kind.PUBLISHED,
              "the orifice equation with a discharge coefficient of 1",
              "Repeat the test with a new tip and a good gauge.",
              Rule.ofBid(
                  bid ->
                      Line.all(bid)
                          .filter(Line::isSetUp)
                          .flatMap(line -> bucketTest(line).stream())
                          .distinct())));

  private PumpChecks() {}

  private static double reservedGpm(Line line, Setup setup, double guns) {
    return guns * setup.gun().flowGpm() * line.setting(Setting.PUMP_RESERVE);
  }

  private static Optional<Fault> beyondPump(Line line) {
    Sprayer sprayer = line.sprayer();
    return line.planned()
        .filter(setup -> sprayer != null)
        .filter(setup -> reservedGpm(line, setup, 1) > sprayer.greatestFlowGpm())
        .map(setup -> pump(line, setup, 1));
  }

  private static Optional<Fault> gunsPastPump(Line line) {
    Sprayer sprayer = line.sprayer();
    return line.planned()
        .filter(setup -> sprayer != null)
        .filter(setup -> !(reservedGpm(line, setup, 1) > sprayer.greatestFlowGpm()))
        .filter(setup -> reservedGpm(line, setup, guns(line)) > sprayer.greatestFlowGpm())
        .map(setup -> pump(line, setup, guns(line)));
  }

  private static double guns(Line line) {
    return line.sprayer().gunsOr(line.setting(Setting.GUNS));
  }

  private static Fault pump(Line line, Setup setup, double guns) {
    double rated = line.sprayer().greatestFlowGpm();
    Say.Pair said = line.pair(Quantity.FLOW, reservedGpm(line, setup, guns), rated);
    return line.fault(
        TIP,
        said.measured(),
        said.limit(),
        "%s wants %s of the pump%s, reserve included, and %s gives %s%s"
            .formatted(
                setup.tip().code(),
                said.measured(),
                guns > 1 ? " for " + Say.number(guns, 0) + " guns" : "",
                line.sprayer().name(),
                said.limit(),
                line.instead()));
  }

  private static Optional<Fault> filter(Line line) {
    if (!line.isSetUp() || line.sprayer() == null) {
      return Optional.empty();
    }
    double fitted = line.sprayer().filterMesh();
    return line.setups().stream()
        .min(Comparator.comparingInt(setup -> setup.tip().orificeThou()))
        .flatMap(
            setup ->
                TipChecks.coarsestMesh(line, setup)
                    .filter(mesh -> fitted < mesh.number())
                    .map(mesh -> filter(line, setup, mesh)));
  }

  private static Fault filter(Line line, Setup setup, FilterMesh wanted) {
    String fitted = Say.number(line.sprayer().filterMesh(), 0) + " mesh";
    return line.fault(
        SPRAYER,
        fitted,
        wanted.number() + " mesh",
        "A filter of %s is too coarse for the %s of %s; fit %s mesh or finer."
            .formatted(
                fitted,
                line.say(Quantity.ORIFICE, setup.tip().orificeThou()),
                setup.tip().code(),
                wanted.number()));
  }

  private static Optional<Fault> noTip(Line line) {
    Setup recommended = line.filled().recommended();
    if (recommended == null || recommended.isTip()) {
      return Optional.empty();
    }
    double wantedGpm = recommended.gun().flowGpm();
    double oneThouGpm =
        Flow.gpm(
            line.setting(Setting.DISCHARGE),
            1,
            line.filled().setPsi(),
            line.work().sprayedKgPerL());
    String orifice = line.say(Quantity.ORIFICE, Math.sqrt(wantedGpm / oneThouGpm));
    String flow = line.say(Quantity.FLOW, wantedGpm);
    String fan = line.say(Quantity.FAN_WIDTH, recommended.fanIn());
    return line.found(
        line.sprayer() == null ? TIP : SPRAYER,
        "none",
        orifice + ", " + flow,
        ("The tip code is none, since no tip at hand serves; have one of about %s that passes %s"
                + " through a %s fan, or take another sprayer.")
            .formatted(orifice, flow, fan));
  }

  private static Optional<Fault> bucketTest(Line line) {
    return line.setups().stream()
        .filter(setup -> setup.gun().test() != null)
        .flatMap(setup -> bucketTest(line, setup).stream())
        .findFirst();
  }

  private static Optional<Fault> bucketTest(Line line, Setup setup) {
    BucketTest test = setup.gun().test();
    double ideal =
        Flow.theoreticalGpm(test.tip().orificeThou(), test.gunPsi(), line.work().sprayedKgPerL());
    if (test.flowGpm() <= ideal) {
      return Optional.empty();
    }
    Say.Pair said = line.pair(Quantity.FLOW, test.flowGpm(), ideal);
    return Optional.of(
        Fault.at(
            Spot.of(test.row().get("Flow")),
            said.measured(),
            said.limit(),
            "The test of %s caught %s, more than the %s that an ideal orifice passes; repeat it."
                .formatted(test.tip().code(), said.measured(), said.limit())));
  }
}
