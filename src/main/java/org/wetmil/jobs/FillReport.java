package org.wetmil.jobs;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.wetmil.checks.Finding;
import org.wetmil.checks.Severity;
import org.wetmil.estimate.FilledBid;
import org.wetmil.estimate.FilledLine;
import org.wetmil.estimate.job.FilledJob;
import org.wetmil.estimate.job.JobFigure;
import org.wetmil.estimate.job.JobPrice;
import org.wetmil.estimate.job.Switching;
import org.wetmil.quantity.Quantity;
import org.wetmil.quantity.UnitSystem;
import org.wetmil.workbook.read.SheetLayout;

/**
 * What came of filling one workbook.
 *
 * @param input the workbook as it was named
 * @param sha256 of the input
 * @param customer the file for the customer, if the job has a price; null when none was asked for
 * @param bid its lines as filled
 * @param layouts where its tables were found
 * @param rows bid lines read
 * @param filled of them, those that count in the totals
 * @param leftOut of them, those that Include keeps out of the totals, with paint and hours or not
 * @param located findings with the cell that each is about
 * @param paintGal paint of the lines that count and of the hoses
 * @param hours labour of the job, its own rows included
 * @param switching what the recommended tips would save against the planned ones
 * @param price the price, or what it lacks
 */
public record FillReport(
    Path input,
    String sha256,
    Path output,
    Path customer,
    FilledBid bid,
    List<SheetLayout> layouts,
    int rows,
    int filled,
    int leftOut,
    List<Located> located,
    double paintGal,
    double hours,
    Switching switching,
    JobPrice price,
    UnitSystem system) {

  /** A finding and the cell it is about; the address is empty when it is about no cell. */
  public record Located(Finding finding, String address) {}

  static FillReport of(
      Path input,
      String sha256,
      Path output,
      Path customer,
      List<SheetLayout> layouts,
      FilledJob job,
      List<Finding> findings,
      Function<Finding, String> address) {
    FilledBid bid = job.filled();
    int rows = (int) bid.lines().count();
    int counted = (int) bid.lines().filter(FilledLine::isCounted).count();
    int leftOut = (int) bid.lines().filter(FilledLine::isLeftOut).count();
    return new FillReport(
        input,
        sha256,
        output,
        customer,
        bid,
        layouts,
        rows,
        counted,
        leftOut,
        findings.stream().map(f -> new Located(f, address.apply(f))).toList(),
        job.paintGal(),
        job.hours().number(JobFigure.TOTAL),
        job.switching(),
        job.price(),
        bid.bid().system());
  }

  /** Whether a file for the customer was asked for and could not be made for want of a price. */
  public boolean lacksCustomerCopy() {
    return customer != null && price.price().isEmpty();
  }

  /** Where its tables were found, and what was taken from which column. */
  public List<String> howRead() {
    return HowRead.sentences(layouts);
  }

  /** Lines that are to count and lack paint and hours; each row is this, filled or left out. */
  public int notFilled() {
    return rows - filled - leftOut;
  }

  /** How many findings there are of each severity. */
  public Map<Severity, Integer> counts() {
    return Severity.counts(located.stream().map(Located::finding));
  }

  /** Paint in the units of the job. */
  public double paint() {
    return volume(paintGal);
  }

  /** A volume in the units of the job. */
  public double volume(double gal) {
    return Quantity.VOLUME.shown(gal, system);
  }

  public String volumeUnit() {
    return Quantity.VOLUME.unit(system).symbol();
  }
}
