/**
 * A sheet as a grid of cells: without what an earlier fill wrote, with missing results computed.
 */
package org.wetmil.workbook.read.grid;
