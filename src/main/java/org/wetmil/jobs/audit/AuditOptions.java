package org.wetmil.jobs.audit;

import java.nio.file.Path;
import java.time.LocalDate;
import org.wetmil.audit.change.PaintTable;
import org.wetmil.quantity.UnitSystem;

/**
 * How bids are audited.
 *
 * @param actuals the list of how jobs came out; null when only the bids say so
 * @param today the workbook of the tables to bid with now; null for the built-in ones
 * @param system units of the result
 * @param paintTable where a paint factor goes
 * @param tables the file for the suggested figures as sheets of a bid; null for none
 * @param date printed on Basis; given in, so that the same input gives the same output
 * @param version of the program, printed on Basis
 * @param overwrite whether an older result may be replaced
 */
public record AuditOptions(
    Path actuals,
    Path today,
    UnitSystem system,
    PaintTable paintTable,
    Path tables,
    LocalDate date,
    String version,
    boolean overwrite) {}
