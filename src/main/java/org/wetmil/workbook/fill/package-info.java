/** What a filled workbook adds: the columns beside the bid, and the sheets after it. */
package org.wetmil.workbook.fill;
