package org.wetmil.reconcile;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.wetmil.ledger.HouseFigure;
import org.wetmil.ledger.LineKind;
import org.wetmil.reconcile.bid.BidUse;
import org.wetmil.reconcile.flag.Cause;
import org.wetmil.reconcile.flag.Flag;
import org.wetmil.reconcile.match.Reason;
import org.wetmil.reconcile.use.CoatingUse;
import org.wetmil.reconcile.use.KindSums;

/** Flags what the bookkeeper should look at, with what it could mean. */
final class Flagging {
  static final HouseFigure NO_PAINT =
      new HouseFigure("No paint", "0.000001", "gal", "up to this, two volumes are the same");

  static final HouseFigure COAT_TOLERANCE =
      new HouseFigure(
          "A coat more or less",
          "0.2",
          "coats",
          "how near to whole coats the difference must be for that cause to be named");

  private static final double NAN = Double.NaN;

  /** More than these in one sentence are not read. */
  private static final int MOST_CAUSES = 5;

  private final List<CoatingUse> uses;
  private final List<PlacedLine> placed;
  private final ReconcileSettings settings;
  private final Map<String, KindSums> transfers = new HashMap<>();
  private final Set<String> suspects = new HashSet<>();
  private final Set<String> repeated = new HashSet<>();
  private final Set<String> unmatchedJobs = new HashSet<>();
  private final Set<String> namedJobs = new HashSet<>();
  private final Set<String> notNamed = new HashSet<>();
  private final List<Flag> flags = new ArrayList<>();

  Flagging(List<CoatingUse> uses, List<PlacedLine> placed, ReconcileSettings settings) {
    this.uses = uses;
    this.placed = placed;
    this.settings = settings;
  }

  List<Flag> flags() {
    uses.forEach(
        use -> transfers.computeIfAbsent(use.coating(), c -> new KindSums()).add(use.ledger()));
    placed.forEach(this::line);
    uses.forEach(this::use);
    return List.copyOf(flags);
  }

  private void line(PlacedLine placedLine) {
    String key = placedLine.job() + "\n" + placedLine.coating();
    if (placedLine.reason() != null && placedLine.reason() != Reason.NOT_A_COATING) {
      unmatchedJobs.add(placedLine.job());
    }
    if (placedLine.place() != Place.OUTSIDE) {
      namedJobs.add(placedLine.job());
    }
    if (placedLine.isUnitSuspect()) {
      suspects.add(key);
      add(Flag.Type.UNIT_MISTAKE, placedLine, List.of(Cause.UNIT_MISTAKE, Cause.TYPING_MISTAKE));
    }
    if (placedLine.duplicateOf() != null && placedLine.place() != Place.OUTSIDE) {
      if (placedLine.isMatched()) {
        repeated.add(key);
      }
      add(Flag.Type.DUPLICATE_LINE, placedLine, List.of(Cause.COUNTED_TWICE));
    }
  }

  private void use(CoatingUse use) {
    if (!namedJobs.contains(use.job())) {
      if (notNamed.add(use.job())) {
        flags.add(ofJob(use.job()));
      }
      return;
    }
    double out = transfers.get(use.coating()).gallons(LineKind.TRANSFER_OUT);
    double in = transfers.get(use.coating()).gallons(LineKind.TRANSFER_IN);
    boolean moved =
        use.ledger().gallons(LineKind.TRANSFER_OUT) + use.ledger().gallons(LineKind.TRANSFER_IN)
            > 0;
    boolean oneSided = moved && Math.abs(out - in) > NO_PAINT.number();
    if (oneSided) {
      add(Flag.Type.ONE_SIDED_TRANSFER, use, List.of(Cause.WRONG_TRANSFER));
    }
    if (use.ledger().lines() == 0) {
      List<Cause> causes = new ArrayList<>();
      if (unmatchedJobs.contains(use.job())) {
        causes.add(Cause.OTHER_NAME);
      }
      causes.addAll(List.of(Cause.NOT_DONE_YET, Cause.MISSING_PURCHASE));
      add(Flag.Type.NOTHING_BOUGHT, use, causes);
      return;
    }
    if (!use.isUsed()) {
      add(Flag.Type.NOTHING_USED, use, List.of(Cause.TYPING_MISTAKE, Cause.MISSING_PURCHASE));
      return;
    }
    if (use.impliedTransferEfficiency() > 1) {
      add(Flag.Type.IMPOSSIBLE_YIELD, use, tooLittle(use, oneSided));
    } else if (use.isUnder()) {
      add(Flag.Type.UNDER_BID, use, tooLittle(use, oneSided));
    } else if (use.isOver()) {
      add(Flag.Type.OVER_BID, use, tooMuch(use, oneSided));
    }
    price(use);
  }

