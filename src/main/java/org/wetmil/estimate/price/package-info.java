/**
 * Decimal money: containers at their prices, the cheapest mix of them, and a price with its parts.
 */
package org.wetmil.estimate.price;
