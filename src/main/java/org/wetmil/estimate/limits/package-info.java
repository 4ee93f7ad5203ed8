/**
 * What a job is held to beside its price: the specified film as gauges read it, solvents in the
 * air, old paint. Figures to be checked by whoever is responsible, never a legal conclusion.
 */
package org.wetmil.estimate.limits;
