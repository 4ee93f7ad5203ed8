package org.wetmil.estimate.job;

import org.wetmil.estimate.likely.Band;
import org.wetmil.estimate.likely.Factor;

/**
 * What one factor does to the job when it alone is uncertain.
 *
 * @param paint paint of the job in gallons
 * @param hours person-hours of the job
 */
public record Driver(Factor factor, Band paint, Band hours) {}
