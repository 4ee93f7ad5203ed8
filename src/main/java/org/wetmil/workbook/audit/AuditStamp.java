package org.wetmil.workbook.audit;

import java.time.LocalDate;

/**
 * What Basis says about a run: the same run gives the same workbook.
 *
 * @param folder name of the folder of past bids
 * @param actuals name of the list of outcomes; empty where none was given
 * @param version of Wetmil
 */
public record AuditStamp(String folder, String actuals, LocalDate date, String version) {}
