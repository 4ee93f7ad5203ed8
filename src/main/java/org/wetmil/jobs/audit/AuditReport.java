package org.wetmil.jobs.audit;

import java.util.List;
import org.wetmil.audit.Verdict;
import org.wetmil.workbook.audit.LeftOut;

/**
 * What came of an audit.
 *
 * @param bids bids read
 * @param findings mistakes found in them and in the list of actuals
 * @param figures suggested figures written as tables
 * @param leftOut files that gave no bid
 */
public record AuditReport(
    int bids, int findings, int figures, List<LeftOut> leftOut, Verdict verdict) {

  /** Files that could not be read. */
  public List<LeftOut> unreadable() {
    return leftOut.stream().filter(file -> !file.readable()).toList();
  }
}
