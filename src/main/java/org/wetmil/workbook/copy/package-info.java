/**
 * The light copy: the library shapes a copy whose rows are emptied, and the rows of the original
 * are streamed into the result, each followed by our cells. What is not ours is kept byte for byte.
 */
package org.wetmil.workbook.copy;
