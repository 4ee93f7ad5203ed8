package org.wetmil.reconcile.match;

import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.wetmil.ledger.OtherGoods;
import org.wetmil.reconcile.bid.BidJob;

/** The names that are looked for in the texts of a job's lines; jobs with the same share them. */
final class Vocabulary {
  /** What is bought by volume and is no coating. */
  static final Set<String> OTHER_GOODS =
      OtherGoods.words().stream().map(Phrases::key).collect(Collectors.toUnmodifiableSet());

  private final Map<Set<String>, Phrases> made = new HashMap<>();

  /** The coatings of jobs and of their catalogues by all their names, and other goods. */
  Phrases of(List<BidJob> jobs) {
    Set<String> names = new LinkedHashSet<>();
    for (BidJob job : jobs) {
      job.uses().forEach(use -> names.add(use.coating()));
      job.otherNames()
          .forEach(
              (name, others) -> {
                names.add(name);
                names.addAll(others);
              });
    }
    return made.computeIfAbsent(names, Vocabulary::phrases);
  }

  private static Phrases phrases(Set<String> names) {
    Phrases phrases = new Phrases();
    names.forEach(phrases::add);
    OTHER_GOODS.forEach(phrases::add);
    return phrases;
  }
}
