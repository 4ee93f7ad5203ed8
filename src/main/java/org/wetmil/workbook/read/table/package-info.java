/** The tables of a bid on a sheet: where they are, what each of their rows is, in which units. */
package org.wetmil.workbook.read.table;
