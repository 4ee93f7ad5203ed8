package org.wetmil.reconcile;

import java.math.BigDecimal;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import org.wetmil.ledger.HouseFigure;
import org.wetmil.ledger.ItemName;
import org.wetmil.ledger.Ledger;
import org.wetmil.ledger.LedgerLine;
import org.wetmil.reconcile.bid.BidJob;
import org.wetmil.reconcile.bid.BidUse;
import org.wetmil.reconcile.match.Reason;
import org.wetmil.reconcile.match.UnitPrices;
import org.wetmil.reconcile.use.CoatingUse;
import org.wetmil.reconcile.use.GroupUse;
import org.wetmil.reconcile.use.KindSums;
import org.wetmil.reconcile.use.MoneyVariance;
import org.wetmil.reconcile.use.Tally;

/** Compares purchase ledgers with bids. */
public final class Reconciler {
  /** Judgement that the comparison rests on. */
  public static final List<HouseFigure> HOUSE =
      List.of(UnitPrices.FAR, Flagging.COAT_TOLERANCE, Flagging.NO_PAINT);

  private static final String NO_DATE = "no date";

  private final List<BidJob> jobs;
  private final ReconcileSettings settings;
  private final List<PlacedLine> placed = new ArrayList<>();
  private final String currency;

  private Reconciler(List<BidJob> jobs, ReconcileSettings settings, String currency) {
    this.jobs = jobs;
    this.settings = settings;
    this.currency = currency;
  }

  /**
   * Compares ledgers with bids.
   *
   * @param bids jobs as bid; those of one name are taken together
   * @param ledgers ledgers as read
   * @param items the bookkeeper's own table; may be empty
   */
  public static Reconciliation reconcile(
      List<BidJob> bids,
      List<Ledger.Book> ledgers,
      List<ItemName> items,
      ReconcileSettings settings) {
    List<LedgerLine> lines = ledgers.stream().flatMap(book -> book.lines().stream()).toList();
    String currency = usualCurrency(lines);
    List<BidJob> jobs = BidJob.byName(bids.stream().map(bid -> bid.pricedIn(currency)).toList());
    Reconciler reconciler = new Reconciler(jobs, settings, currency);
    Placing placing = new Placing(jobs, lines, items, settings, currency);
    lines.forEach(line -> reconciler.placed.add(placing.place(line)));
    return reconciler.result();
  }

  private Reconciliation result() {
    Tally read = new Tally();
    Map<Place, Tally> places = new EnumMap<>(Place.class);
    Map<Reason, Tally> reasons = new EnumMap<>(Reason.class);
    for (Place place : Place.values()) {
      places.put(place, new Tally());
    }
    for (PlacedLine line : placed) {
      read.add(line.line());
      places.get(line.place()).add(line.line());
      if (line.reason() != null) {
        reasons.computeIfAbsent(line.reason(), reason -> new Tally()).add(line.line());
      }
    }
    List<CoatingUse> uses = uses();
    return new Reconciliation(
        settings,
        currency,
        List.copyOf(placed),
        read,
        places,
        reasons,
        uses,
        groups(uses, CoatingUse::coating, PlacedLine::coating),
        groups(uses, CoatingUse::job, PlacedLine::job),
        months(),
        new Flagging(uses, placed, settings).flags());
  }

  private List<CoatingUse> uses() {
    Map<String, KindSums> sums = new HashMap<>();
    Map<String, KindSums> allJobs = new HashMap<>();
    Map<String, Double> smallest = new HashMap<>();
    for (PlacedLine line : placed) {
      if (line.isMatched()) {
        String key = key(line.job(), line.coating());
        add(sums, key, line);
        add(allJobs, line.coating(), line);
        smallest.merge(key, line.line().unitGal(), Math::min);
      }
    }
    List<CoatingUse> uses = new ArrayList<>();
    for (BidJob job : jobs) {
      for (BidUse bid : job.uses()) {
        String key = key(job.name(), bid.coating());
        KindSums ledger = sums.getOrDefault(key, new KindSums());
        BigDecimal paid = ledger.pricePerGal();
        if (paid == null && allJobs.containsKey(bid.coating())) {
          paid = allJobs.get(bid.coating()).pricePerGal();
        }
        double container = smallest.getOrDefault(key, bid.containerGal());
        double tolerance =
            Math.max(
                settings.toleranceShare() * bid.paintGal(),
                settings.toleranceContainers() * container);
        uses.add(new CoatingUse(job.name(), bid, ledger, paid, tolerance));
      }
    }
    return List.copyOf(uses);
  }

