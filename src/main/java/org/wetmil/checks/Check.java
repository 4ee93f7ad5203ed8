package org.wetmil.checks;

import org.wetmil.catalogue.Kind;

/**
 * One thing that can be wrong with a bid.
 *
 * @param id two or three plain words joined by hyphens
 * @param severity how much it matters; a cell that a line cannot do without makes a warning a stop
 * @param title what was found, in a few words
 * @param why what comes of it, one sentence
 * @param kind how surely its limit is known
 * @param source where the limit is from; for practice and house, what it rests on
 * @param advice what to do, one sentence
 * @param rule finds it
 */
public record Check(
    String id,
    Severity severity,
    String title,
    String why,
    Kind kind,
    String source,
    String advice,
    Rule rule) {

  /** A fault of this check as a finding. */
  Finding finding(Fault fault) {
    return new Finding(
        id,
        fault.stops() ? Severity.STOP : severity,
        fault.spot(),
        fault.room(),
        fault.surface(),
        fault.measured(),
        fault.limit(),
        fault.message());
  }
}
