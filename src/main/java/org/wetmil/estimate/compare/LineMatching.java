package org.wetmil.estimate.compare;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.wetmil.catalogue.Names;
import org.wetmil.estimate.BidLine;
import org.wetmil.estimate.InputColumn;
import org.wetmil.estimate.InputValue;

/**
 * Which line of one version became which of the other, wherever they stand: first by keys that
 * occur once on either side, then by likeness within a room. What is left was taken out or put in.
 *
 * @param pairs in the order of the second version
 * @param onlyA lines of the first without one in the second
 * @param onlyB lines of the second without one in the first
 */
public record LineMatching(List<LinePair> pairs, List<BidLine> onlyA, List<BidLine> onlyB) {
  private static final List<InputColumn> ROOM = List.of(InputColumn.FLOOR, InputColumn.ROOM);
  private static final List<InputColumn> SURFACE =
      List.of(InputColumn.FLOOR, InputColumn.ROOM, InputColumn.SURFACE);
  private static final List<InputColumn> NAMES =
      List.of(
          InputColumn.FLOOR,
          InputColumn.ROOM,
          InputColumn.SURFACE,
          InputColumn.COATING,
          InputColumn.COLOUR,
          InputColumn.SHEEN);

  /** Least share of the inputs stated that must be the same for likeness (house). */
  private static final double LEAST_LIKENESS = 0.5;

  /** Lines of a room past which likeness, which looks at every pair, is not asked for. */
  private static final int MOST_IN_A_ROOM = 200;

  public LineMatching {
    pairs = List.copyOf(pairs);
    onlyA = List.copyOf(onlyA);
    onlyB = List.copyOf(onlyB);
  }

  public static LineMatching of(List<BidLine> a, List<BidLine> b) {
    return new Matcher(a, b).match();
  }

  /** How many lines were found in each way; ways that found none are left out. */
  public Map<LinePair.How, Integer> counts() {
    Map<LinePair.How, Integer> counts = new EnumMap<>(LinePair.How.class);
    pairs.forEach(pair -> counts.merge(pair.how(), 1, Integer::sum));
    return counts;
  }

  private static final class Matcher {
    private final List<BidLine> allA;
    private final List<BidLine> allB;

    // by the line itself: two that say the same may stand side by side in one row
    private final Set<BidLine> a = Collections.newSetFromMap(new IdentityHashMap<>());
    private final Set<BidLine> b = Collections.newSetFromMap(new IdentityHashMap<>());
    private final Map<BidLine, LinePair> pairs = new IdentityHashMap<>();

    Matcher(List<BidLine> a, List<BidLine> b) {
      this.allA = a;
      this.allB = b;
      this.a.addAll(a);
      this.b.addAll(b);
    }

    LineMatching match() {
      // lines that say the same are one as good as the other, so that their order serves
      inOrder(line -> key(line, Arrays.asList(InputColumn.values())), LinePair.How.ALIKE);
      unique(line -> key(line, NAMES), LinePair.How.NAMES);
      unique(line -> key(line, SURFACE), LinePair.How.SURFACE);
      similar();
      unique(LineMatching::elsewhere, LinePair.How.ELSEWHERE);
      inOrder(line -> key(line, SURFACE), LinePair.How.ORDER);
      List<LinePair> found = allB.stream().filter(pairs::containsKey).map(pairs::get).toList();
      return new LineMatching(found, left(allA, a), left(allB, b));
    }

    private static List<BidLine> left(List<BidLine> all, Set<BidLine> unpaired) {
      return all.stream().filter(unpaired::contains).toList();
    }

    private void pair(BidLine one, BidLine other, LinePair.How how) {
      pairs.put(other, new LinePair(one, other, how));
      a.remove(one);
      b.remove(other);
    }