  /** Sums of uses that share a name, and of the lines that carry the same name. */
  private List<GroupUse> groups(
      List<CoatingUse> uses,
      Function<CoatingUse, String> name,
      Function<PlacedLine, String> nameOfLine) {
    Map<String, List<CoatingUse>> parts = new LinkedHashMap<>();
    uses.forEach(use -> parts.computeIfAbsent(name.apply(use), n -> new ArrayList<>()).add(use));
    Map<String, Tally> matched = tallies(Place.MATCHED, nameOfLine);
    Map<String, Tally> unmatched = tallies(Place.UNMATCHED, nameOfLine);
    List<GroupUse> groups = new ArrayList<>();
    parts.forEach(
        (group, members) -> {
          KindSums ledger = new KindSums();
          members.forEach(member -> ledger.add(member.ledger()));
          groups.add(
              new GroupUse(
                  group,
                  members.stream().mapToDouble(member -> member.bid().paintGal()).sum(),
                  ledger,
                  money(members),
                  matched.getOrDefault(group, new Tally()),
                  unmatched.getOrDefault(group, new Tally())));
        });
    return List.copyOf(groups);
  }

  /** The lines of a place by a name. */
  private Map<String, Tally> tallies(Place place, Function<PlacedLine, String> name) {
    Map<String, Tally> tallies = new HashMap<>();
    placed.stream()
        .filter(line -> line.place() == place)
        .forEach(
            line -> tallies.computeIfAbsent(name.apply(line), n -> new Tally()).add(line.line()));
    return tallies;
  }

  /** Sums of the parts; null when one that was bid or used has no price. */
  private static MoneyVariance money(List<CoatingUse> members) {
    MoneyVariance sum = MoneyVariance.NOTHING;
    for (CoatingUse member : members) {
      MoneyVariance part = member.money();
      if (part == null) {
        return null;
      }
      sum = sum.plus(part);
    }
    return sum;
  }

  private List<GroupUse> months() {
    Map<String, KindSums> ledger = new TreeMap<>();
    for (PlacedLine line : placed) {
      if (line.isMatched()) {
        add(ledger, month(line), line);
      } else if (line.place() == Place.UNMATCHED) {
        ledger.computeIfAbsent(month(line), m -> new KindSums());
      }
    }
    Map<String, Tally> matched = tallies(Place.MATCHED, Reconciler::month);
    Map<String, Tally> unmatched = tallies(Place.UNMATCHED, Reconciler::month);
    // digits come before letters, so lines without a date come last
    return ledger.entrySet().stream()
        .map(
            entry ->
                new GroupUse(
                    entry.getKey(),
                    Double.NaN,
                    entry.getValue(),
                    null,
                    matched.getOrDefault(entry.getKey(), new Tally()),
                    unmatched.getOrDefault(entry.getKey(), new Tally())))
        .toList();
  }

  private static String month(PlacedLine line) {
    return line.line().date() == null ? NO_DATE : YearMonth.from(line.line().date()).toString();
  }

  private void add(Map<String, KindSums> sums, String key, PlacedLine line) {
    sums.computeIfAbsent(key, k -> new KindSums()).add(line.line(), isInCurrency(line.line()));
  }

  private boolean isInCurrency(LedgerLine line) {
    return line.currency().equals(currency);
  }

  private static String key(String job, String coating) {
    return job + "\n" + coating;
  }

  /** The currency of most lines with an amount; of equally many, the first by name. */
  private static String usualCurrency(List<LedgerLine> lines) {
    Map<String, Integer> counts = new TreeMap<>();
    lines.stream()
        .filter(line -> line.amount() != null)
        .forEach(line -> counts.merge(line.currency(), 1, Integer::sum));
    String usual = "";
    int most = 0;
    for (Map.Entry<String, Integer> entry : counts.entrySet()) {
      if (entry.getValue() > most) {
        usual = entry.getKey();
        most = entry.getValue();
      }
    }
    return usual;
  }
}
