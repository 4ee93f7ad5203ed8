package org.wetmil.jobs;

import java.nio.file.Path;
import java.time.LocalDate;
import org.wetmil.estimate.compare.BidComparison;
import org.wetmil.workbook.WorkbookException;
import org.wetmil.workbook.compare.CompareWriter;
import org.wetmil.workbook.compare.Version;
import org.wetmil.workbook.opc.Passwords;
import org.wetmil.workbook.read.BidReader;
import org.wetmil.workbook.read.ReadOptions;
import org.wetmil.workbook.read.ReadWorkbook;
import org.wetmil.workbook.stream.PackageReader;

/**
 * Compares two versions of a bid: both are read and filled in memory as fill does, so that what
 * counts is what the estimator stated, whether or not the workbooks were filled before.
 */
public final class CompareJob {
  private final Passwords passwords;
  private final LocalDate date;
  private final String version;
  private final boolean overwrite;

  /**
   * @param date printed on the result
   * @param version of the program
   * @param overwrite whether an older result may be replaced
   */
  public CompareJob(Passwords passwords, LocalDate date, String version, boolean overwrite) {
    this.passwords = passwords;
    this.date = date;
    this.version = version;
    this.overwrite = overwrite;
  }

  /** Where the result goes when no other place is named: beside the second version. */
  public static Path usualName(Path b) {
    return ResultName.beside(b, "-compared");
  }

  /**
   * Compares, and writes the workbook.
   *
   * @param out the file to write; null for the usual place, where what is protected is not written
   * @throws WorkbookException when a bid cannot be read or the result cannot be written; its
   *     message is one sentence for the user
   */
  public CompareReport compare(Path a, Path b, Path out) {
    if (out != null) {
      ResultName.requireWorkbook(out);
    }
    Fingerprint beforeA = Fingerprint.of(a);
    Fingerprint beforeB = Fingerprint.of(b);
    ReadWorkbook first = read(a);
    ReadWorkbook second = read(b);
    BidComparison compared = BidComparison.of(first.bid(), second.bid());
    Version from = version(a, first);
    Version to = version(b, second);
    beforeA.requireUnchanged();
    beforeB.requireUnchanged();
    boolean open = out != null || !(from.locked() || to.locked());
    Path output = open ? (out == null ? usualName(b) : out) : null;
    if (output != null) {
      CompareWriter.write(compared, from, to, date, version, output, overwrite);
    }
    return new CompareReport(compared, from, to, output);
  }

  private ReadWorkbook read(Path file) {
    return BidReader.read(file, ReadOptions.USUAL.with(passwords));
  }

  private Version version(Path file, ReadWorkbook read) {
    try (PackageReader reader = PackageReader.open(file, passwords)) {
      return new Version(
          file, read.bid(), read.layouts(), read.filledBefore(), reader.password().isPresent());
    }
  }
}
