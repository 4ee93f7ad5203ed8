package org.wetmil.workbook.audit;

import java.time.LocalDate;

/** What Basis says about a run: the same run gives the same workbook. */
public record AuditStamp(String folder, String actuals, LocalDate date, String version) {}
