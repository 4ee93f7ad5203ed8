/**
 * Measured amounts as small records, each with one stored unit: length, area, volume, pressure,
 * flow, speed, hours, money. A conversion happens here or not at all.
 */
package org.wetmil.quantity;
