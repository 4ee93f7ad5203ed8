package org.wetmil.checks;

import java.math.BigDecimal;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.wetmil.catalogue.Kind;
import org.wetmil.catalogue.Quoted;
import org.wetmil.ledger.Ledger;
import org.wetmil.ledger.LedgerLine;
import org.wetmil.ledger.LedgerNote;
import org.wetmil.ledger.LineProblem;
import org.wetmil.ledger.TotalsLine;
import org.wetmil.quantity.Count;
import org.wetmil.reconcile.PlacedLine;
import org.wetmil.reconcile.use.Tally;

/** How ledgers were read. */
final class LedgerChecks {
  static final List<Check> ALL =
      List.of(
          problem(
              "ledger-number",
              Severity.WARNING,
              "A number of a ledger cannot be read",
              "The line keeps its amount but cannot count as paint.",
              "Type a plain number in the ledger and export it again.",
              LineProblem.Type.UNREADABLE_NUMBER),
          problem(
              "ledger-date",
              Severity.WARNING,
              "A date of a ledger cannot be read",
              "A line without a date is in no month and in no period.",
              "Correct the date in the ledger and export it again.",
              LineProblem.Type.UNREADABLE_DATE),
          problem(
              "ledger-kind",
              Severity.WARNING,
              "A kind of line is not known",
              "The line is taken by its signs, as a purchase or a return.",
              "Use a word such as bill, credit, transfer, left over or waste.",
              LineProblem.Type.UNKNOWN_KIND),
          problem(
              "ledger-line-short",
              Severity.NOTE,
              "A line has fewer cells than the headings",
              "What is missing at its end is taken as blank.",
              "Look whether the export broke the line.",
              LineProblem.Type.TOO_SHORT),
          problem(
              "ledger-line-long",
              Severity.WARNING,
              "A line has more cells than the headings",
              "A separator inside a text moves all that follows it one column on.",
              "Put the text with the separator in quotes, or export as a spreadsheet does.",
              LineProblem.Type.TOO_LONG),
          problem(
              "ledger-quote-open",
              Severity.WARNING,
              "A cell holds what look like whole lines",
              "Lines swallowed by a cell are in no sum.",
              "Look for a quote that is opened and not closed.",
              LineProblem.Type.LINES_IN_A_CELL),
          problem(
              "ledger-amount",
              Severity.NOTE,
              "Quantity times unit price is not the amount",
              "The amount is taken; discount, tax or a typing mistake makes the difference.",
              "Compare the line with the document.",
              LineProblem.Type.AMOUNT_DIFFERS),
          problem(
              "ledger-return",
              Severity.NOTE,
              "A negative purchase is read as a return",
              "Paint that went back is not used.",
              "Name the kind of the line if it is meant otherwise.",
              LineProblem.Type.READ_AS_RETURN),
          note(
              "ledger-day-month",
              Severity.NOTE,
              "Nothing tells day and month apart",
              "A date read the wrong way round falls into another month.",
              "Give --date-order if the days come first.",
              LedgerNote.Type.ORDER_ASSUMED),
          note(
              "ledger-dates-mixed",
              Severity.WARNING,
              "Dates of one ledger are in two orders",
              "Some of them can only be read day first, others only month first.",
              "Export the ledger with one form of date.",
              LedgerNote.Type.ORDER_MIXED),
          note(
              "ledger-decimals",
              Severity.NOTE,
              "Nothing tells thousands from decimals",
              "A number such as 1.234 can be a thousand or one.",
              "Look at one large amount on the sheet Ledger.",
              LedgerNote.Type.MARK_ASSUMED),
          note(
              "ledger-quotes",
              Severity.NOTE,
              "Quotes are read as text",
              "A quote that is never closed would swallow the rest of the file.",
              "Look at the lines with inch marks.",
              LedgerNote.Type.QUOTES_AS_TEXT),
          books(
              "ledger-currencies",
              Severity.WARNING,
              "Amounts are in more than one currency",
              "Money of each is summed by itself; price and cost are in one of them alone.",
              "Reconcile the ledgers of one currency at a time, or name it where it is missing.",
              LedgerChecks::currencies),
          books(
              "ledger-total",
              Severity.WARNING,
              "A totals line is not the sum of its lines",
              "Lines may be missing from the export.",
              "Compare the period and the filter of the export.",
              books ->
                  books.ledgers().stream()
                      .flatMap(book -> book.counts().totals().stream())
                      .filter(TotalsLine::isInDoubt)
                      .map(LedgerChecks::total)),
          books(
              "ledger-empty",
              Severity.WARNING,
              "A ledger has headings and no line",
              "Nothing of it is in any sum.",
              "Compare the period and the filter of the export.",
              books ->
                  books.ledgers().stream()
                      .filter(book -> book.lines().isEmpty())
                      .map(
                          book ->
                              Fault.at(
                                  Spot.ofLedger(book.file(), 0),
                                  "0 lines",
                                  "",
                                  "The ledger has headings and 0 lines under them."))),
          books(
              "ledger-column-unused",
              Severity.NOTE,
              "A column of a ledger is not read",
              "A heading that is not understood may hold what is missing.",
              "Rename it if it is one of the columns of a ledger.",
              books -> books.ledgers().stream().flatMap(LedgerChecks::unused)));

