package org.wetmil.audit.model;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.wetmil.audit.past.GroupedBy;
import org.wetmil.audit.past.Observation;

/**
 * Observations as rows over the groups as columns.
 *
 * <p>The outcome of a mixture is the sum of its parts' outcomes, so that its log ratio is no sum of
 * effects by their shares of the estimate. Near given effects it is one by their shares of the
 * outcome (derived: the first term of its series), which {@link #near} gives.
 */
final class Rows {
  private final double[] logs;
  private final int[] starts;
  private final int[][] columns;
  private final List<List<Mix>> mixes;

  /**
   * A mixture of parts.
   *
   * @param shares of the estimate, 1 together
   * @param slots by part, places in the row of the groups that the part is of
   */
  private record Mix(double[] shares, int[][] slots) {}

  /**
   * The rows as sums by shares.
   *
   * @param shares by row and place in the row
   * @param logs what the sums are to come to
   */
  record Linear(double[][] shares, double[] logs) {}

  /**
   * @param list observations, those of a bid beside each other
   * @param terms the groups in the order of their columns
   */
  Rows(List<Observation> list, List<Term> terms) {
    logs = list.stream().mapToDouble(Observation::logRatio).toArray();
    starts =
        IntStream.rangeClosed(0, list.size())
            .filter(i -> i == 0 || i == list.size() || list.get(i).bid() != list.get(i - 1).bid())
            .toArray();
    Map<GroupedBy, Map<String, Integer>> places = new EnumMap<>(GroupedBy.class);
    for (int i = 0; i < terms.size(); i++) {
      places.computeIfAbsent(terms.get(i).by(), by -> new HashMap<>()).put(terms.get(i).group(), i);
    }
    columns = new int[list.size()][];
    mixes = new ArrayList<>();
    for (int row = 0; row < list.size(); row++) {
      List<Integer> used = new ArrayList<>();
      List<Mix> parts = new ArrayList<>();
      for (Family family : Family.values()) {
        List<Family.Cell> cells = family.cells(list.get(row));
        double whole = cells.stream().mapToDouble(Family.Cell::share).sum();
        parts.add(
            new Mix(
                cells.stream().mapToDouble(cell -> cell.share() / whole).toArray(),
                cells.stream()
                    .map(cell -> slots(family, cell, places, used))
                    .toArray(int[][]::new)));
      }
      columns[row] = used.stream().mapToInt(Integer::intValue).toArray();
      mixes.add(parts);
    }
  }

  private static int[] slots(
      Family family,
      Family.Cell cell,
      Map<GroupedBy, Map<String, Integer>> places,
      List<Integer> used) {
    return Stream.of(
            places.getOrDefault(family.first(), Map.of()).get(cell.first()),
            family.second() == null
                ? null
                : places.getOrDefault(family.second(), Map.of()).get(cell.second()))
        .filter(place -> place != null)
        .mapToInt(
            place -> {
              if (!used.contains(place)) {
                used.add(place);
              }
              return used.indexOf(place);
            })
        .toArray();
  }

  int count() {
    return logs.length;
  }

  int bids() {
    return starts.length - 1;
  }

  /** The first row of a bid; that of the bid after the last is the number of rows. */
  int start(int bid) {
    return starts[bid];
  }

  /** The columns that a row has a share of. */
  int[] columns(int row) {
    return columns[row];
  }

  /**
   * @param effects log effects by column
   */
  Linear near(double[] effects) {
    double[][] shares = new double[logs.length][];
    double[] targets = new double[logs.length];
    for (int row = 0; row < logs.length; row++) {
      shares[row] = new double[columns[row].length];
      targets[row] = logs[row];
      for (Mix mix : mixes.get(row)) {
        targets[row] -= add(mix, row, effects, shares[row]);
      }
      for (int i = 0; i < columns[row].length; i++) {
        targets[row] += shares[row][i] * effects[columns[row][i]];
      }
    }
    return new Linear(shares, targets);
  }

  /** Adds the shares of the outcome that a mixture's groups have; gives its log ratio. */
  private double add(Mix mix, int row, double[] effects, double[] shares) {
    double[] parts = mix.shares().clone();
    double sum = 0;
    for (int part = 0; part < parts.length; part++) {
      double log = 0;
      for (int slot : mix.slots()[part]) {
        log += effects[columns[row][slot]];
      }
      parts[part] *= Math.exp(log);
      sum += parts[part];
    }
    for (int part = 0; part < parts.length; part++) {
      for (int slot : mix.slots()[part]) {
        shares[slot] += parts[part] / sum;
      }
    }
    return parts.length == 0 ? 0 : Math.log(sum);
  }
}
