package org.wetmil.checks;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.wetmil.ledger.LedgerColumn;
import org.wetmil.ledger.LedgerLine;
import org.wetmil.ledger.LineKind;
import org.wetmil.quantity.Quantity;
import org.wetmil.quantity.Unit;
import org.wetmil.quantity.UnitSystem;
import org.wetmil.reconcile.PlacedLine;
import org.wetmil.reconcile.Reconciliation;
import org.wetmil.reconcile.bid.BidUse;
import org.wetmil.reconcile.flag.Cause;
import org.wetmil.reconcile.flag.Flag;
import org.wetmil.reconcile.match.Reason;
import org.wetmil.reconcile.use.CoatingUse;
import org.wetmil.reconcile.use.KindSums;

/** What came of comparing ledgers with bids. */
final class UseChecks {
  static final List<Check> ALL =
      List.of(
          unmatched(
              "ledger-job",
              "A ledger line names a job that no bid is for",
              "Its paint is missing from some job, or its bid is missing here.",
              "Correct the job in the ledger, or name the bid too.",
              Reason.NO_SUCH_JOB),
          unmatched(
              "ledger-coating",
              "A ledger line is a coating that the job was not bid with",
              "The job used paint that nobody priced, or it belongs to another job.",
              "Look for the line in the bid, or name the item in the item table.",
              Reason.NO_SUCH_COATING),
          unmatched(
              "ledger-item",
              "An item could be more than one coating of the job",
              "A guess would move paint between coatings.",
              "Name the item in the item table.",
              Reason.AMBIGUOUS),
          unmatched(
              "ledger-unit",
              "A quantity of paint has no unit of volume",
              "How much paint it is cannot be told.",
              "Write the unit or the size of the container in the ledger.",
              Reason.UNKNOWN_UNIT),
          unmatched(
              "ledger-not-counted",
              "A line of paint cannot be counted",
              "The job used this paint and it is in no volume.",
              "Correct what cannot be read in the ledger.",
              Reason.UNREADABLE),
          flag(
              "paint-over-bid",
              Severity.WARNING,
              "More paint is used than bid",
              "The job cost more than it was sold for, or the ledgers are wrong.",
              Flag.Type.OVER_BID),
          flag(
              "paint-under-bid",
              Severity.WARNING,
              "Less paint is used than bid",
              "A purchase may be missing, or the film is thinner than it was sold.",
              Flag.Type.UNDER_BID),
          flag(
              "yield-impossible",
              Severity.WARNING,
              "The paint used cannot make the film bid",
              "Even without a drop lost in the air it would take more paint.",
              Flag.Type.IMPOSSIBLE_YIELD),
          flag(
              "job-not-named",
              Severity.NOTE,
              "A job is bid and named by no ledger line",
              "It is not begun yet, or its paint is under another job.",
              Flag.Type.JOB_NOT_NAMED),
          flag(
              "paint-not-bought",
              Severity.NOTE,
              "A coating is bid and not in the ledgers",
              "It is not done yet, or it was bought under another name.",
              Flag.Type.NOTHING_BOUGHT),
          flag(
              "paint-not-used",
              Severity.WARNING,
              "As much paint went out as came in",
              "A job that was painted used paint.",
              Flag.Type.NOTHING_USED),
          flag(
              "price-off-bid",
              Severity.NOTE,
              "The price paid differs from the price bid",
              "The next bid should carry the price that is paid.",
              Flag.Type.PRICE_OFF),
          flag(
              "transfer-one-sided",
              Severity.WARNING,
              "Paint moved out and moved in differ",
              "One of the two jobs carries paint that the other used.",
              Flag.Type.ONE_SIDED_TRANSFER),
          flag(
              "unit-mistake",
              Severity.WARNING,
              "A price by volume is far from the others",
              "Gallons typed as pails, or pails as gallons, make five times as much or as little.",
              Flag.Type.UNIT_MISTAKE),
          flag(
              "ledger-line-twice",
              Severity.WARNING,
              "A ledger line stands twice",
              "Paint counted twice was used once.",
              Flag.Type.DUPLICATE_LINE),
          LedgerChecks.books(
              "filled-value",
              Severity.WARNING,
              "A filled cell has no value",
              "What is computed anew stands in for it.",
              "Open the filled bid in the spreadsheet program and save it once.",
              books ->
                  books.bids().stream()
                      .filter(bid -> !bid.missing().isEmpty())
                      .map(UseChecks::missing)),
          LedgerChecks.books(
              "job-in-bids",
              Severity.NOTE,
              "Several bids are for one job",
              "They are taken together, as a change order is with its bid.",
              "Leave one of them out if it is a copy or an older state.",
              UseChecks::sameJob),
          LedgerChecks.books(
              "bid-units",
              Severity.NOTE,
              "Bids are in different units",
              "The sheets are in the units of the first.",
              "Name a bid in the units wanted first.",
              UseChecks::units));

