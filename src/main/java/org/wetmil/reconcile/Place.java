package org.wetmil.reconcile;

/** Where a ledger line ends up; every line has exactly one place. */
public enum Place {
  /** On a coating of a job. */
  MATCHED,
  /** On none, with a reason. */
  UNMATCHED,
  /** Outside the period asked for. */
  OUTSIDE,
  /** A duplicate that is left out, as was asked for. */
  LEFT_OUT
}
