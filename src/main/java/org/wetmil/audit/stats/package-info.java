/**
 * The statistics that the audit rests on, over plain numbers: no bids, no paint, no words.
 *
 * <p>Each is small because the mathematics library does the hard part (distributions, least
 * squares). A probability is 0..1. Where too few numbers are given the answer is NaN or empty,
 * never a guess.
 */
package org.wetmil.audit.stats;
