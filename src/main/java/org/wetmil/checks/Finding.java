package org.wetmil.checks;

/**
 * One thing found, as data; sentences are put together where they are shown.
 *
 * @param check id of the check that found it
 * @param spot where it is
 * @param room the room as written, or the job of a ledger line; empty when it is about none
 * @param surface the surface as written, or the coating of a ledger line; empty as above
 * @param measured what was found, with its unit; a cell's raw text is in quotes
 * @param limit what would have been right, with its unit
 * @param message one sentence for the estimator
 */
public record Finding(
    String check,
    Severity severity,
    Spot spot,
    String room,
    String surface,
    String measured,
    String limit,
    String message) {}
