/** When the work of a bid is done: coats, the time they dry, days, and what the air allows. */
package org.wetmil.estimate.plan;
