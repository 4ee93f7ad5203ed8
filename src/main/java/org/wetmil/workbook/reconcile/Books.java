package org.wetmil.workbook.reconcile;

import java.math.BigDecimal;
import org.wetmil.ledger.LineKind;
import org.wetmil.quantity.Quantity;
import org.wetmil.quantity.UnitSystem;
import org.wetmil.reconcile.PlacedLine;
import org.wetmil.reconcile.Reconciliation;
import org.wetmil.workbook.fill.Texts;

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

  /** The money's name in brackets for headings; empty when none is stated. */
  String money() {
    return result.currency().isEmpty() ? "" : " (" + result.currency() + ")";
  }

  /** A formula where figures are live, else none. */
  String live(String formula) {
    return live ? formula : null;
  }

  /** The coating that a line counts for on the sheets; empty for a line that counts nowhere. */
  static String coating(PlacedLine line) {
    return line.isMatched() ? Keys.plain(line.coating()) : "";
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

  /** Amounts of the currency that is summed; no criterion where there is only one. */
  String inCurrency() {
    return result.read().amounts().size() < 2 ? "" : "," + of(result.currency());
  }

  /** A criterion for a currency; lines may state none. */
  static String of(String currency) {
    return currency.isEmpty()
        ? LedgerField.CURRENCY.whole() + ",\"=\""
        : is(LedgerField.CURRENCY, currency);
  }
}
