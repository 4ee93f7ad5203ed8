package org.wetmil.workbook.audit;

import java.util.List;
import org.wetmil.audit.Audit;
import org.wetmil.quantity.UnitSystem;

/**
 * Everything that an audited workbook shows.
 *
 * @param jobs in the order of the audit's bids
 * @param findings mistakes found in the bids and in the list of actuals
 * @param leftOut files that gave no bid
 * @param system units of the workbook
 */
public record AuditBook(
    Audit audit,
    List<AuditedJob> jobs,
    List<AuditFinding> findings,
    List<LeftOut> leftOut,
    UnitSystem system,
    AuditStamp stamp) {
  public AuditBook {
    jobs = List.copyOf(jobs);
    findings = List.copyOf(findings);
    leftOut = List.copyOf(leftOut);
  }
}