    private void unique(Function<BidLine, String> key, LinePair.How how) {
      Map<String, List<BidLine>> ones = grouped(allA, a, key);
      Map<String, List<BidLine>> others = grouped(allB, b, key);
      ones.forEach(
          (name, lines) -> {
            List<BidLine> there = others.getOrDefault(name, List.of());
            if (!name.isEmpty() && lines.size() == 1 && there.size() == 1) {
              pair(lines.get(0), there.get(0), how);
            }
          });
    }

    private void inOrder(Function<BidLine, String> key, LinePair.How how) {
      Map<String, List<BidLine>> others = grouped(allB, b, key);
      grouped(allA, a, key)
          .forEach(
              (name, lines) -> {
                List<BidLine> there = others.getOrDefault(name, List.of());
                for (int i = 0; i < Math.min(lines.size(), there.size()); i++) {
                  pair(lines.get(i), there.get(i), how);
                }
              });
    }

    /** The two of a room that are most alike, where no other is as much alike to either. */
    private void similar() {
      Map<String, List<BidLine>> others = grouped(allB, b, line -> key(line, ROOM));
      grouped(allA, a, line -> key(line, ROOM))
          .forEach((room, lines) -> similar(lines, others.getOrDefault(room, List.of())));
    }

    private void similar(List<BidLine> ones, List<BidLine> others) {
      if (ones.size() > MOST_IN_A_ROOM || others.size() > MOST_IN_A_ROOM) {
        return;
      }
      record Likeness(BidLine one, BidLine other, double share) {}
      List<Likeness> all = new ArrayList<>();
      for (BidLine one : ones) {
        for (BidLine other : others) {
          double share = likeness(one, other);
          if (share >= LEAST_LIKENESS) {
            all.add(new Likeness(one, other, share));
          }
        }
      }
      all.sort(Comparator.comparingDouble((Likeness each) -> -each.share()));
      for (Likeness best : all) {
        boolean rivals =
            all.stream()
                .filter(each -> each != best && each.share() >= best.share())
                .filter(each -> each.one() == best.one() || each.other() == best.other())
                .anyMatch(each -> a.contains(each.one()) && b.contains(each.other()));
        if (!rivals && a.contains(best.one()) && b.contains(best.other())) {
          pair(best.one(), best.other(), LinePair.How.SIMILAR);
        }
      }
    }

    private static Map<String, List<BidLine>> grouped(
        List<BidLine> all, Set<BidLine> unpaired, Function<BidLine, String> key) {
      return left(all, unpaired).stream()
          .collect(Collectors.groupingBy(key, LinkedHashMap::new, Collectors.toList()));
    }
  }

  /** Share of the inputs that either states which both state alike. */
  private static double likeness(BidLine one, BidLine other) {
    int stated = 0;
    int same = 0;
    for (InputColumn column : InputColumn.values()) {
      InputValue a = one.get(column);
      InputValue b = other.get(column);
      if (!a.isBlank() || !b.isBlank()) {
        stated++;
        same += Same.same(column, a, b) ? 1 : 0;
      }
    }
    return stated == 0 ? 0 : (double) same / stated;
  }

  /** All but where it is; empty where that is too little to know a line by. */
  private static String elsewhere(BidLine line) {
    boolean sized =
        line.has(InputColumn.LENGTH) || line.has(InputColumn.AREA) || line.has(InputColumn.COUNT);
    List<InputColumn> rest = new ArrayList<>(Arrays.asList(InputColumn.values()));
    rest.removeAll(ROOM);
    rest.remove(InputColumn.NOTES);
    return sized ? key(line, rest) : "";
  }

  private static String key(BidLine line, List<InputColumn> columns) {
    StringBuilder key = new StringBuilder();
    for (InputColumn column : columns) {
      InputValue value = line.get(column);
      key.append(
          value.hasNumber()
              ? String.format(Locale.ROOT, "%.9g to %.9g", value.low(), value.high())
              : Names.key(line.text(column)));
      key.append('\n');
    }
    return key.toString();
  }
}
