package org.wetmil.estimate.job;

import java.util.List;
import java.util.Map;
import org.wetmil.estimate.FilledBid;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.estimate.FilledLine;
import org.wetmil.estimate.likely.Band;
import org.wetmil.estimate.likely.Spreads;

/**
 * The likely range of a job in a twentieth of the time, for many jobs: drawn like that of {@link
 * JobRange}, but the lines from which the same share of paint stays on are drawn as one, as there
 * the small ones are. A test holds the two within sampling error of each other.
 *
 * @param linesGal paint of the lines that count, in gallons
 * @param sprayHours person-hours of their spraying
 * @param lineHours person-hours of the lines' own tasks
 * @param jobGal paint of the job in gallons, that of the hoses included
 * @param jobHours person-hours of the job
 */
public record QuickRange(
    Band linesGal, Band sprayHours, Band lineHours, Band jobGal, Band jobHours) {

  public static QuickRange of(FilledBid filled, JobHours hours, double hoseGal) {
    List<FilledLine> lines = filled.lines().filter(FilledLine::isCounted).toList();
    JobDraws draws =
        JobDraws.of(filled.bid(), Map.of("job", lines), Spreads.of(filled.bid().catalogue()), 0);
    Band paint = JobDraws.band(draws.paintGal(), filled.total(FilledColumn.PAINT));
    Band spray = JobDraws.band(draws.sprayHours(), hours.number(JobFigure.SPRAY));
    Band job =
        Band.around(
            hours.withSpray(filled.bid(), spray.low()).number(JobFigure.TOTAL),
            hours.number(JobFigure.TOTAL),
            hours.withSpray(filled.bid(), spray.high()).number(JobFigure.TOTAL));
    double otherTasks = filled.total(FilledColumn.LABOUR) - spray.stated();
    return new QuickRange(paint, spray, plus(spray, otherTasks), plus(paint, hoseGal), job);
  }

  private static Band plus(Band band, double more) {
    return new Band(band.low() + more, band.stated() + more, band.high() + more);
  }
}
