/** The sheets by which an estimator adds to the tables of figures, and to the words understood. */
package org.wetmil.workbook.read.stated;
