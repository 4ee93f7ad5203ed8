package org.wetmil.jobs;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.wetmil.checks.Checks;
import org.wetmil.checks.Finding;
import org.wetmil.estimate.Estimator;
import org.wetmil.estimate.FilledBid;
import org.wetmil.estimate.job.FilledJob;
import org.wetmil.workbook.WorkbookException;
import org.wetmil.workbook.copy.LightCopy;
import org.wetmil.workbook.copy.OutputFile;
import org.wetmil.workbook.fill.CustomerCopy;
import org.wetmil.workbook.fill.FillWriter;
import org.wetmil.workbook.fill.beside.FillStamp;
import org.wetmil.workbook.opc.FileName;
import org.wetmil.workbook.opc.Passwords;
import org.wetmil.workbook.read.BidReader;
import org.wetmil.workbook.read.ReadOptions;
import org.wetmil.workbook.read.ReadWorkbook;

/** Fills one workbook: read, compute, check, write. */
public final class FillJob {
  private final LocalDate date;
  private final String version;
  private final boolean overwrite;
  private final ReadOptions options;
  private final List<Path> tables;

  /**
   * @param date printed on Basis; given in, so that the same input gives the same output
   * @param version of the program, printed on Basis
   * @param overwrite whether an older output may be replaced
   */
  public FillJob(LocalDate date, String version, boolean overwrite) {
    this(date, version, overwrite, false);
  }

  /**
   * @param refresh whether numbers typed over formulas of an earlier fill give way to the formulas
   */
  public FillJob(LocalDate date, String version, boolean overwrite, boolean refresh) {
    this(date, version, overwrite, ReadOptions.USUAL.refreshing(refresh), List.of());
  }

  /**
   * @param tables the workbooks of other tables, which are only read
   */
  private FillJob(
      LocalDate date, String version, boolean overwrite, ReadOptions options, List<Path> tables) {
    this.date = date;
    this.version = version;
    this.overwrite = overwrite;
    this.options = options;
    this.tables = tables;
  }

  /**
   * The same with the tables of another workbook laid under those of each bid.
   *
   * @throws WorkbookException when the workbook cannot be read or has no tables
   */
  public FillJob over(Path tables) {
    ReadOptions over = options.over(BidReader.tables(tables, options.passwords()));
    return new FillJob(date, version, overwrite, over, List.of(tables));
  }

  /** The same for workbooks that these passwords may open; their copies stay protected. */
  public FillJob with(Passwords passwords) {
    return new FillJob(date, version, overwrite, options.with(passwords), tables);
  }

  /**
   * Fills a workbook into a new file.
   *
   * @throws WorkbookException when the input cannot be used or the output cannot be written; its
   *     message is one sentence for the user
   */
  public FillReport fill(Path input, Path output) {
    return fill(input, output, null);
  }

  /**
   * Fills a workbook into a new file, and writes a copy for the customer where there is a price.
   *
   * @param customer the file for the customer; null for none
   */
  public FillReport fill(Path input, Path output, Path customer) {
    Fingerprint before = Fingerprint.of(input);
    try {
      return fill(before, output, customer);
    } catch (RuntimeException e) {
      // half a file looks damaged; that it is being written is the better word
      before.requireUnchanged();
      throw e;
    }
  }

  private FillReport fill(Fingerprint input, Path output, Path customer) {
    ReadWorkbook read = BidReader.read(input.file(), options);
    FillStamp stamp = new FillStamp(FileName.of(input.file()), input.sha256(), date, version);
    try (LightCopy copy =
        LightCopy.begin(input.file(), options.passwords(), tables, output, overwrite)) {
      FilledBid filled = Estimator.fill(read.bid());
      List<Finding> findings = Checks.run(filled);
      FilledJob job = FilledJob.of(filled);
      boolean forCustomer = customer != null && job.price().price().isPresent();
      if (forCustomer) {
        // what keeps the second file away is said before the first is in place
        OutputFile.claim(tables, customer, overwrite).close();
      }
      FillWriter writer = new FillWriter(read, job, findings, stamp);
      writer.write(copy, input::requireUnchanged);
      if (forCustomer) {
        CustomerCopy.write(job, stamp, customer, overwrite);
      }
      return FillReport.of(
          input.file(),
          input.sha256(),
          output,
          customer,
          read.layouts(),
          job,
          findings,
          writer::address);
    }
  }
}
