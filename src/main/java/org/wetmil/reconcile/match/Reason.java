package org.wetmil.reconcile.match;

/** Why a line is not matched, in the order in which they are listed: those to act on first. */
public enum Reason {
  NO_SUCH_JOB("no such job"),
  NO_SUCH_COATING("no such coating in this bid"),
  AMBIGUOUS("ambiguous"),
  UNKNOWN_UNIT("unknown unit"),
  UNREADABLE("unreadable"),
  NOT_A_COATING("not a coating");

  private final String title;

  Reason(String title) {
    this.title = title;
  }

  public String title() {
    return title;
  }
}
