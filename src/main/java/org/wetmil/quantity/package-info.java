/**
 * Units and what they measure: their exact sizes, and the unit that a quantity has in each family.
 * A conversion happens here or not at all.
 */
package org.wetmil.quantity;
