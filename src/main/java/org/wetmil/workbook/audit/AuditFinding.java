package org.wetmil.workbook.audit;

/**
 * Something wrong in a past bid or in the list of actuals.
 *
 * @param file where it was found
 * @param place sheet and cell, or line; empty for the file as a whole
 * @param kind what sort of mistake, in a few words
 * @param message one sentence: what is there, what was expected, what to do
 */
public record AuditFinding(String file, String place, String kind, String message) {}
