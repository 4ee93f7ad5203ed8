package org.wetmil.workbook.audit;

import java.util.Arrays;
import java.util.List;
import org.apache.poi.ss.usermodel.DateUtil;
import org.wetmil.audit.MeasureAudit;
import org.wetmil.audit.ratio.JobRatio;

/** The line of a drift over time: its first and last day, and the ratio on each. */
final class DriftLine {
  private DriftLine() {}

  /** The first and the last day of jobs with a date, as a sheet counts days; NaN for none. */
  static double[] days(List<JobRatio> jobs) {
    double[] days =
        jobs.stream()
            .filter(job -> job.bid().date() != null)
            .mapToDouble(job -> DateUtil.getExcelDate(job.bid().date()))
            .toArray();
    return days.length == 0
        ? new double[] {Double.NaN, Double.NaN}
        : new double[] {
          Arrays.stream(days).min().orElseThrow(), Arrays.stream(days).max().orElseThrow()
        };
  }

  /** Ends of the drift: its slope through the middle of all dated jobs. */
  static double[] drift(MeasureAudit audit, double[] days) {
    double slope = audit.ratios().trend().slope() / 365.25;
    double[] level =
        audit.ratios().jobs().stream()
            .filter(job -> job.bid().date() != null)
            .mapToDouble(
                job ->
                    Math.log(job.ratio())
                        - slope * (DateUtil.getExcelDate(job.bid().date()) - days[0]))
            .sorted()
            .toArray();
    if (level.length == 0 || Double.isNaN(slope)) {
      return new double[] {Double.NaN, Double.NaN};
    }
    int n = level.length;
    double middle = (level[(n - 1) / 2] + level[n / 2]) / 2;
    return new double[] {Math.exp(middle), Math.exp(middle + slope * (days[1] - days[0]))};
  }
}
