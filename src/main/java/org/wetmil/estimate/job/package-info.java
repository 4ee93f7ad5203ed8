/** What the lines of a bid come to as a job: person-hours and days, the order, and the price. */
package org.wetmil.estimate.job;
