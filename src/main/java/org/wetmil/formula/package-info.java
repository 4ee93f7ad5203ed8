/**
 * Expressions over named columns and settings that can be both evaluated and printed, so that the
 * value stored in a cell and the formula shown there come from one declaration.
 */
package org.wetmil.formula;
