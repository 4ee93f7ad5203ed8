/** What a filled workbook adds, put together: the columns beside the bid, the sheets after it. */
package org.wetmil.workbook.fill;
