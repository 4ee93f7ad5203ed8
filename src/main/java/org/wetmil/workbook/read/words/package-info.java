/** Words and texts as estimators type them, with the lists of words that come with the program. */
package org.wetmil.workbook.read.words;
