/** How a filled line came out, as data: its figures in the order of computation. */
package org.wetmil.estimate.explain;
