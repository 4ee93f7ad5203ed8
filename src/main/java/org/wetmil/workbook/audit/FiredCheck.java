package org.wetmil.workbook.audit;

/**
 * A check that fired on a line of a past bid.
 *
 * @param check its id
 * @param address the input cell that it is about, else the first of the line
 * @param surface the surface as the tables name it
 * @param coating the coating as the tables name it
 */
public record FiredCheck(
    String check, String sheet, String address, String room, String surface, String coating) {}
