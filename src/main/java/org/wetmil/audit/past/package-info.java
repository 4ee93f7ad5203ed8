/** Past bids as the audit takes them, and the comparisons that can be made of them. */
package org.wetmil.audit.past;
