/**
 * One bid line in, one filled line out: the choice of tip, the coats, the paint, the labour, the
 * order and the likely range.
 */
package org.wetmil.estimate;
