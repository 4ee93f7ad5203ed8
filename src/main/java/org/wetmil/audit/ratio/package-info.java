/** Outcome over estimate, bid by bid and group by group. */
package org.wetmil.audit.ratio;
