package org.wetmil.audit.past;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** Bids by the size of their estimate, in thirds of those with an outcome (house rule). */
final class SizeClass {
  private static final List<String> NAMES =
      List.of("smallest third", "middle third", "largest third");

  private SizeClass() {}

  /** The third of each bid with an outcome, by its number. */
  static Map<Integer, String> of(Measure measure, List<PastBid> bids) {
    List<Integer> rising =
        IntStream.range(0, bids.size())
            .boxed()
            .filter(i -> bids.get(i).actuals().stream().anyMatch(a -> a.measure() == measure))
            .filter(i -> estimated(measure, bids.get(i)) > 0)
            .sorted(Comparator.comparingDouble(i -> estimated(measure, bids.get(i))))
            .toList();
    Map<Integer, String> classes = new HashMap<>();
    for (int rank = 0; rank < rising.size(); rank++) {
      classes.put(rising.get(rank), NAMES.get(rank * NAMES.size() / rising.size()));
    }
    return classes;
  }

  private static double estimated(Measure measure, PastBid bid) {
    return bid.lines().stream()
        .mapToDouble(line -> line.estimated(measure))
        .filter(amount -> !Double.isNaN(amount))
        .sum();
  }
}
