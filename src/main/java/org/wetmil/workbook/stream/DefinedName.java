package org.wetmil.workbook.stream;

/**
 * A name given to a range or a formula.
 *
 * @param name as written; Excel's own begin with _xlnm.
 * @param sheet the sheet it belongs to, null for the whole workbook
 * @param refersTo the text of the reference or formula
 * @param hidden from the user's list of names
 */
public record DefinedName(String name, String sheet, String refersTo, boolean hidden) {}
