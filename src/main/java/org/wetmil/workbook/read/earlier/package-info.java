/** What an earlier fill left in a workbook and somebody has changed since. */
package org.wetmil.workbook.read.earlier;
