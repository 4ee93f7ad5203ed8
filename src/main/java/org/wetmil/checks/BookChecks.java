package org.wetmil.checks;

import java.util.List;
import java.util.stream.Stream;
import org.wetmil.catalogue.Quoted;
import org.wetmil.catalogue.TableProblem;
import org.wetmil.ledger.CurrencyName;
import org.wetmil.ledger.ItemName;
import org.wetmil.reconcile.SettingsTaken;
import org.wetmil.reconcile.match.ItemTable;

/** What the bookkeeper and the bids state for a reconciliation. */
final class BookChecks {
  static final List<Check> ALL =
      List.of(
          LedgerChecks.books(
              "setting-cell",
              Severity.WARNING,
              "A setting cannot be used",
              "What is built in, or stated elsewhere, counts in its place.",
              "Correct the cell as the message says.",
              books -> books.own().refused().stream().map(BookChecks::refused)),
          LedgerChecks.books(
              "setting-differs",
              Severity.NOTE,
              "Files state a setting differently",
              "One reconciliation has one tolerance and one rule for duplicates.",
              "State it in one place: on the sheet Settings of the workbook named with --items.",
              books ->
                  books.own().settings().all().stream()
                      .filter(taken -> !taken.others().isEmpty())
                      .map(BookChecks::differs)),
          LedgerChecks.books(
              "item-twice",
              Severity.WARNING,
              "A table of items gives one item two coatings",
              "Only the first of them counts.",
              "Take one of the rows away.",
              books ->
                  books.own().tables().stream()
                      .flatMap(table -> new ItemTable(table).contradictions().stream())
                      .map(BookChecks::twice)),
          LedgerChecks.books(
              "bid-currency",
              Severity.WARNING,
              "Prices of a bid are in another currency than the ledgers",
              "A price in one currency says nothing about a price in another.",
              "Name the bid with the ledgers of its own currency.",
              BookChecks::currencies));

  private BookChecks() {}

  private static Fault refused(ReconciledBooks.RefusedCell cell) {
    TableProblem problem = cell.problem();
    String raw = Quoted.of(problem.raw());
    return Fault.at(
        Spot.ofSheet(cell.file()),
        raw,
        problem.expected(),
        "%s in %s!%s cannot be used; expected %s."
            .formatted(raw, sheet(problem), problem.address(), problem.expected()));
  }

  /** The sheet without the name of its workbook, which the finding names already. */
  private static String sheet(TableProblem problem) {
    return problem.sheet().substring(problem.sheet().indexOf(']') + 1);
  }

  private static Fault differs(SettingsTaken.Taken taken) {
    List<String> others =
        taken.others().stream()
            .map(other -> "%s in %s".formatted(Quoted.of(other.value()), other.file()))
            .toList();
    String measured = Quoted.of(taken.entry().text());
    return Fault.at(
        Spot.ofSheet(taken.file()),
        measured,
        Say.and(others),
        "%s is %s here, which counts, and %s."
            .formatted(taken.setting().title(), measured, Say.and(others)));
  }

  private static Fault twice(ItemTable.Contradiction rows) {
    String item = Quoted.of(rows.first().item());
    return Fault.ofJob(
        item,
        "",
        "%s is %s in %s, which counts, and %s in %s."
            .formatted(
                item,
                coating(rows.first()),
                rows.first().where(),
                coating(rows.later()),
                rows.later().where()));
  }

  private static String coating(ItemName row) {
    return row.coating().isEmpty() ? "no coating" : Quoted.of(row.coating());
  }

  private static Stream<Fault> currencies(ReconciledBooks books) {
    String money = books.result().currency();
    return books.bids().stream()
        .filter(bid -> CurrencyName.contradict(bid.currency(), money))
        .map(
            bid ->
                Fault.at(
                    Spot.ofSheet(bid.file()),
                    bid.currency(),
                    money,
                    "The prices of %s are in %s, the ledgers in %s; none of them is compared."
                        .formatted(bid.job(), bid.currency(), money)));
  }
}
