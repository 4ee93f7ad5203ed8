package org.wetmil.reconcile.match;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.wetmil.ledger.ItemName;
import org.wetmil.ledger.LedgerLine;
import org.wetmil.reconcile.bid.BidJob;

/** Tells which coating a line is, job by job. */
public final class Matchers {
  private final Map<String, ItemMatcher> byJob = new HashMap<>();
  private final ItemMatcher withoutJob;

  /**
   * @param items the bookkeeper's table for all jobs
   */
  public Matchers(List<BidJob> jobs, List<ItemName> items) {
    ItemTable table = new ItemTable(items);
    Vocabulary vocabulary = new Vocabulary();
    Map<String, List<String>> elsewhere = new LinkedHashMap<>();
    for (BidJob job : jobs) {
      byJob.put(job.name(), ItemMatcher.of(job, table, vocabulary, elsewhere));
    }
    withoutJob = ItemMatcher.withoutJob(table, vocabulary.of(jobs));
  }

  /**
   * The coating of a line.
   *
   * @param job its job as the bids name it; empty when it names none of them
   */
  public Match match(String job, LedgerLine line) {
    return byJob.getOrDefault(job, withoutJob).match(line);
  }
}
