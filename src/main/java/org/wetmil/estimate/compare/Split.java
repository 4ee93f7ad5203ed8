package org.wetmil.estimate.compare;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wetmil.estimate.price.Price;

/**
 * What the whole difference of two versions comes from, part by part; the parts add up to it.
 *
 * @param kind which part
 * @param count how many settings, rows or lines it is of; 0 where that says nothing
 * @param paintGal paint that it adds, in gallons
 * @param hours person-hours that it adds
 * @param price what it adds to the price before tax; null where that cannot be told
 */
public record Split(Kind kind, int count, double paintGal, double hours, BigDecimal price) {

  /** Less than this, in the kept units, is what subtracting sums in a computer leaves. */
  private static final double NOTHING = 1e-9;

  public Split {
    paintGal = Math.abs(paintGal) < NOTHING ? 0 : paintGal;
    hours = Math.abs(hours) < NOTHING ? 0 : hours;
  }

  /** The parts in the order of the steps. */
  public enum Kind {
    TABLES("settings and table values, on the lines of A"),
    OPENINGS("openings listed, on the lines of A"),
    CHANGED("lines changed"),
    ADDED("lines only in B"),
    GONE("lines only in A"),
    JOB("rows of the job (hoses, changes, touch-up, set-up, clean-up)"),
    PRICE("lines and rows of the job together, containers and price steps");

    private final String words;

    Kind(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }

  /** Whether there is anything of this part. */
  public boolean isThere() {
    return count > 0 || paintGal != 0 || hours != 0 || (price != null && price.signum() != 0);
  }

  /** The parts of a comparison. */
  public static List<Split> of(BidComparison compared) {
    List<Split> parts = new ArrayList<>();
    int openings = compared.openings();
    parts.add(
        step(
            Kind.TABLES,
            compared.tables().size() - openings,
            compared.first(),
            compared.retabled()));
    parts.add(step(Kind.OPENINGS, openings, compared.retabled(), compared.reopened()));
    parts.add(lines(Kind.CHANGED, compared.changed()));
    parts.add(lines(Kind.ADDED, compared.onlyB()));
    parts.add(lines(Kind.GONE, compared.onlyA()));
    JobTotals before = compared.reopened();
    JobTotals after = compared.second();
    parts.add(
        new Split(
            Kind.JOB,
            0,
            after.jobGal() - before.jobGal(),
            after.jobHours() - before.jobHours(),
            null));
    parts.add(new Split(Kind.PRICE, 0, 0, 0, difference(before.price(), after.price())));
    return parts;
  }

  private static Split step(Kind kind, int count, JobTotals before, JobTotals after) {
    return new Split(
        kind,
        count,
        after.paintGal() - before.paintGal(),
        after.hours() - before.hours(),
        difference(before.price(), after.price()));
  }

  private static Split lines(Kind kind, List<LineChange> lines) {
    Amounts effect = BidComparison.effect(lines);
    return new Split(kind, lines.size(), effect.paintGal(), effect.hours(), null);
  }

  private static BigDecimal difference(Optional<Price> before, Optional<Price> after) {
    return before.isEmpty() || after.isEmpty()
        ? null
        : after.get().beforeTax().subtract(before.get().beforeTax());
  }
}
