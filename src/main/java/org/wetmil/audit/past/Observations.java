package org.wetmil.audit.past;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/**
 * Everything of one measure that can be compared, and what cannot.
 *
 * @param bids all past bids, those without outcome too
 * @param list in the order of the bids
 * @param unused what was left out, with the reason
 */
public record Observations(
    Measure measure, List<PastBid> bids, List<Observation> list, List<Unused> unused) {

  /** An outcome that cannot be compared. */
  public record Unused(String bid, Measure measure, double amount, String reason) {}

  public static Observations of(Measure measure, List<PastBid> bids) {
    Map<Integer, String> sizes = SizeClass.of(measure, bids);
    Set<String> climbers = climbers(bids);
    List<Observation> list = new ArrayList<>();
    List<Unused> unused = new ArrayList<>();
    for (int number = 0; number < bids.size(); number++) {
      PastBid bid = bids.get(number);
      for (Actual actual : bid.actuals()) {
        if (actual.measure() != measure) {
          continue;
        }
        double estimated = actual.lines().stream().mapToDouble(l -> l.estimated(measure)).sum();
        if (!(actual.amount() > 0) || Double.isInfinite(actual.amount())) {
          unused.add(new Unused(bid.id(), measure, actual.amount(), "no outcome above 0"));
        } else if (!(estimated > 0) || Double.isInfinite(estimated)) {
          unused.add(new Unused(bid.id(), measure, actual.amount(), "no estimate above 0"));
        } else {
          Map<GroupedBy, Map<String, Double>> shares = new EnumMap<>(GroupedBy.class);
          shares.put(GroupedBy.COATING, shares(actual, l -> named(l.coating())));
          shares.put(GroupedBy.SURFACE, shares(actual, l -> named(l.surface())));
          shares.put(GroupedBy.COATING_ON_SURFACE, shares(actual, Observations::pairName));
          shares.put(GroupedBy.HEIGHT, shares(actual, l -> named(l.height())));
          shares.put(GroupedBy.CREW, whole(bid.crew()));
          shares.put(
              GroupedBy.CREW_AT_HEIGHT,
              climbers.contains(bid.crew())
                  ? shares(actual, l -> atHeight(bid.crew(), l.height()))
                  : Map.of());
          shares.put(GroupedBy.ESTIMATOR, whole(bid.estimator()));
          shares.put(
              GroupedBy.YEAR,
              whole(bid.date() == null ? "" : Integer.toString(bid.date().getYear())));
          shares.put(GroupedBy.SIZE, whole(sizes.getOrDefault(number, "")));
          list.add(
              new Observation(
                  number,
                  estimated,
                  actual.amount(),
                  shares,
                  shares(actual, l -> Stream.of(new Observation.Pair(l.coating(), l.surface()))),
                  shares(actual, l -> l.fired().stream().sorted())));
        }
      }
    }
    return new Observations(measure, List.copyOf(bids), List.copyOf(list), List.copyOf(unused));
  }

  /** The groups of a kind by name. */
  public Collection<String> groups(GroupedBy by) {
    TreeSet<String> groups = new TreeSet<>();
    list.forEach(one -> groups.addAll(one.shares().get(by).keySet()));
    return groups;
  }

  /** The observations of each bid that has any, by its number. */
  public Map<Integer, List<Observation>> byBid() {
    Map<Integer, List<Observation>> byBid = new TreeMap<>();
    list.forEach(one -> byBid.computeIfAbsent(one.bid(), bid -> new ArrayList<>()).add(one));
    return byBid;
  }

  /** The same as if only some had an outcome. */
  public Observations only(Predicate<Observation> wanted) {
    return new Observations(measure, bids, list.stream().filter(wanted).toList(), unused);
  }

  /** The same with each outcome changed. */
  public Observations each(UnaryOperator<Observation> change) {
    return new Observations(measure, bids, list.stream().map(change).toList(), unused);
  }

  /** The same with the lines of a bid that are alike in every kind of the model as one. */
  public Observations merged() {
    List<Observation> merged =
        byBid().values().stream()
            .flatMap(
                bid -> {
                  Map<Object, Observation> alike = new LinkedHashMap<>();
                  for (Observation one : bid) {
                    alike.merge(one.modelShares(), one, Observation::with);
                  }
                  return alike.values().stream();
                })
            .toList();
    return new Observations(measure, bids, merged, unused);
  }

  /** The crew of a group of {@link GroupedBy#CREW_AT_HEIGHT}. */
  public String crewOf(String crewAtHeight) {
    return list.stream()
        .filter(one -> one.share(GroupedBy.CREW_AT_HEIGHT, crewAtHeight) > 0)
        .map(one -> bids.get(one.bid()).crew())
        .findFirst()
        .orElse("");
  }

  /** Crews that worked at more than one class of height; the others cannot be split by it. */
  private static Set<String> climbers(List<PastBid> bids) {
    Map<String, Set<String>> heights = new TreeMap<>();
    for (PastBid bid : bids) {
      bid.lines().stream()
          .map(PastLine::height)
          .filter(height -> !bid.crew().isBlank() && !height.isBlank())
          .forEach(h -> heights.computeIfAbsent(bid.crew(), crew -> new TreeSet<>()).add(h));
    }
    heights.values().removeIf(classes -> classes.size() < 2);
    return heights.keySet();
  }

  private static Stream<String> atHeight(String crew, String height) {
    return height.isBlank() ? Stream.empty() : Stream.of(crew + " at heights " + height);
  }

  private static Map<String, Double> whole(String group) {
    return group.isBlank() ? Map.of() : Map.of(group, 1.0);
  }

  private static Stream<String> named(String group) {
    return group.isBlank() ? Stream.empty() : Stream.of(group);
  }

  private static Stream<String> pairName(PastLine line) {
    return line.coating().isBlank() || line.surface().isBlank()
        ? Stream.empty()
        : Stream.of(line.coating() + " on " + line.surface());
  }

  private static <T> Map<T, Double> shares(Actual actual, Function<PastLine, Stream<T>> groups) {
    Measure measure = actual.measure();
    double whole = actual.lines().stream().mapToDouble(line -> line.estimated(measure)).sum();
    Map<T, Double> shares = new LinkedHashMap<>();
    for (PastLine line : actual.lines()) {
      double share = line.estimated(measure) / whole;
      if (share > 0) {
        groups.apply(line).forEach(group -> shares.merge(group, share, Double::sum));
      }
    }
    // Shares of many lines may add up to a last bit over 1.
    shares.replaceAll((group, share) -> Math.min(1, share));
    return shares;
  }
}
