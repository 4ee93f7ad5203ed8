/** What each job was bid to use of each coating. */
package org.wetmil.reconcile.bid;
