/**
 * What was bought against what was bid: each ledger line is placed once, and each job and coating
 * gets its use, its variances and what they could mean.
 */
package org.wetmil.reconcile;
