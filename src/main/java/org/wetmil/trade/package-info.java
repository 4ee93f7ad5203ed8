/**
 * The pure formulas of spraying: tip codes, orifice flow, film, spread, hose, wear, dew point.
 *
 * <p>Every function takes and returns doubles whose unit stands in the name. A share is 0..1, never
 * a percentage, unless the name says so. An argument outside its stated range is a fault of the
 * calling program and throws {@link java.lang.IllegalArgumentException}: what the user typed is
 * judged before it comes here. Figures carry one of four kinds: published (a source is named),
 * derived (arithmetic from exact definitions or published figures), practice (common practice in
 * the trade, no source) and house (our own starting value, to be replaced by the estimator).
 */
package org.wetmil.trade;
