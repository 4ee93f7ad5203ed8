package org.wetmil.checks;

import static org.wetmil.estimate.InputColumn.COATING;
import static org.wetmil.estimate.InputColumn.SPRAYER;
import static org.wetmil.estimate.InputColumn.TIP;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.wetmil.catalogue.Kind;
import org.wetmil.catalogue.Setting;
import org.wetmil.catalogue.TipOnHand;
import org.wetmil.estimate.FilledBid;
import org.wetmil.quantity.Quantity;
import org.wetmil.trade.TipCode;
import org.wetmil.trade.Wear;

/** Tips and guards that the contractor owns. */
final class OnHandChecks {
  static final List<Check> ALL =
      List.of(
          new Check(
              "tip-not-on-hand",
              Severity.WARNING,
              "The planned tip is not on hand",
              "A tip that has to be fetched stops the job.",
              Kind.HOUSE,
              "the Tips on hand sheet",
              "Take a tip on hand, or buy it and list it.",
              Rule.ofLine(OnHandChecks::notOnHand)),
          new Check(
              "no-guard-on-hand",
              Severity.WARNING,
              "No guard on hand takes the planned tip",
              "Guards share one gun thread, yet a tip seats only in guards made for it.",
              Kind.PRACTICE,
              "common practice; fits as on the Tips and Guards on hand sheets",
              "Take a tip that seats, or have its guard at hand; never spray without one.",
              Rule.ofLine(OnHandChecks::noGuard)),
          new Check(
              "tip-worn",
              Severity.WARNING,
              "The tip on hand is worn",
              "A worn tip passes more paint through a narrower fan, so that the film comes out thick.",
              Kind.PUBLISHED,
              "extension sheets on spray nozzles: over 10 % above the mark; tip lives are our own",
              "Have a new one at hand; catch its flow in a bucket to be sure.",
              Rule.ofLine(OnHandChecks::worn)),
          new Check(
              "heavy-duty-tip",
              Severity.NOTE,
              "The coating wants heavy-duty tips and guards",
              "Thick coatings wear a common tip within a day.",
              Kind.PRACTICE,
              "common practice for block filler and elastomeric",
              "Take heavy-duty tips and the guards made for them.",
              Rule.ofBid(OnHandChecks::heavyDuty)));

  private OnHandChecks() {}

  /** Pieces of a tip that are there; one without a count counts as there. */
  private static List<TipOnHand> pieces(Line line, TipCode tip) {
    return line.catalogue().tipsOnHand().stream()
        .filter(piece -> piece.tip().equals(tip) && !(piece.count() < 1))
        .toList();
  }

  private static Optional<Fault> notOnHand(Line line) {
    TipCode planned = line.work().planned();
    return planned == null
            || line.catalogue().tipsOnHand().isEmpty()
            || !pieces(line, planned).isEmpty()
        ? Optional.empty()
        : line.found(
            TIP,
            planned.code(),
            "a tip on hand",
            "%s is not among the tips on hand%s".formatted(planned.code(), instead(line)));
  }

  private static Optional<Fault> noGuard(Line line) {
    TipCode planned = line.work().planned();
    List<TipOnHand> pieces = planned == null ? List.of() : pieces(line, planned);
    boolean seats =
        pieces.stream()
            .anyMatch(piece -> line.catalogue().isGuarded(piece.fit(), line.text(SPRAYER)));
    return pieces.isEmpty() || seats
        ? Optional.empty()
        : line.found(
            TIP,
            planned.code(),
            "a guard on hand",
            "No guard on hand takes %s%s".formatted(planned.code(), instead(line)));
  }

  private static String instead(Line line) {
    return line.isSetUp() ? line.instead() : "; take another tip.";
  }

  private static Optional<Fault> worn(Line line) {
    return line.isSetUp() && !line.catalogue().tipsOnHand().isEmpty()
        ? line.setups().stream().flatMap(setup -> worn(line, setup.tip()).stream()).findFirst()
        : Optional.empty();
  }

  /** Of several pieces the least worn one counts. */
  private static Optional<Fault> worn(Line line, TipCode tip) {
    return pieces(line, tip).stream()
        .map(piece -> Double.isNaN(piece.gallonsSprayed()) ? 0 : piece.gallonsSprayed())
        .min(Comparator.naturalOrder())
        .flatMap(gallons -> worn(line, tip, gallons));
  }

  private static Optional<Fault> worn(Line line, TipCode tip, double gallons) {
    double rise = Wear.expectedFlowRise(gallons, line.coating().tipLifeGal());
    double limit = line.setting(Setting.WORN);
    if (!(rise > limit + 1e-12)) {
      return Optional.empty();
    }
    boolean done = rise >= line.setting(Setting.REPLACE);
    String measured = Say.percent(rise);
    return line.found(
        TIP,
        measured,
        Say.percent(limit),
        "%s has sprayed %s and passes about %s over its mark, past %s; %s."
            .formatted(
                tip.code(),
                line.say(Quantity.VOLUME, gallons),
                measured,
                Say.percent(limit),
                done ? "replace it" : "have a new one at hand"));
  }

  private static Stream<Fault> heavyDuty(FilledBid bid) {
    return Line.all(bid)
        .filter(line -> line.isSetUp() && line.coating().heavyDuty())
        .filter(Line.firstOf(line -> line.coating().name()))
        .map(
            line ->
                line.fault(
                    COATING,
                    line.coating().name(),
                    "",
                    "Heavy-duty tips and the guards made for them are wanted for %s."
                        .formatted(line.coating().name())));
  }
}
