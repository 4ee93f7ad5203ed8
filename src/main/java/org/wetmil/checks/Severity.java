package org.wetmil.checks;

import java.util.EnumMap;
import java.util.Map;
import java.util.stream.Stream;

/** How much a finding matters, from least to most. */
public enum Severity {
  /** Worth knowing. */
  NOTE,
  /** A setup, figure or input that may be wrong. */
  WARNING,
  /** A line that cannot be computed. */
  STOP;

  /** How many findings there are of each severity. */
  public static Map<Severity, Integer> counts(Stream<Finding> findings) {
    Map<Severity, Integer> counts = new EnumMap<>(Severity.class);
    findings.forEach(finding -> counts.merge(finding.severity(), 1, Integer::sum));
    return counts;
  }
}
