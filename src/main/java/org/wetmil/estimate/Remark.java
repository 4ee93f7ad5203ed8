package org.wetmil.estimate;

/**
 * Something that the reader of a workbook saw and that a check reports.
 *
 * @param check id of the check that reports it
 * @param address the cell, as in C4; empty when it is about the sheet
 * @param raw the text that was there
 * @param message one sentence for the estimator
 */
public record Remark(String check, String sheet, String address, String raw, String message) {}
