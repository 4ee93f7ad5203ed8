package org.wetmil.reconcile;

/** Where a ledger line ends up; every line has exactly one place. */
public enum Place {
  /** On a coating of a job. */
  MATCHED("matched"),
  /** On none, with a reason. */
  UNMATCHED("unmatched"),
  /** Outside the period asked for. */
  OUTSIDE("outside the period"),
  /** A duplicate that is left out, as was asked for. */
  LEFT_OUT("duplicate, left out");

  private final String title;

  Place(String title) {
    this.title = title;
  }

  /** The word for it in lists. */
  public String title() {
    return title;
  }
}
