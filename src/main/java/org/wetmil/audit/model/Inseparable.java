package org.wetmil.audit.model;

import java.util.ArrayList;
import java.util.List;
import org.wetmil.audit.past.GroupedBy;
import org.wetmil.audit.past.Observation;
import org.wetmil.audit.past.Observations;

/**
 * Two groups of different kinds that no outcome tells apart: wherever the one is, the other is, in
 * the same share. Their factors together are sound; how they split is not.
 */
public record Inseparable(GroupedBy firstBy, String first, GroupedBy secondBy, String second) {

  public static List<Inseparable> of(Observations observations) {
    List<Inseparable> pairs = new ArrayList<>();
    for (GroupedBy firstBy : GroupedBy.values()) {
      for (GroupedBy secondBy : GroupedBy.values()) {
        if (firstBy.compareTo(secondBy) < 0
            && secondBy.isInModel()
            && firstBy != GroupedBy.CREW_AT_HEIGHT
            && secondBy != GroupedBy.CREW_AT_HEIGHT) {
          for (String first : observations.groups(firstBy)) {
            for (String second : observations.groups(secondBy)) {
              if (isTogether(observations.list(), firstBy, first, secondBy, second)) {
                pairs.add(new Inseparable(firstBy, first, secondBy, second));
              }
            }
          }
        }
      }
    }
    return pairs;
  }

  /** Whether a group is one of the two. */
  public boolean names(GroupedBy by, String group) {
    return (by == firstBy && group.equals(first)) || (by == secondBy && group.equals(second));
  }

  /** The other of the two. */
  public String partnerOf(GroupedBy by, String group) {
    return by == firstBy && group.equals(first) ? second : first;
  }

  private static boolean isTogether(
      List<Observation> list, GroupedBy firstBy, String first, GroupedBy secondBy, String second) {
    return list.stream()
        .allMatch(one -> Math.abs(one.share(firstBy, first) - one.share(secondBy, second)) < 1e-9);
  }
}
