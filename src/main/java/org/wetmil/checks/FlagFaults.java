package org.wetmil.checks;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.wetmil.catalogue.Quoted;
import org.wetmil.ledger.LedgerLine;
import org.wetmil.ledger.LineKind;
import org.wetmil.quantity.Quantity;
import org.wetmil.quantity.Unit;
import org.wetmil.quantity.UnitSystem;
import org.wetmil.reconcile.Reconciliation;
import org.wetmil.reconcile.bid.BidUse;
import org.wetmil.reconcile.flag.Cause;
import org.wetmil.reconcile.flag.Flag;
import org.wetmil.reconcile.use.CoatingUse;
import org.wetmil.reconcile.use.KindSums;

/** Says of a flag what was found, what it is compared with, and what could be the cause. */
final class FlagFaults {
  private final ReconciledBooks books;

  // uses and sums, looked up once for each flag
  private final Map<List<String>, CoatingUse> uses = new HashMap<>();
  private final Map<String, KindSums> ofCoating = new HashMap<>();
  private final Map<String, Double> bidOfJob = new HashMap<>();

  FlagFaults(ReconciledBooks books) {
    this.books = books;
    Reconciliation result = books.result();
    result.uses().forEach(use -> uses.put(List.of(use.job(), use.coating()), use));
    result.byCoating().forEach(group -> ofCoating.put(group.name(), group.ledger()));
    result.byJob().forEach(group -> bidOfJob.put(group.name(), group.bidGal()));
  }

  /** What the flag says, in words and numbers. */
  Fault fault(Flag flag) {
    CoatingUse use = uses.get(List.of(flag.job(), flag.coating()));
    String where = where(flag);
    Say.Pair pair =
        flag.line() != null ? pairOfLine(flag) : use == null ? pairOfJob(flag) : pair(flag, use);
    String limit = pair.limit().isEmpty() ? "" : ", " + pair.limit();
    return new Fault(
        flag.line() == null ? Spot.JOB : Spot.ofLedger(flag.line().file(), flag.line().line()),
        flag.job(),
        flag.coating(),
        pair.measured(),
        pair.limit(),
        where + ", " + flag.type().title() + ": " + pair.measured() + limit + causes(flag) + ".",
        false);
  }

  /** A repeated line may be of no coating, and of no job. */
  private static String where(Flag flag) {
    String of =
        Stream.of(flag.coating(), flag.job())
            .filter(each -> !each.isEmpty())
            .collect(Collectors.joining(" of "));
    return of.isEmpty() ? Quoted.of(UseChecks.item(flag.line())) : of;
  }

  private Say.Pair pairOfJob(Flag flag) {
    double bidGal = bidOfJob.get(flag.job());
    return new Say.Pair("0 lines", Say.of(Quantity.VOLUME, bidGal, books.system()) + " bid");
  }

  private Say.Pair pairOfLine(Flag flag) {
    LedgerLine line = flag.line();
    if (flag.type() == Flag.Type.DUPLICATE_LINE) {
      LedgerLine first = flag.first();
      return new Say.Pair(line.file() + ":" + line.line(), first.file() + ":" + first.line());
    }
    return new Say.Pair(
        price(line.currency(), flag.pricePerGal()),
        price(line.currency(), flag.usualPricePerGal()) + " is usual");
  }

  /** What was found and what it is compared with, each with the words that tell them apart. */
  private Say.Pair pair(Flag flag, CoatingUse use) {
    UnitSystem system = books.system();
    String bid = Say.of(Quantity.VOLUME, use.bid().paintGal(), system) + " bid";
    return switch (flag.type()) {
      case PRICE_OFF ->
          new Say.Pair(
              price(books.result().currency(), use.pricePaid().doubleValue()) + " paid",
              price(books.result().currency(), use.bid().pricePerGal().doubleValue()) + " bid");
      case ONE_SIDED_TRANSFER -> {
        double out = ofCoating.get(use.coating()).gallons(LineKind.TRANSFER_OUT);
        double in = ofCoating.get(use.coating()).gallons(LineKind.TRANSFER_IN);
        yield new Say.Pair(
            Say.of(Quantity.VOLUME, out, system) + " moved out of all jobs",
            Say.of(Quantity.VOLUME, in, system) + " moved in");
      }
      case IMPOSSIBLE_YIELD ->
          new Say.Pair(
              Say.of(Quantity.VOLUME, use.usedGal(), system) + " used",
              Say.of(Quantity.VOLUME, least(use.bid()), system)
                  + " is the least for the film bid, with no loss in the air");
      case NOTHING_BOUGHT -> new Say.Pair("nothing bought", bid);
      default ->
          new Say.Pair(
              Say.of(Quantity.VOLUME, use.usedGal(), system) + " used",
              bid
                  + " ("
                  + (use.varianceGal() < 0 ? "-" : "+")
                  + Say.percent(Math.abs(use.varianceShare()))
                  + ")");
    };
  }

  /** Paint for the film bid at a transfer efficiency of 1, in US gallons. */
  private static double least(BidUse bid) {
    return bid.theoreticalGal() * bid.roughness() / (1 - bid.waste());
  }

  /** A price of a US gallon as that of the unit shown, as in $34.40 a gal or EUR 9.10 a L. */
  private String price(String currency, double perGal) {
    Unit unit = Quantity.VOLUME.unit(books.system());
    BigDecimal shown =
        BigDecimal.valueOf(perGal * unit.si() / Unit.GALLON.si()).setScale(2, RoundingMode.HALF_UP);
    String money = currency.length() > 1 ? currency + " " : currency;
    return money + shown.toPlainString() + " a " + unit.symbol();
  }

  private static String causes(Flag flag) {
    if (flag.causes().isEmpty()) {
      return "";
    }
    return "; could be "
        + flag.causes().stream().map(Cause::couldMean).collect(Collectors.joining("; or "))
        + "; look first at "
        + flag.causes().get(0).lookAt();
  }
}
