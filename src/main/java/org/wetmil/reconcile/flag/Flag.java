package org.wetmil.reconcile.flag;

import java.util.List;
import java.util.stream.Collectors;
import org.wetmil.ledger.LedgerLine;

/**
 * Something that the bookkeeper should look at, as data.
 *
 * @param job empty when it is about no job
 * @param coating empty when it is about no coating
 * @param line the ledger line; null where it is about the use of a coating, whose figures say more
 * @param first the line that it repeats; null when it repeats none
 * @param pricePerGal its price of a US gallon where that is what was found; NaN else
 * @param usualPricePerGal what that was compared with; NaN as above
 * @param causes what it could mean, the likeliest first
 */
public record Flag(
    Type type,
    String job,
    String coating,
    LedgerLine line,
    LedgerLine first,
    double pricePerGal,
    double usualPricePerGal,
    List<Cause> causes) {
  public Flag {
    causes = List.copyOf(causes);
  }

  /** What was found. */
  public enum Type {
    OVER_BID("more used than bid"),
    UNDER_BID("less used than bid"),
    IMPOSSIBLE_YIELD("more film than the paint used can hold"),
    JOB_NOT_NAMED("bid, and named by no ledger line"),
    NOTHING_BOUGHT("bid, and nothing in the ledgers"),
    NOTHING_USED("as much went out as came in"),
    PRICE_OFF("price paid differs from the price bid"),
    ONE_SIDED_TRANSFER("moved out and moved in differ"),
    UNIT_MISTAKE("price by volume far from the others"),
    DUPLICATE_LINE("the same line twice");

    private final String title;

    Type(String title) {
      this.title = title;
    }

    public String title() {
      return title;
    }
  }

  /** What it could mean, as one sentence; empty when nothing can be said. */
  public String couldMean() {
    return causes.isEmpty()
        ? ""
        : "Could be "
            + causes.stream().map(Cause::couldMean).collect(Collectors.joining("; "))
            + ".";
  }

  /** What to look at first, as one sentence; empty when nothing can be said. */
  public String lookFirst() {
    return causes.isEmpty() ? "" : "Look first at " + causes.get(0).lookAt() + ".";
  }
}
