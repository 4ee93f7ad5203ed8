package org.wetmil.reconcile.match;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.wetmil.catalogue.Names;
import org.wetmil.ledger.ItemName;
import org.wetmil.ledger.LedgerColumn;
import org.wetmil.ledger.LedgerLine;
import org.wetmil.reconcile.bid.BidJob;
import org.wetmil.reconcile.bid.BidUse;

/**
 * Tells which coating of one job an item is: by the bookkeeper's table, by the exact name, or by
 * the words of a coating, class or other name found whole when exactly one coating of the job fits.
 */
public final class ItemMatcher {
  private static final Set<String> NONE = Set.of("", "none", "no", "not a coating", "no coating");

  private final Map<String, String> table = new HashMap<>();
  private final Phrases phrases = new Phrases();
  private final Map<String, String> ownNames = new LinkedHashMap<>();
  private final Map<String, String> ownWords = new HashMap<>();
  private final Map<String, Set<String>> byOtherName = new HashMap<>();
  private final Map<String, Match> known = new HashMap<>();
  private final boolean hasJob;

  private ItemMatcher(List<ItemName> items, boolean hasJob) {
    this.hasJob = hasJob;
    items.forEach(item -> table.putIfAbsent(Phrases.key(item.item()), item.coating()));
  }

  /** For the lines of one job. */
  public static ItemMatcher of(BidJob job, List<ItemName> items) {
    ItemMatcher matcher = new ItemMatcher(items, true);
    for (BidUse use : job.uses()) {
      matcher.ownNames.put(Phrases.key(use.coating()), use.coating());
      others(job, use.coating())
          .forEach(other -> matcher.ownWords.put(Phrases.key(other), use.coating()));
      matcher.other(use.className(), use.coating());
      others(job, use.className()).forEach(other -> matcher.other(other, use.coating()));
    }
    matcher.learn(job);
    return matcher;
  }

  /** For lines whose job is not known: only tells coatings from other things. */
  public static ItemMatcher withoutJob(List<BidJob> jobs, List<ItemName> items) {
    ItemMatcher matcher = new ItemMatcher(items, false);
    jobs.forEach(matcher::learn);
    return matcher;
  }

  private static List<String> others(BidJob job, String name) {
    return job.otherNames().getOrDefault(Names.key(name), List.of());
  }

  private void other(String name, String coating) {
    byOtherName.computeIfAbsent(Phrases.key(name), key -> new LinkedHashSet<>()).add(coating);
  }

  private void learn(BidJob job) {
    Set<String> names = new LinkedHashSet<>();
    job.uses().forEach(use -> names.add(use.coating()));
    job.otherNames()
        .forEach(
            (name, others) -> {
              names.add(name);
              names.addAll(others);
            });
    names.forEach(phrases::add);
  }

  public Match match(LedgerLine line) {
    String item = line.text(LedgerColumn.ITEM);
    String description = line.text(LedgerColumn.DESCRIPTION);
    boolean byVolume = !Double.isNaN(line.unitGal());
    return known.computeIfAbsent(
        item + "\n" + description + "\n" + byVolume, key -> find(item, description, byVolume));
  }

  private Match find(String item, String description, boolean byVolume) {
    List<String> keys =
        Stream.of(item, description).map(Phrases::key).filter(key -> !key.isEmpty()).toList();
    for (String key : keys) {
      if (table.containsKey(key)) {
        return fromTable(table.get(key));
      }
    }
    for (String key : keys) {
      if (ownNames.containsKey(key)) {
        return new Match.Found(ownNames.get(key), Match.How.NAME);
      }
    }
    Set<String> names = new LinkedHashSet<>(phrases.find(item));
    names.addAll(phrases.find(description));
    Set<String> fitting = fitting(names);
    if (fitting.size() == 1) {
      return new Match.Found(fitting.iterator().next(), Match.How.WORDS);
    }
    if (fitting.size() > 1) {
      return new Match.None(Reason.AMBIGUOUS, List.copyOf(fitting));
    }
    if (names.isEmpty() && !byVolume) {
      return new Match.None(Reason.NOT_A_COATING, List.of());
    }
    return none(item.isEmpty() ? description : item);
  }

  /**
   * The coatings that the names found mean. Where one is a coating's own name, or another word for
   * that name, it says more than the class that other coatings share.
   */
  private Set<String> fitting(Set<String> names) {
    Set<String> own = new LinkedHashSet<>();
    Set<String> other = new LinkedHashSet<>();
    for (String name : names) {
      if (ownNames.containsKey(name)) {
        own.add(ownNames.get(name));
      } else if (ownWords.containsKey(name)) {
        own.add(ownWords.get(name));
      }
      other.addAll(byOtherName.getOrDefault(name, Set.of()));
    }
    return own.isEmpty() ? other : own;
  }

  private Match fromTable(String coating) {
    String key = Phrases.key(coating);
    if (NONE.contains(key)) {
      return new Match.None(Reason.NOT_A_COATING, List.of());
    }
    Set<String> fitting = fitting(Set.of(key));
    if (fitting.size() == 1) {
      return new Match.Found(fitting.iterator().next(), Match.How.TABLE);
    }
    return fitting.isEmpty()
        ? none(coating)
        : new Match.None(Reason.AMBIGUOUS, List.copyOf(fitting));
  }

  private Match none(String name) {
    if (!hasJob) {
      return new Match.None(Reason.NO_SUCH_JOB, List.of());
    }
    List<String> nearest = new ArrayList<>(Names.nearest(name, ownNames.values().stream()));
    ownNames.values().stream().filter(own -> !nearest.contains(own)).forEach(nearest::add);
    return new Match.None(Reason.NO_SUCH_COATING, nearest.subList(0, Math.min(3, nearest.size())));
  }
}
