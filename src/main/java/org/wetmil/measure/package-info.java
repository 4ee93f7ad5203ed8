/**
 * The rules of measurement: how a room's sizes and its openings become the area that is painted and
 * the area that is paid for; and the numbers and lengths as people type them into cells.
 *
 * <p>Reading never guesses in silence: a text is a value, is said to be not known, or is refused
 * with what was expected.
 */
package org.wetmil.measure;
