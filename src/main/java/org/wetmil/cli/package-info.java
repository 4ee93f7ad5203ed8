/**
 * The command line: options in, one job run, printed lines and an exit code out. It holds no rule
 * of the trade and never touches a workbook.
 */
package org.wetmil.cli;
