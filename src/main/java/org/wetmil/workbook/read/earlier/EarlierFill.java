package org.wetmil.workbook.read.earlier;

/**
 * One line of the list of fills on Basis, as it stands there.
 *
 * @param program that filled, with its version
 * @param input name of the file that was filled
 */
public record EarlierFill(String date, String program, String input, String inputSha256) {}
