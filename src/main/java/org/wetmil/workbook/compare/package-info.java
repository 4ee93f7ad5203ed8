/** The workbook that compares two versions of a bid. */
package org.wetmil.workbook.compare;
