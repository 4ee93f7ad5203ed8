package org.wetmil.checks;

/** How much a finding matters, from least to most. */
public enum Severity {
  /** Worth knowing. */
  NOTE,
  /** A setup, figure or input that may be wrong. */
  WARNING,
  /** A line that cannot be computed. */
  STOP
}
