package org.wetmil.workbook.audit;

import java.util.List;
import java.util.Locale;
import org.wetmil.audit.MeasureAudit;
import org.wetmil.audit.model.JudgedEffect;
import org.wetmil.audit.ratio.JobRatio;
import org.wetmil.audit.stats.Trend;

/** What a chart shows, said as its title. */
final class ChartTitles {
  private ChartTitles() {}

  static String against(MeasureAudit audit) {
    List<JobRatio> jobs = audit.ratios().jobs();
    long over = jobs.stream().filter(job -> job.ratio() > 1).count();
    return "%s: %d of %d jobs took more than bid (above the line)"
        .formatted(audit.measure().title(), over, jobs.size());
  }

  static String overTime(MeasureAudit audit) {
    Trend trend = audit.ratios().trend();
    String word = audit.measure().title();
    if (Double.isNaN(trend.slope())) {
      return word + " over time: too few jobs with a date to see a drift";
    }
    if (trend.chance() > JudgedEffect.ALARM) {
      return word + " over time: no drift that luck would not explain";
    }
    return String.format(
        Locale.ROOT,
        "%s drifts: each year %.0f %% %s",
        word,
        100 * Math.abs(Math.exp(trend.slope()) - 1),
        trend.slope() > 0 ? "more" : "less");
  }

  static String furthest(MeasureAudit audit, List<JudgedEffect> groups) {
    String word = audit.measure().title();
    return groups.stream()
        .filter(JudgedEffect::standsApart)
        .findFirst()
        .map(group -> "%s by group: furthest off is %s".formatted(word, group.effect().group()))
        .orElse(word + " by group: none stands out by more than luck explains");
  }
}
