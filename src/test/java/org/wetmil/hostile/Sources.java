package org.wetmil.hostile;

/** What broken files are made from. */
public enum Sources {
  /** Bids of three lines, for every build. */
  SMALL,
  /** These and the samples, for long runs. */
  ALL
}
