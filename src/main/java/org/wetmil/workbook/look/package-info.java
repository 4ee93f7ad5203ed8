/** How every sheet of ours looks: styles, rows, pages for print, the list of findings. */
package org.wetmil.workbook.look;
