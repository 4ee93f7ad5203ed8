/** The workbook that compares purchases with bids. */
package org.wetmil.workbook.reconcile;
