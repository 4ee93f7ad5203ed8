/** What was used of each coating against what was bid, in paint and in money. */
package org.wetmil.reconcile.use;
