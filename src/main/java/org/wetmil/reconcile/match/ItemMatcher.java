package org.wetmil.reconcile.match;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.wetmil.catalogue.Names;
import org.wetmil.ledger.LedgerColumn;
import org.wetmil.ledger.LedgerLine;
import org.wetmil.reconcile.bid.BidJob;
import org.wetmil.reconcile.bid.BidUse;

/**
 * Tells which coating of one job an item is: by the bookkeeper's table, by the exact name, or by
 * the words of a coating, class or other name found whole when exactly one coating of the job fits.
 */
final class ItemMatcher {
  /** What follows says more about the item and is not what it is. */
  private static final Pattern REMARK =
      Pattern.compile(
          "[,;(\\[]| - |\\b(?:for|with|f\u00fcr|mit|para|con)\\b",
          Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE | Pattern.UNICODE_CHARACTER_CLASS);

  private static final Set<String> NONE = Set.of("", "none", "no", "not a coating", "no coating");

  /** Coatings that may be meant, beyond which a list is not read. */
  private static final int MOST = 3;

  private final ItemTable own;
  private final ItemTable shared;
  private final Phrases phrases;
  private final Map<String, List<String>> elsewhere;
  private final Map<String, String> ownNames = new LinkedHashMap<>();
  private final Map<String, String> ownWords = new HashMap<>();
  private final Map<String, Set<String>> byOtherName = new HashMap<>();
  private final Map<String, Match> known = new HashMap<>();
  private final boolean hasJob;

  private ItemMatcher(
      ItemTable own,
      ItemTable shared,
      Phrases phrases,
      Map<String, List<String>> elsewhere,
      boolean hasJob) {
    this.own = own;
    this.shared = shared;
    this.phrases = phrases;
    this.elsewhere = elsewhere;
    this.hasJob = hasJob;
  }

  /**
   * For the lines of one job.
   *
   * @param shared the table for all jobs; the job's own comes before it
   * @param elsewhere by a name, the coatings of jobs that have it; this job's are added
   */
  static ItemMatcher of(
      BidJob job, ItemTable shared, Vocabulary vocabulary, Map<String, List<String>> elsewhere) {
    Phrases phrases = vocabulary.of(List.of(job));
    ItemMatcher matcher =
        new ItemMatcher(new ItemTable(job.items()), shared, phrases, elsewhere, true);
    for (BidUse use : job.uses()) {
      matcher.ownNames.put(Phrases.key(use.coating()), use.coating());
      others(job, use.coating())
          .forEach(other -> matcher.ownWords.put(Phrases.key(other), use.coating()));
      matcher.other(use.className(), use.coating());
      others(job, use.className()).forEach(other -> matcher.other(other, use.coating()));
    }
    matcher.tell(job.name());
    return matcher;
  }

  /** For lines whose job is not known: only tells coatings from other things. */
  static ItemMatcher withoutJob(ItemTable shared, Phrases phrases) {
    return new ItemMatcher(new ItemTable(List.of()), shared, phrases, Map.of(), false);
  }

  private static List<String> others(BidJob job, String name) {
    return job.otherNames().getOrDefault(Names.key(name), List.of());
  }

  private void other(String name, String coating) {
    byOtherName.computeIfAbsent(Phrases.key(name), key -> new LinkedHashSet<>()).add(coating);
  }

  /** Lets lines of other jobs know what is to be had here. */
  private void tell(String job) {
    Map<String, String> names = new LinkedHashMap<>(ownNames);
    ownWords.forEach(names::putIfAbsent);
    byOtherName.forEach((name, coatings) -> names.putIfAbsent(name, coatings.iterator().next()));
    names.forEach(
        (name, coating) -> {
          List<String> told = elsewhere.computeIfAbsent(name, key -> new ArrayList<>());
          if (told.size() < MOST) {
            told.add(coating + " of " + job);
          }
        });
  }

  Match match(LedgerLine line) {
    String item = line.text(LedgerColumn.ITEM);
    String description = line.text(LedgerColumn.DESCRIPTION);
    boolean byVolume = !Double.isNaN(line.unitGal());
    return known.computeIfAbsent(
        item + "\n" + description + "\n" + byVolume, key -> find(item, description, byVolume));
  }

  private Match find(String item, String description, boolean byVolume) {
    List<String> keys =
        Stream.of(item, description).map(Phrases::key).filter(key -> !key.isEmpty()).toList();
    for (ItemTable table : List.of(own, shared)) {
      for (String key : keys) {
        Optional<String> coating = table.coating(key);
        if (coating.isPresent()) {
          return fromTable(coating.get());
        }
      }
    }
    for (String key : keys) {
      if (ownNames.containsKey(key)) {
        return new Match.Found(ownNames.get(key), Match.How.NAME);
      }
    }
    Set<String> names = new LinkedHashSet<>(phrases.find(item));
    names.addAll(phrases.find(description));
    boolean otherGoods = names.removeAll(Vocabulary.OTHER_GOODS);
    if (otherGoods && (names.isEmpty() || isOther(item) || isOther(description))) {
      return otherGoods(item, description);
    }
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
    return none(item.isEmpty() ? description : item, names);
  }

  /** Whether a text is about what is no coating: lacquer thinner, but not enamel with thinner. */
  private boolean isOther(String text) {
    Set<String> head = phrases.find(REMARK.split(text, 2)[0]);
    return Vocabulary.OTHER_GOODS.contains(head.stream().reduce("", (first, last) -> last));
  }

  /** No coating, unless the other of the two texts is about one. */
  private Match otherGoods(String item, String description) {
    List<String> coatings =
        Stream.of(item, description)
            .filter(text -> !isOther(text))
            .map(text -> phrases.find(REMARK.split(text, 2)[0]))
            .flatMap(names -> fitting(names).stream())
            .toList();
    return coatings.isEmpty()
        ? new Match.None(Reason.NOT_A_COATING, List.of())
        : new Match.None(
            Reason.AMBIGUOUS,
            Stream.concat(coatings.stream(), Stream.of(Reason.NOT_A_COATING.title())).toList());
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
        ? none(coating, Set.of(key))
        : new Match.None(Reason.AMBIGUOUS, List.copyOf(fitting));
  }

  /** None: a coating of another job, or one of this job that is spelt alike, may be meant. */
  private Match none(String name, Set<String> found) {
    if (!hasJob) {
      return new Match.None(Reason.NO_SUCH_JOB, List.of());
    }
    List<String> meant =
        Stream.concat(
                found.stream().flatMap(key -> elsewhere.getOrDefault(key, List.of()).stream()),
                Names.nearest(name, ownNames.values().stream()).stream())
            .distinct()
            .limit(MOST)
            .toList();
    return new Match.None(Reason.NO_SUCH_COATING, meant);
  }
}