  private void price(CoatingUse use) {
    BigDecimal bid = use.bid().pricePerGal();
    if (bid == null || use.pricePaid() == null || bid.signum() == 0) {
      return;
    }
    // in decimals, since 33 against 30 is 10 % and not a last bit more
    BigDecimal most = bid.multiply(BigDecimal.valueOf(settings.toleranceShare()));
    boolean far = use.pricePaid().subtract(bid).abs().compareTo(most) > 0;
    if (far && !suspects.contains(key(use))) {
      add(Flag.Type.PRICE_OFF, use, List.of(Cause.PRICE_CHANGED, Cause.TYPING_MISTAKE));
    }
  }

  private List<Cause> tooMuch(CoatingUse use, boolean oneSided) {
    List<Cause> causes = written(use, oneSided);
    KindSums ledger = use.ledger();
    if (ledger.gallons(LineKind.RETURN) + ledger.gallons(LineKind.LEFT_OVER) == 0) {
      causes.add(Cause.MISSING_RETURN);
    }
    double extraCoats = use.varianceShare() * use.bid().coats();
    if (Math.rint(extraCoats) >= 1
        && Math.abs(extraCoats - Math.rint(extraCoats)) <= COAT_TOLERANCE.number()) {
      causes.add(Cause.EXTRA_COAT);
    }
    causes.addAll(List.of(Cause.HEAVY_FILM, Cause.WASTE_OR_THEFT, Cause.BID_LINE_LEFT_OUT));
    return causes;
  }

  private List<Cause> tooLittle(CoatingUse use, boolean oneSided) {
    List<Cause> causes = written(use, oneSided);
    if (unmatchedJobs.contains(use.job())) {
      causes.add(Cause.OTHER_NAME);
    }
    causes.add(Cause.MISSING_PURCHASE);
    BidUse bid = use.bid();
    double fewerCoats = -use.varianceShare() * bid.coats();
    if (bid.coats() > 1.5
        && Math.rint(fewerCoats) >= 1
        && Math.abs(fewerCoats - Math.rint(fewerCoats)) <= COAT_TOLERANCE.number()) {
      causes.add(Cause.FEWER_COATS);
    }
    causes.addAll(List.of(Cause.SHORT_AREA, Cause.THIN_FILM, Cause.NOT_DONE_YET));
    return causes;
  }

  /** Causes that the ledger itself gives reason for. */
  private List<Cause> written(CoatingUse use, boolean oneSided) {
    List<Cause> causes = new ArrayList<>();
    if (suspects.contains(key(use))) {
      causes.add(Cause.UNIT_MISTAKE);
    }
    if (repeated.contains(key(use))) {
      causes.add(Cause.COUNTED_TWICE);
    }
    if (oneSided) {
      causes.add(Cause.WRONG_TRANSFER);
    }
    return causes;
  }

  private void add(Flag.Type type, PlacedLine line, List<Cause> causes) {
    flags.add(
        new Flag(
            type,
            line.job(),
            line.coating(),
            line.line(),
            line.duplicateOf(),
            line.pricePerGal(),
            line.usualPricePerGal(),
            causes));
  }

  private void add(Flag.Type type, CoatingUse use, List<Cause> causes) {
    List<Cause> likeliest = causes.subList(0, Math.min(MOST_CAUSES, causes.size()));
    flags.add(new Flag(type, use.job(), use.coating(), null, null, NAN, NAN, likeliest));
  }

  /** One word for a job that the ledgers say nothing of, whatever was bid. */
  private static Flag ofJob(String job) {
    List<Cause> causes = List.of(Cause.NOT_DONE_YET, Cause.MISSING_PURCHASE);
    return new Flag(Flag.Type.JOB_NOT_NAMED, job, "", null, null, NAN, NAN, causes);
  }

  private static String key(CoatingUse use) {
    return use.job() + "\n" + use.coating();
  }
}
