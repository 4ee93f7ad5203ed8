package org.wetmil.workbook.reconcile;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.wetmil.ledger.LineKind;
import org.wetmil.quantity.Quantity;
import org.wetmil.quantity.UnitSystem;
import org.wetmil.reconcile.PlacedLine;
import org.wetmil.reconcile.Reconciliation;
import org.wetmil.workbook.look.Texts;

/**
 * What is written, in the units of the bids, and the formulas over the list of ledger lines.
 *
 * @param live whether figures are formulas; with very many lines they are values
 */
record Books(Reconciliation result, UnitSystem system, boolean live) {
  /** More would take a spreadsheet program minutes to compute (house). */
  static final int MOST_LIVE_LINES = 20_000;

  static Books of(Reconciliation result, UnitSystem system) {
    return new Books(result, system, result.lines().size() <= MOST_LIVE_LINES);
  }

  double volume(double gal) {
    return Quantity.VOLUME.shown(gal, system);
  }

  String volumeUnit() {
    return Quantity.VOLUME.unit(system).symbol();
  }

  String symbol(Quantity quantity) {
    return quantity.unit(system).symbol();
  }

  /** A price of a US gallon as the price of the unit shown. */
  double price(BigDecimal perGal) {
    return perGal == null ? Double.NaN : perGal.doubleValue() / volume(1);
  }

  /** The name of the money of prices and cost in brackets for headings; empty when none is. */
  String money() {
    return result.currency().isEmpty() ? "" : " (" + result.currency() + ")";
  }

  /** The currencies of the amounts, each of which has a sum of its own; at least one name. */
  List<String> currencies() {
    Set<String> named = result.read().amounts().keySet();
    return named.isEmpty() ? List.of(result.currency()) : List.copyOf(named);
  }

  /** The heading of the amounts of one currency; amounts may name none. */
  String amounts(String heading, String currency) {
    boolean alone = currencies().size() == 1;
    return currency.isEmpty()
        ? heading + (alone ? "" : " (no currency)")
        : heading + " (" + currency + ")";
  }

  /** Why the amounts stand apart; empty where all are in one currency. */
  Optional<String> apart() {
    if (currencies().size() == 1) {
      return Optional.empty();
    }
    String priced =
        result.currency().isEmpty() ? "that name no currency" : "in " + result.currency();
    return Optional.of(
        "Amounts are in %d currencies, each summed by itself; prices and cost are of those %s alone."
            .formatted(currencies().size(), priced));
  }

  /** A formula where figures are live, else none. */
  String live(String formula) {
    return live ? formula : null;
  }

  /** The coating that a line counts for on the sheets; empty for a line that counts nowhere. */
  static String coating(PlacedLine line) {
    return line.isMatched() ? Keys.coating(line.coating()) : "";
  }

  /** The sum of a column over ledger lines: pairs of a column and its criterion, quoted. */
  static String sum(LedgerField summed, String... pairs) {
    return "SUMIFS(" + summed.whole() + "," + String.join(",", pairs) + ")";
  }

  static String count(String... pairs) {
    return "COUNTIFS(" + String.join(",", pairs) + ")";
  }

  static String is(LedgerField field, String key) {
    return field.whole() + "," + Texts.criterion(key);
  }

  static String is(LineKind kind) {
    return is(LedgerField.KIND, kind.title());
  }

  /** One more criterion: the currency of prices and cost; none where there is only one. */
  String inCurrency() {
    return in(result.currency());
  }

  /** One more criterion: a currency, which lines may not state; none where there is only one. */
  String in(String currency) {
    if (currencies().size() == 1) {
      return "";
    }
    return currency.isEmpty()
        ? "," + LedgerField.CURRENCY.whole() + ",\"=\""
        : "," + is(LedgerField.CURRENCY, currency);
  }
}