  private UseChecks() {}

  private static Check unmatched(
      String id, String title, String why, String advice, Reason reason) {
    return LedgerChecks.books(
        id,
        Severity.WARNING,
        title,
        why,
        advice,
        books ->
            books.result().lines().stream()
                .filter(line -> line.reason() == reason)
                .map(UseChecks::unmatched));
  }

  private static Fault unmatched(PlacedLine placed) {
    String item = Say.quoted(item(placed.line()));
    String job = Say.quoted(placed.line().text(LedgerColumn.JOB));
    String or = placed.suggestion().isEmpty() ? "" : Say.or(placed.suggestion());
    String said =
        switch (placed.reason()) {
          case NO_SUCH_JOB ->
              job.equals("\"\"")
                  ? "No job is named for %s".formatted(item)
                  : "%s is in no bid".formatted(job) + meant(or);
          case NO_SUCH_COATING ->
              "%s is no coating that %s was bid with".formatted(item, placed.job()) + meant(or);
          case AMBIGUOUS -> "%s could be %s".formatted(item, or.isEmpty() ? "several" : or);
          case UNKNOWN_UNIT ->
              "%s %s of %s is no volume"
                      .formatted(
                          Say.quoted(placed.line().text(LedgerColumn.QUANTITY)),
                          Say.quoted(placed.line().text(LedgerColumn.UNIT)),
                          item)
                  + expected(or);
          case UNREADABLE -> "%s cannot be counted".formatted(item) + expected(or);
          case NOT_A_COATING -> "%s is no coating".formatted(item);
        };
    return new Fault(
        Spot.ofLedger(placed.line().file(), placed.line().line()),
        placed.job(),
        "",
        placed.reason() == Reason.NO_SUCH_JOB && !job.equals("\"\"") ? job : item,
        or,
        said + ".",
        false);
  }

  /** The item and its description, where both are stated. */
  private static String item(LedgerLine line) {
    return Stream.of(LedgerColumn.ITEM, LedgerColumn.DESCRIPTION)
        .map(line::text)
        .filter(text -> !text.isEmpty())
        .distinct()
        .collect(Collectors.joining(": "));
  }

  private static String meant(String or) {
    return or.isEmpty() ? "" : "; meant may be " + or;
  }

  private static String expected(String or) {
    return or.isEmpty() ? "" : "; expected " + or;
  }

  private static Check flag(
      String id, Severity severity, String title, String why, Flag.Type type) {
    return LedgerChecks.books(
        id,
        severity,
        title,
        why,
        "Begin with what the finding says to look at first.",
        books -> {
          Sums sums = new Sums(books.result());
          return books.result().flags().stream()
              .filter(flag -> flag.type() == type)
              .map(flag -> flag(flag, books, sums));
        });
  }

  /** Uses and transfers, looked up once for each flag. */
  private static final class Sums {
    private final Map<List<String>, CoatingUse> uses = new HashMap<>();
    private final Map<String, KindSums> ofCoating = new HashMap<>();
    private final Map<String, Double> bidOfJob = new HashMap<>();

