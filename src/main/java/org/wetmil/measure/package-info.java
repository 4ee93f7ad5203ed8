/**
 * Numbers and lengths as people type them into cells: with unit, quotes, fractions, either decimal
 * mark.
 *
 * <p>Reading never guesses in silence: a text is a value, is said to be not known, or is refused
 * with what was expected.
 */
package org.wetmil.measure;
