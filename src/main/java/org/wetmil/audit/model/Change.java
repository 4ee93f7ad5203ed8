package org.wetmil.audit.model;

import java.util.Set;
import org.wetmil.audit.past.GroupedBy;
import org.wetmil.audit.past.Measure;

/** What could be done with the factors, the simplest first. */
public enum Change {
  /** One factor for everything. */
  COMMON,
  /** Factors that the tables of a bid can carry. */
  TABLES,
  /** Those, and factors that the estimator puts on by hand when the crew is known. */
  BY_HAND;

  /**
   * The kinds of group whose factors it uses. The tables hold a loss for each coating and surface,
   * but a pace only for each surface. Last year's luck is never carried over.
   */
  Set<GroupedBy> kinds(Measure measure) {
    return switch (this) {
      case COMMON -> Set.of();
      case TABLES ->
          measure == Measure.PAINT
              ? Set.of(GroupedBy.COATING, GroupedBy.SURFACE)
              : Set.of(GroupedBy.SURFACE);
      case BY_HAND ->
          Set.of(GroupedBy.COATING, GroupedBy.SURFACE, GroupedBy.CREW, GroupedBy.CREW_AT_HEIGHT);
    };
  }

  /** Whether it uses the factors of a kind of group. */
  public boolean uses(Measure measure, GroupedBy by) {
    return kinds(measure).contains(by);
  }
}
