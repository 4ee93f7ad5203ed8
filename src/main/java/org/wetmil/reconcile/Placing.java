package org.wetmil.reconcile;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.wetmil.ledger.ItemName;
import org.wetmil.ledger.LedgerColumn;
import org.wetmil.ledger.LedgerLine;
import org.wetmil.reconcile.bid.BidJob;
import org.wetmil.reconcile.bid.BidUse;
import org.wetmil.reconcile.match.Duplicates;
import org.wetmil.reconcile.match.JobFinder;
import org.wetmil.reconcile.match.Match;
import org.wetmil.reconcile.match.Matchers;
import org.wetmil.reconcile.match.Reason;
import org.wetmil.reconcile.match.UnitPrices;

/** Puts each ledger line in its one place. */
final class Placing {
  private static final double NAN = Double.NaN;

  private final ReconcileSettings settings;
  private final String currency;
  private final JobFinder jobs;
  private final Matchers matchers;
  private final Map<String, BidUse> bids = new HashMap<>();
  private final UnitPrices prices;
  private final Duplicates duplicates = new Duplicates();

  /**
   * @param currency what the prices of the bids are in
   */
  Placing(
      List<BidJob> bidJobs,
      List<LedgerLine> lines,
      List<ItemName> items,
      ReconcileSettings settings,
      String currency) {
    this.settings = settings;
    this.currency = currency;
    this.jobs = new JobFinder(bidJobs.stream().map(BidJob::name).toList());
    this.matchers = new Matchers(bidJobs, items);
    this.prices = new UnitPrices(lines);
    for (BidJob job : bidJobs) {
      job.uses().forEach(use -> bids.put(job.name() + "\n" + use.coating(), use));
    }
  }

  PlacedLine place(LedgerLine line) {
    LedgerLine repeats = duplicates.earlier(line);
    Optional<String> job = jobs.find(line.text(LedgerColumn.JOB));
    if (settings.hasPeriod() && line.date() != null && !settings.isInside(line.date())) {
      return new PlacedLine(
          line, Place.OUTSIDE, job.orElse(""), "", null, null, List.of(), repeats, NAN, NAN);
    }
    Match match = matchers.match(job.orElse(""), line);
    if (match instanceof Match.None none) {
      boolean namesJob = none.reason() == Reason.NO_SUCH_JOB;
      List<String> nearest = namesJob ? jobs.nearest(line.text(LedgerColumn.JOB)) : none.nearest();
      return unmatched(line, job.orElse(""), none.reason(), nearest, repeats);
    }
    Match.Found found = (Match.Found) match;
    if (settings.hasPeriod() && line.date() == null) {
      return unreadable(line, job.orElseThrow(), "a date, since a period was asked for", repeats);
    }
    if (line.quantity() == null) {
      return unreadable(line, job.orElseThrow(), "a quantity", repeats);
    }
    if (!line.hasVolume()) {
      List<String> expected = List.of("gal, qt, pt, L, mL or a container such as pail of 5 gal");
      return unmatched(line, job.orElseThrow(), Reason.UNKNOWN_UNIT, expected, repeats);
    }
    return matched(line, job.orElseThrow(), found, repeats);
  }

  private PlacedLine matched(LedgerLine line, String job, Match.Found found, LedgerLine repeats) {
    Place place = repeats != null && settings.dropDuplicates() ? Place.LEFT_OUT : Place.MATCHED;
    BidUse bid = bids.get(job + "\n" + found.coating());
    boolean comparable = bid.pricePerGal() != null && line.currency().equals(currency);
    double bidPrice = comparable ? bid.pricePerGal().doubleValue() : NAN;
    double price = UnitPrices.pricePerGal(line);
    double usual = Double.isNaN(price) ? NAN : prices.usual(line, bidPrice);
    boolean far = UnitPrices.isFar(price, usual);
    return new PlacedLine(
        line,
        place,
        job,
        found.coating(),
        found.how(),
        null,
        List.of(),
        repeats,
        far ? price : NAN,
        far ? usual : NAN);
  }

  private static PlacedLine unreadable(
      LedgerLine line, String job, String expected, LedgerLine repeats) {
    return unmatched(line, job, Reason.UNREADABLE, List.of(expected), repeats);
  }

  private static PlacedLine unmatched(
      LedgerLine line, String job, Reason reason, List<String> suggestion, LedgerLine repeats) {
    return new PlacedLine(
        line, Place.UNMATCHED, job, "", null, reason, suggestion, repeats, NAN, NAN);
  }
}
