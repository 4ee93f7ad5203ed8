package org.wetmil.jobs;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.wetmil.ledger.DateOrder;

/**
 * What a bookkeeper asks for.
 *
 * @param bids bid workbooks, filled or not, and folders of them
 * @param purchases ledgers
 * @param items the bookkeeper's own table of items; null for none
 * @param from first day, itself counted; null for no limit
 * @param to last day, itself counted; null for no limit
 * @param order of day and month; null to find it from the dates
 * @param out the file to write; null for the usual name beside the first bid
 * @param overwrite whether an older output may be replaced
 * @param date printed on Basis; given in, so that the same input gives the same output
 * @param version of the program, printed on Basis
 */
public record ReconcileRequest(
    List<Path> bids,
    List<Path> purchases,
    Path items,
    LocalDate from,
    LocalDate to,
    DateOrder order,
    Path out,
    boolean overwrite,
    LocalDate date,
    String version) {
  public ReconcileRequest {
    bids = List.copyOf(bids);
    purchases = List.copyOf(purchases);
  }
}
