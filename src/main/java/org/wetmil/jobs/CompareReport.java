package org.wetmil.jobs;

import java.nio.file.Path;
import org.wetmil.estimate.compare.BidComparison;
import org.wetmil.workbook.compare.Version;

/**
 * What came of comparing two versions of a bid.
 *
 * @param output the workbook written; null where none was, since a protected bid would be open in
 *     it
 */
public record CompareReport(BidComparison compared, Version a, Version b, Path output) {}
