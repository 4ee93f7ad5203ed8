package org.wetmil.checks;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.wetmil.catalogue.Quoted;
import org.wetmil.ledger.LedgerColumn;
import org.wetmil.ledger.LedgerLine;
import org.wetmil.reconcile.PlacedLine;
import org.wetmil.reconcile.flag.Flag;
import org.wetmil.reconcile.match.Reason;

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
    String item = Quoted.of(item(placed.line()));
    String job = placed.line().text(LedgerColumn.JOB);
    boolean ofJob = placed.reason() == Reason.NO_SUCH_JOB && !job.isBlank();
    String or = Say.or(placed.suggestion());
    String said =
        switch (placed.reason()) {
          case NO_SUCH_JOB ->
              ofJob
                  ? "%s is in no bid".formatted(Quoted.of(job)) + meant(or)
                  : "No job is named for %s".formatted(item);
          case NO_SUCH_COATING ->
              "%s is no coating that %s was bid with".formatted(item, placed.job()) + meant(or);
          case AMBIGUOUS -> "%s could be %s".formatted(item, or.isEmpty() ? "several" : or);
          case UNKNOWN_UNIT ->
              "%s %s of %s is no volume"
                      .formatted(
                          Quoted.of(placed.line().text(LedgerColumn.QUANTITY)),
                          Quoted.of(placed.line().text(LedgerColumn.UNIT)),
                          item)
                  + LedgerChecks.expected(or);
          case UNREADABLE -> "%s cannot be counted".formatted(item) + LedgerChecks.expected(or);
          case NOT_A_COATING -> "%s is no coating".formatted(item);
        };
    return new Fault(
        Spot.ofLedger(placed.line().file(), placed.line().line()),
        placed.job(),
        "",
        ofJob ? Quoted.of(job) : item,
        or,
        said + ".",
        false);
  }

  /** The item and its description, where both are stated. */
  static String item(LedgerLine line) {
    return Stream.of(LedgerColumn.ITEM, LedgerColumn.DESCRIPTION)
        .map(line::text)
        .filter(text -> !text.isEmpty())
        .distinct()
        .collect(Collectors.joining(": "));
  }

  private static String meant(String or) {
    return or.isEmpty() ? "" : "; meant may be " + or;
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
          FlagFaults faults = new FlagFaults(books);
          return books.result().flags().stream()
              .filter(flag -> flag.type() == type)
              .map(faults::fault);
        });
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
