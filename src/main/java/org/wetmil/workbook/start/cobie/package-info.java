/** Reads COBie, an open standard for handing over the data of a building. */
package org.wetmil.workbook.start.cobie;
