/** Room lists, such as hand-over data of a building, and the bid workbook that they begin. */
package org.wetmil.workbook.start;
