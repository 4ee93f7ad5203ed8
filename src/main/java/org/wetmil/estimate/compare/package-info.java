/** Two versions of a bid, line by line: what changed in input, and what that makes. */
package org.wetmil.estimate.compare;
