package org.wetmil.audit.model;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.wetmil.audit.past.GroupedBy;
import org.wetmil.audit.past.Observation;

/**
 * One group of the model.
 *
 * @param jobs bids that have a part in it
 */
record Term(GroupedBy by, String group, int jobs) {

  /** The groups of one kind, by name. */
  static List<Term> of(GroupedBy by, List<Observation> list) {
    Map<String, Set<Integer>> groups = new TreeMap<>();
    for (Observation one : list) {
      for (String name : one.shares().get(by).keySet()) {
        groups.computeIfAbsent(name, group -> new TreeSet<>()).add(one.bid());
      }
    }
    return groups.entrySet().stream()
        .map(group -> new Term(by, group.getKey(), group.getValue().size()))
        .toList();
  }
}
