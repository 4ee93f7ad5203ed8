/**
 * The formulas of spraying, as pure functions: film and coverage, flow and pressure, fan and speed.
 * Each states its units, its assumptions and where it comes from.
 */
package org.wetmil.trade;
