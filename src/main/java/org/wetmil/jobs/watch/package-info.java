/** Bids filled as they are saved. */
package org.wetmil.jobs.watch;
