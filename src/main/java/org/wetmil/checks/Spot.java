package org.wetmil.checks;

import org.wetmil.estimate.InputColumn;

/**
 * Where a finding points.
 *
 * @param sheet the sheet; empty when it is about the whole job
 * @param row the row of a bid line, from 1; 0 when it is about no line
 * @param column the input column of that line; null when it is about the line as a whole
 * @param address a cell of a table sheet, as in C4; empty otherwise
 */
public record Spot(String sheet, int row, InputColumn column, String address) {}