    private Sums(Reconciliation result) {
      result.uses().forEach(use -> uses.put(List.of(use.job(), use.coating()), use));
      result.byCoating().forEach(group -> ofCoating.put(group.name(), group.ledger()));
      result.byJob().forEach(group -> bidOfJob.put(group.name(), group.bidGal()));
    }
  }

  private static Fault flag(Flag flag, ReconciledBooks books, Sums sums) {
    CoatingUse use = sums.uses.get(List.of(flag.job(), flag.coating()));
    String where = where(flag);
    Say.Pair pair =
        flag.line() != null
            ? pairOfLine(flag, books)
            : use == null ? pairOfJob(flag, books, sums) : pair(flag, use, books, sums);
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
    return of.isEmpty() ? Say.quoted(item(flag.line())) : of;
  }

  private static Say.Pair pairOfJob(Flag flag, ReconciledBooks books, Sums sums) {
    double bidGal = sums.bidOfJob.get(flag.job());
    return new Say.Pair("0 lines", Say.of(Quantity.VOLUME, bidGal, books.system()) + " bid");
  }

  private static Say.Pair pairOfLine(Flag flag, ReconciledBooks books) {
    LedgerLine line = flag.line();
    if (flag.type() == Flag.Type.DUPLICATE_LINE) {
      LedgerLine first = flag.first();
      return new Say.Pair(line.file() + ":" + line.line(), first.file() + ":" + first.line());
    }
    return new Say.Pair(
        price(line.currency(), flag.pricePerGal(), books),
        price(line.currency(), flag.usualPricePerGal(), books) + " is usual");
  }

  /** What was found and what it is compared with, each with the words that tell them apart. */
  private static Say.Pair pair(Flag flag, CoatingUse use, ReconciledBooks books, Sums sums) {
    UnitSystem system = books.system();
    String bid = Say.of(Quantity.VOLUME, use.bid().paintGal(), system) + " bid";
    return switch (flag.type()) {
      case PRICE_OFF ->
          new Say.Pair(
              price(books.result().currency(), use.pricePaid().doubleValue(), books) + " paid",
              price(books.result().currency(), use.bid().pricePerGal().doubleValue(), books)
                  + " bid");
      case ONE_SIDED_TRANSFER -> {
        double out = sums.ofCoating.get(use.coating()).gallons(LineKind.TRANSFER_OUT);
        double in = sums.ofCoating.get(use.coating()).gallons(LineKind.TRANSFER_IN);
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
  private static String price(String currency, double perGal, ReconciledBooks books) {
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

  private static Fault missing(ReconciledBooks.BidRead bid) {
    String first = bid.missing().get(0);
    int count = bid.missing().size();
    return Fault.at(
        Spot.ofSheet(bid.file()),
        first,
        "",
        count == 1
            ? first + " has no value; it is computed anew."
            : "%d filled cells have no value, from %s on; they are computed anew."
                .formatted(count, first));
  }

  private static Stream<Fault> sameJob(ReconciledBooks books) {
    Map<String, List<String>> files = new LinkedHashMap<>();
    books
        .bids()
        .forEach(bid -> files.computeIfAbsent(bid.job(), job -> new ArrayList<>()).add(bid.file()));
    return files.entrySet().stream()
        .filter(job -> job.getValue().size() > 1)
        .map(
            job ->
                new Fault(
                    Spot.JOB,
                    job.getKey(),
                    "",
                    job.getValue().size() + " bids",
                    "",
                    "%d bids are for %s and are taken together: %s."
                        .formatted(job.getValue().size(), job.getKey(), Say.and(job.getValue())),
                    false));
  }

  private static Stream<Fault> units(ReconciledBooks books) {
    List<String> others =
        books.bids().stream()
            .filter(bid -> bid.system() != books.system())
            .map(ReconciledBooks.BidRead::file)
            .toList();
    return others.isEmpty()
        ? Stream.empty()
        : Stream.of(
            Fault.ofJob(
                Say.and(others),
                "",
                "%s %s in other units than the first bid, whose units the sheets are in."
                    .formatted(Say.and(others), others.size() == 1 ? "is" : "are")));
  }
}
