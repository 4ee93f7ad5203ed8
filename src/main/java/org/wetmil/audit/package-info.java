/** What past bids say about the next one: pure comparison and statistics over filled bids. */
package org.wetmil.audit;
