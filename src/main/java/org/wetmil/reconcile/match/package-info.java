/** Which job and which coating a ledger line belongs to, or why it belongs to none. */
package org.wetmil.reconcile.match;
