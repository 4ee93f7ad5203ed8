package org.wetmil.jobs;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.wetmil.checks.Finding;
import org.wetmil.checks.Severity;
import org.wetmil.reconcile.Place;
import org.wetmil.reconcile.Reconciliation;

/**
 * What came of comparing purchases with bids.
 *
 * @param output the workbook written; null when nothing could be compared
 * @param result null as above
 * @param notices what was passed over, and why
 * @param refusals files that cannot be used, one sentence each
 */
public record ReconcileReport(
    Path output,
    Reconciliation result,
    List<Finding> findings,
    List<String> notices,
    List<String> refusals) {
  public ReconcileReport {
    findings = List.copyOf(findings);
    notices = List.copyOf(notices);
    refusals = List.copyOf(refusals);
  }

  public boolean isWritten() {
    return output != null;
  }

  /** How many findings there are of each severity. */
  public Map<Severity, Integer> counts() {
    return Severity.counts(findings.stream());
  }

  public long lines(Place place) {
    return result.at(place).lines();
  }
}
