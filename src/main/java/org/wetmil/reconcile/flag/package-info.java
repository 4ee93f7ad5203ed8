/** What a bookkeeper should look at, with what it could mean, as data. */
package org.wetmil.reconcile.flag;
