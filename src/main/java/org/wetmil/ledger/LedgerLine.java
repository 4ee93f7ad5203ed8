package org.wetmil.ledger;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;

/**
 * One line of a purchase ledger as read.
 *
 * @param file the ledger's name
 * @param line the line of the file that it begins on, from 1
 * @param record its record, from 1; differs from the line where a cell holds line breaks
 * @param date null when blank or not readable
 * @param quantity as written, with its sign; null when blank or not readable
 * @param unitGal US gallons in one unit of the quantity; NaN when the unit is no volume
 * @param unitPrice as written; null when blank or not readable
 * @param amount as written, with its sign, which is negative for a return or a transfer out however
 *     it was written; null when neither stated nor to be computed
 * @param amountComputed whether the amount is quantity times unit price, since none was stated
 * @param currency a code or symbol; empty when nothing says
 * @param raw the texts of the known columns; blank cells are absent
 */
public record LedgerLine(
    String file,
    long line,
    long record,
    LocalDate date,
    BigDecimal quantity,
    double unitGal,
    BigDecimal unitPrice,
    BigDecimal amount,
    boolean amountComputed,
    String currency,
    LineKind kind,
    Map<LedgerColumn, String> raw,
    List<LineProblem> problems) {

  /** The text under a column, trimmed; empty when blank. */
  public String text(LedgerColumn column) {
    return raw.getOrDefault(column, "");
  }

  /** What was bought, by name: the item, or the description where there is none. */
  public String itemOrDescription() {
    String item = text(LedgerColumn.ITEM);
    return item.isEmpty() ? text(LedgerColumn.DESCRIPTION) : item;
  }

  /** US gallons moved, never negative; NaN when quantity or unit is not known. */
  public double volumeGal() {
    return quantity == null ? Double.NaN : quantity.abs().doubleValue() * unitGal;
  }

  public boolean hasVolume() {
    return !Double.isNaN(volumeGal());
  }

  /** Money moved in the direction of the kind, never negative; null without an amount. */
  public BigDecimal money() {
    return amount == null ? null : amount.abs();
  }

  /** Whether a column was written but could not be read. */
  public boolean isUnreadable(LedgerColumn column) {
    return problems.stream()
        .anyMatch(
            problem ->
                problem.column() == column
                    && (problem.type() == LineProblem.Type.UNREADABLE_NUMBER
                        || problem.type() == LineProblem.Type.UNREADABLE_DATE));
  }
}
