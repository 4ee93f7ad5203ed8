package org.wetmil.workbook.audit;

/**
 * A file of the folder that gives no bid.
 *
 * @param readable false when it could not be read, true when it was left alone on purpose
 */
public record LeftOut(String file, boolean readable, String reason) {}
