package org.wetmil.ledger;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A totals line of a ledger beside the sums of its lines, which are of one currency each.
 *
 * @param stated the amount on it; null when it has none that can be read
 * @param sumOfAll amounts of all lines above it; null when they are in several currencies and it
 *     does not say in which it is
 * @param sumSinceLast amounts of the lines since the totals line before, or since the headings;
 *     null as above
 */
public record TotalsLine(
    String file,
    long line,
    String text,
    BigDecimal stated,
    BigDecimal sumOfAll,
    BigDecimal sumSinceLast) {

  /** The sum that it is compared with: the nearer of the two; empty when there is none. */
  public Optional<BigDecimal> sum() {
    return Stream.of(Optional.ofNullable(sumOfAll), Optional.ofNullable(sumSinceLast))
        .flatMap(Optional::stream)
        .min(Comparator.comparing(sum -> sum.subtract(Objects.requireNonNull(stated)).abs()));
  }

  /** Whether it states an amount and is known to add up something else, or nothing known. */
  public boolean isInDoubt() {
    return stated != null && sum().map(sum -> stated.compareTo(sum) != 0).orElse(true);
  }
}
