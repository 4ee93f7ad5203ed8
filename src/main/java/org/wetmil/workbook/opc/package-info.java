/**
 * The package of a workbook: a zip of parts and relationships (ECMA-376, part 2), held to limits.
 */
package org.wetmil.workbook.opc;
