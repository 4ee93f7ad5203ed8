/** The blank bid workbook, made from the declarations of columns and tables. */
package org.wetmil.workbook.template;
