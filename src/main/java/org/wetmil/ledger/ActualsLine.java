package org.wetmil.ledger;

import java.time.LocalDate;

/**
 * How a job, or one coating of it, came out.
 *
 * @param line of the file, from 1
 * @param coating blank when the figures are for the whole job
 * @param gallons US gallons used; NaN when not stated
 * @param hours person-hours; NaN when not stated
 * @param date null when not stated
 * @param crew who did the work; blank when not stated
 * @param estimator who made the bid; blank when not stated
 */
public record ActualsLine(
    long line,
    String job,
    String coating,
    double gallons,
    double hours,
    LocalDate date,
    String crew,
    String estimator) {}
