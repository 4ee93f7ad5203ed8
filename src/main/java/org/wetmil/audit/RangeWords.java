package org.wetmil.audit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.wetmil.audit.past.Measure;
import org.wetmil.audit.range.Judgement;
import org.wetmil.audit.range.RangeAudit;
import org.wetmil.audit.range.RangeChange;
import org.wetmil.audit.stats.Interval;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Setting;
import org.wetmil.estimate.likely.Inside;
import org.wetmil.quantity.Count;

/** Whether the likely ranges were right, in sentences. */
record RangeWords(JobRanges ranges, Catalogue today) {

  List<String> sentences() {
    List<String> sentences = new ArrayList<>();
    for (int i = 0; i < ranges.audits().size(); i++) {
      RangeAudit audit = ranges.audits().get(i);
      String word = audit.measure().title();
      sentences.add(word + ": " + count(audit));
      String what = change(audit, ranges.changes().get(i));
      if (!what.isEmpty()) {
        sentences.add(word + ": " + what);
      }
    }
    return sentences;
  }

  private static String count(RangeAudit audit) {
    Inside inside = audit.inside();
    String partly =
        audit.partly() == 0
            ? ""
            : " "
                + Count.of(audit.partly(), "more bid has", "more bids have")
                + " an outcome for a part only and "
                + (audit.partly() == 1 ? "is" : "are")
                + " not counted.";
    if (inside.jobs() == 0) {
      return "no bid has an outcome for the whole job." + partly;
    }
    Interval share = audit.share();
    return String.format(
        Locale.ROOT,
        "%d of %s came out inside the likely range (%.0f %%, likely %.0f to %.0f %%; %.0f %% are"
            + " expected), %d below, %d above: %s.%s",
        inside.inside(),
        Count.of(inside.jobs(), "job"),
        100 * inside.share(),
        100 * share.low(),
        100 * share.high(),
        100 * Judgement.EXPECTED,
        inside.below(),
        inside.above(),
        audit.judgement().words(),
        partly);
  }

  /** What to do about ranges that are off; empty where nothing is to be done. */
  private String change(RangeAudit audit, RangeChange change) {
    if (isFine(audit.judgement())) {
      return "";
    }
    String first = "";
    if (change.withChange().isPresent()) {
      Inside tried = change.withChange().orElseThrow();
      first = "with the change below " + of(tried) + " would have come out inside, ";
      if (isFine(Judgement.of(tried))) {
        return first + "so keep the range settings as they are.";
      }
      boolean wide = Judgement.of(tried) == Judgement.TOO_WIDE;
      first += (wide ? "more" : "fewer") + " than expected; once it is made, ";
    }
    if (change.settings().isEmpty()) {
      return first
          + "no other value of "
          + names(audit.measure())
          + " proved itself on these bids, so keep what is set.";
    }
    return first
        + "state "
        + change.settings().entrySet().stream()
            .sorted(Map.Entry.comparingByKey())
            .map(each -> setting(each.getKey(), each.getValue()))
            .collect(Collectors.joining(", "))
        + " on Settings: "
        + of(change.heldOut().orElseThrow())
        + " then come out inside, each judged by the others alone.";
  }

  /** Nothing to be done, or nothing to be said. */
  private static boolean isFine(Judgement judgement) {
    return judgement == Judgement.ABOUT_RIGHT || judgement == Judgement.TOO_FEW;
  }

  private String setting(Setting setting, double value) {
    return String.format(
        Locale.ROOT, "%s %.2f (now %.2f)", setting.title(), value, today.number(setting));
  }

  private static String of(Inside inside) {
    return inside.inside() + " of " + inside.jobs();
  }

  private static String names(Measure measure) {
    return measure == Measure.HOURS
        ? Setting.TRIGGER_RANGE.title()
        : Arrays.stream(RangeChange.factors(measure))
            .map(factor -> factor.setting().title())
            .collect(Collectors.joining(", "));
  }
}
