package org.wetmil.audit.past;

import org.wetmil.estimate.likely.Band;
import org.wetmil.estimate.likely.Spreads;

/**
 * What a bid would have been said to take, from 10 to 90 % of jobs like it.
 *
 * @param whole of the bid as its outcome counts it, in the kept unit of its measure
 * @param drawn the part of it that ranges; the rest is taken as certain
 * @param spreads how far the factors range by the settings of the bid
 */
public record Likely(Band whole, Band drawn, Spreads spreads) {}
