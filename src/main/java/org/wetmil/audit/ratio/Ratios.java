package org.wetmil.audit.ratio;

import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.wetmil.audit.past.GroupedBy;
import org.wetmil.audit.past.Observations;
import org.wetmil.audit.stats.FalseAlarms;
import org.wetmil.audit.stats.Line;
import org.wetmil.audit.stats.Outliers;
import org.wetmil.audit.stats.Trend;

/**
 * One measure over all bids with an outcome.
 *
 * @param all all bids together
 * @param jobs bid by bid, in the order given
 * @param groups every group of every kind, with the chance of a false alarm held over all of them
 * @param trend drift of the log ratio, per year of 365.25 days
 * @param size log outcome on log estimate: a slope under 1 means that small jobs overrun more
 * @param proportion outcome on estimate through the origin, for the chart of one against the other
 */
public record Ratios(
    GroupRatio all,
    List<JobRatio> jobs,
    List<GroupRatio> groups,
    Trend trend,
    Line size,
    Line proportion) {
  private static final double DAYS_A_YEAR = 365.25;

  public static Ratios of(Observations observations) {
    List<JobRatio> jobs = jobs(observations);
    double[] estimated = jobs.stream().mapToDouble(JobRatio::estimated).toArray();
    double[] actual = jobs.stream().mapToDouble(JobRatio::actual).toArray();
    return new Ratios(
        GroupRatio.all(observations),
        jobs,
        groups(observations),
        trend(jobs),
        Line.through(logs(estimated), logs(actual)),
        Line.throughOrigin(estimated, actual));
  }

  private static List<JobRatio> jobs(Observations observations) {
    List<Piece> pieces = Piece.of(observations, one -> 1);
    double[] scores =
        Outliers.scores(
            pieces.stream().mapToDouble(p -> Math.log(p.actual() / p.estimated())).toArray());
    return IntStream.range(0, pieces.size())
        .mapToObj(
            i -> {
              Piece piece = pieces.get(i);
              return new JobRatio(
                  observations.bids().get(piece.bid()),
                  piece.estimated(),
                  piece.actual(),
                  scores[i]);
            })
        .toList();
  }

  private static List<GroupRatio> groups(Observations observations) {
    List<GroupRatio> groups =
        Stream.of(GroupedBy.values())
            .flatMap(by -> Split.of(observations, by).stream().map(s -> GroupRatio.of(by, s)))
            .toList();
    double[] adjusted =
        FalseAlarms.adjusted(groups.stream().mapToDouble(GroupRatio::chance).toArray());
    return IntStream.range(0, adjusted.length)
        .mapToObj(i -> groups.get(i).adjusted(adjusted[i]))
        .toList();
  }

  private static Trend trend(List<JobRatio> jobs) {
    List<JobRatio> dated = jobs.stream().filter(job -> job.bid().date() != null).toList();
    if (dated.isEmpty()) {
      return Trend.UNKNOWN;
    }
    return Trend.of(
        dated.stream()
            .mapToDouble(
                job ->
                    ChronoUnit.DAYS.between(dated.get(0).bid().date(), job.bid().date())
                        / DAYS_A_YEAR)
            .toArray(),
        dated.stream().mapToDouble(job -> Math.log(job.ratio())).toArray());
  }

  private static double[] logs(double[] amounts) {
    return Arrays.stream(amounts).map(Math::log).toArray();
  }
}
