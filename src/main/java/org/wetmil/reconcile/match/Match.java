package org.wetmil.reconcile.match;

import java.util.List;

/** Which coating of a job an item is, or why none. */
public sealed interface Match {

  /** How a coating was found. */
  enum How {
    TABLE("by table"),
    NAME("by name"),
    WORDS("by words");

    private final String title;

    How(String title) {
      this.title = title;
    }

    /** What State says. */
    public String title() {
      return title;
    }
  }

  record Found(String coating, How how) implements Match {}

  /**
   * None.
   *
   * @param nearest names that may have been meant, best first
   */
  record None(Reason reason, List<String> nearest) implements Match {
    public None {
      nearest = List.copyOf(nearest);
    }
  }
}
