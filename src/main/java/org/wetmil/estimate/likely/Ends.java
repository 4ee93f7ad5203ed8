package org.wetmil.estimate.likely;

/**
 * Both ends of a range as ratios to what is stated.
 *
 * @param low 10 % come out below, usually under 1
 * @param high 10 % come out above, usually over 1
 */
public record Ends(double low, double high) {}
