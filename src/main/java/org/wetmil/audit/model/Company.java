package org.wetmil.audit.model;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.wetmil.audit.past.GroupedBy;
import org.wetmil.audit.past.Observation;

/**
 * What the groups add that a group always goes with, on average over its own work: the surfaces of
 * a coating, the coatings of a surface, the heights of a crew, the crew of a height.
 */
final class Company {
  private final Map<GroupedBy, Map<String, double[]>> sums = new EnumMap<>(GroupedBy.class);
  private final Map<GroupedBy, Map<String, Double>> logs;

  private Company(Map<GroupedBy, Map<String, Double>> logs) {
    this.logs = logs;
  }

  /**
   * @param logs log effects by kind and group
   */
  static Company of(List<Observation> list, Map<GroupedBy, Map<String, Double>> logs) {
    Company company = new Company(logs);
    for (Observation one : list) {
      for (Family family : List.of(Family.WORK, Family.CREW)) {
        for (Family.Cell cell : family.cells(one)) {
          double amount = cell.share() * one.estimated();
          company.add(
              family.first(), cell.first(), company.log(family.second(), cell.second()), amount);
          company.add(
              family.second(), cell.second(), company.log(family.first(), cell.first()), amount);
        }
      }
    }
    return company;
  }

  /** Log; 0 for a group that goes with none. */
  double along(GroupedBy by, String group) {
    double[] sum = sums.getOrDefault(by, Map.of()).get(group);
    return sum == null ? 0 : Math.log(sum[0] / sum[1]);
  }

  private void add(GroupedBy by, String group, double log, double amount) {
    double[] sum =
        sums.computeIfAbsent(by, any -> new HashMap<>())
            .computeIfAbsent(group, any -> new double[2]);
    sum[0] += amount * Math.exp(log);
    sum[1] += amount;
  }

  private double log(GroupedBy by, String group) {
    return logs.getOrDefault(by, Map.of()).getOrDefault(group, 0.0);
  }
}