  private LedgerChecks() {}

  static Check books(
      String id,
      Severity severity,
      String title,
      String why,
      String advice,
      Function<ReconciledBooks, Stream<Fault>> look) {
    return new Check(
        id, severity, title, why, Kind.HOUSE, "what the ledgers hold", advice, Rule.ofBooks(look));
  }

  private static Check problem(
      String id,
      Severity severity,
      String title,
      String why,
      String advice,
      LineProblem.Type type) {
    return books(
        id,
        severity,
        title,
        why,
        advice,
        books ->
            books.result().lines().stream()
                .flatMap(
                    placed ->
                        placed.line().problems().stream()
                            .filter(problem -> problem.type() == type)
                            .map(problem -> problem(placed, problem))));
  }

  private static Fault problem(PlacedLine placed, LineProblem problem) {
    LedgerLine line = placed.line();
    String raw = Quoted.of(problem.raw());
    String column = problem.column() == null ? "" : problem.column().heading() + " ";
    String record = line.record() == line.line() ? "" : " (record " + line.record() + ")";
    String expected = problem.expected();
    String said =
        switch (problem.type()) {
          case UNREADABLE_NUMBER, UNREADABLE_DATE ->
              column + raw + " cannot be read" + record + expected(expected);
          case UNKNOWN_KIND ->
              column + raw + " is no kind that is known" + record + expected(expected);
          case TOO_SHORT -> "The line is too short" + record + ": " + raw + expected(expected);
          case TOO_LONG -> "The line is too long" + record + ": " + raw + expected(expected);
          case LINES_IN_A_CELL -> "A cell holds what look like whole lines" + record + ": " + raw;
          case AMOUNT_DIFFERS ->
              "Amount " + raw + " is not quantity times unit price" + record + expected(expected);
          case READ_AS_RETURN ->
              "The negative purchase of " + raw + " is read as a return" + record;
        };
    return new Fault(
        Spot.ofLedger(line.file(), line.line()),
        placed.job(),
        placed.coating(),
        raw,
        expected,
        said + ".",
        false);
  }

  /** The end of a sentence; empty where nothing is known to be expected. */
  static String expected(String expected) {
    return expected.isEmpty() ? "" : "; expected " + expected;
  }

  private static Check note(
      String id, Severity severity, String title, String why, String advice, LedgerNote.Type type) {
    return books(
        id,
        severity,
        title,
        why,
        advice,
        books ->
            books.ledgers().stream()
                .flatMap(book -> book.layout().notes().stream())
                .filter(note -> note.type() == type)
                .map(
                    note ->
                        Fault.at(
                            Spot.ofLedger(note.file(), 0),
                            note.detail(),
                            "",
                            title + ": " + note.detail() + ".")));
  }

  private static Fault total(TotalsLine total) {
    String stated = total.stated().toPlainString();
    String line = "The totals line %s states %s".formatted(Quoted.of(total.text()), stated);
    Spot spot = Spot.ofLedger(total.file(), total.line());
    return total
        .sum()
        .map(BigDecimal::toPlainString)
        .map(sum -> Fault.at(spot, stated, sum, line + ", its lines add up to " + sum + "."))
        .orElseGet(
            () ->
                Fault.at(
                    spot,
                    stated,
                    "",
                    line
                        + " and no currency, its lines are in several; it is compared with"
                        + " nothing."));
  }

  private static Stream<Fault> currencies(ReconciledBooks books) {
    Tally read = books.result().read();
    if (read.amounts().size() < 2) {
      return Stream.empty();
    }
    List<String> sums =
        read.amounts().entrySet().stream()
            .map(sum -> sum(sum.getKey(), sum.getValue(), read.linesIn().get(sum.getKey())))
            .toList();
    String measured = Say.and(sums);
    return Stream.of(
        Fault.ofJob(
            measured,
            "",
            "The ledgers hold %s; each is summed by itself, and prices and cost are of the amounts %s."
                .formatted(
                    measured,
                    books.result().currency().isEmpty()
                        ? "without a currency alone"
                        : "in " + books.result().currency() + " alone")));
  }

  private static String sum(String currency, BigDecimal amount, long lines) {
    String plain = amount.toPlainString();
    String named = currency.isEmpty() ? plain + " without a currency" : currency + " " + plain;
    return named + " (" + Count.of(lines, "line") + ")";
  }

  private static Stream<Fault> unused(Ledger.Book book) {
    List<String> unused =
        book.layout().unused().stream().filter(heading -> !heading.isBlank()).toList();
    if (unused.isEmpty()) {
      return Stream.empty();
    }
    String headings = Say.and(unused.stream().map(Quoted::of).toList());
    return Stream.of(
        Fault.at(
            Spot.ofLedger(book.file(), 0),
            headings,
            "",
            "No column is read from the headings " + headings + "."));
  }
}
