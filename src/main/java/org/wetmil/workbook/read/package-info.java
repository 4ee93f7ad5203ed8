/**
 * From a workbook on disk to a bid: finds the tables, reads their lines and the estimator's own
 * tables, and says where everything stands so that it can be filled.
 */
package org.wetmil.workbook.read;
