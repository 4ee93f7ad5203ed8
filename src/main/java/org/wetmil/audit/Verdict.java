package org.wetmil.audit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import org.wetmil.audit.change.Suggestion;
import org.wetmil.audit.model.JudgedEffect;
import org.wetmil.audit.model.Proof;
import org.wetmil.audit.past.PastBid;
import org.wetmil.audit.ratio.Concentration;
import org.wetmil.audit.ratio.GroupRatio;
import org.wetmil.audit.stats.Trend;
import org.wetmil.quantity.Count;
import org.wetmil.quantity.UnitSystem;

/**
 * The one page, in sentences that need no statistics.
 *
 * @param proof whether the change would have helped, on one line
 * @param bids how many bids there were
 * @param right whether they were right, measure by measure
 * @param ranges whether their likely ranges were
 * @param causes the three largest, as figures
 * @param reasons the same, as sentences
 * @param change what to change
 * @param helped the same at length, measure by measure
 */
public record Verdict(
    String proof,
    String bids,
    List<String> right,
    List<String> ranges,
    List<Cause> causes,
    List<String> reasons,
    List<String> change,
    List<String> helped) {
  private static final int MOST_CAUSES = 3;

  private static final int LAST = 5;

  /** Least slope that is said: 2 % for a job of twice the size (house rule). */
  private static final double WORTH_SAYING = 0.03;

  static Verdict of(
      List<PastBid> bids,
      List<MeasureAudit> measures,
      List<String> ranges,
      List<Suggestion> suggestions,
      UnitSystem system) {
    List<Cause> causes =
        measures.stream()
            .flatMap(audit -> Causes.of(audit).stream())
            .sorted(Comparator.comparingDouble(cause -> -Math.abs(cause.weight())))
            .limit(MOST_CAUSES)
            .toList();
    return new Verdict(
        proof(measures),
        bids(bids, measures),
        measures.stream().flatMap(audit -> right(audit).stream()).toList(),
        ranges,
        causes,
        reasons(causes),
        new Changes(suggestions, system).sentences(),
        measures.stream().flatMap(audit -> helped(audit, system).stream()).toList());
  }

  private static String bids(List<PastBid> bids, List<MeasureAudit> measures) {
    long told =
        bids.stream()
            .filter(
                bid ->
                    measures.stream()
                        .anyMatch(
                            audit -> audit.ratios().jobs().stream().anyMatch(j -> j.bid() == bid)))
            .count();
    long silent = bids.size() - told;
    if (told == 0) {
      String none = "No bid says how the job came out";
      return silent == 0
          ? none + "."
          : none
              + "; "
              + Count.of(silent, "bid only has its", "bids only have their")
              + " setups looked at.";
    }
    return Count.of(told, "bid says", "bids say")
        + " how the job came out"
        + (silent == 0
            ? "."
            : "; "
                + Count.of(silent, "more does", "more do")
                + " not and only "
                + (silent == 1 ? "has its" : "have their")
                + " setups looked at.");
  }

  private static List<String> right(MeasureAudit audit) {
    List<String> sentences = new ArrayList<>();
    sentences.add(common(audit));
    String word = audit.measure().word();
    Trend trend = audit.ratios().trend();
    if (trend.chance() <= JudgedEffect.ALARM) {
      sentences.add(
          audit.measure().title()
              + " drifts: each year it comes out about "
              + Words.over(Math.exp(trend.slope()))
              + " the year before.");
    }
    audit
        .sizeBeyondCauses()
        .filter(size -> size.slopeInterval().excludes(1))
        .filter(size -> Math.abs(size.slope() - 1) >= WORTH_SAYING)
        .map(size -> size.slope() < 1 ? "Small" : "Large")
        .map(jobs -> jobs + " jobs run over more in " + word + " than their work explains.")
        .ifPresent(sentences::add);
    return sentences;
  }

  private static String common(MeasureAudit audit) {
    GroupRatio all = audit.ratios().all();
    String subject = audit.measure().title();
    String bids = " in " + Count.of(all.jobs(), "bid");
    String likely = Words.likely(all.likely());
    if (all.likely().excludes(1)) {
      String where = Concentration.of(audit.observations(), null).map(Words::where).orElse("");
      return subject + " ran " + Words.over(all.ratio()) + bids + " (" + likely + ")" + where + ".";
    }
    String luck = all.likely().isKnown() ? "no more than luck explains; " : "";
    return subject + " came out " + Words.over(all.ratio()) + bids + " (" + luck + likely + ").";
  }

  private static List<String> reasons(List<Cause> causes) {
    if (causes.isEmpty()) {
      return List.of("No coating, surface, crew or year stands out by more than luck explains.");
    }
    return causes.stream().map(Verdict::reason).toList();
  }

  private static String reason(Cause cause) {
    String group =
        cause.by() == null
            ? "All bids"
            : switch (cause.by()) {
              case CREW, CREW_AT_HEIGHT -> "Crew " + cause.group();
              case YEAR -> "Bids of " + cause.group();
              default -> Words.capital(cause.group());
            };
    String partner =
        cause.partner().isEmpty()
            ? ""
            : " (never apart from " + cause.partner() + ", so it may be either)";
    return group
        + partner
        + ": "
        + cause.measure().word()
        + " ran "
        + Words.over(cause.ratio())
        + " in "
        + Count.of(cause.jobs(), "bid")
        + " ("
        + Words.likely(cause.likely())
        + ")"
        + cause.where().map(Words::where).orElse("")
        + ".";
  }

  private static String proof(List<MeasureAudit> measures) {
    if (measures.isEmpty()) {
      return "Nothing can be said yet: no bid says how its job came out.";
    }
    String proven =
        measures.stream()
            .flatMap(audit -> audit.offered().map(proof -> proven(audit, proof)).stream())
            .collect(Collectors.joining(", "));
    if (proven.isEmpty()) {
      return "Do not change anything yet: " + why(measures.get(0)) + ".";
    }
    String open =
        measures.stream()
            .filter(audit -> audit.offered().isEmpty())
            .map(audit -> " Do not change anything for " + audit.measure().word() + " yet.")
            .collect(Collectors.joining());
    return "With the changes below the usual miss falls from " + proven + "." + open;
  }

  private static String proven(MeasureAudit audit, Proof proof) {
    return "%s to %s in %s"
        .formatted(Words.miss(proof.before()), Words.miss(proof.after()), audit.measure().word());
  }

  private static String why(MeasureAudit audit) {
    return audit.ratios().jobs().size() < Proof.FEWEST
        ? "there are too few bids to prove a change on"
        : "no change would have brought the bids nearer";
  }

  private static List<String> helped(MeasureAudit audit, UnitSystem system) {
    String word = audit.measure().word();
    return audit
        .offered()
        .map(
            proof ->
                List.of(
                    "%s: each bid made again with what only the others say, and %d of %d come nearer."
                        .formatted(audit.measure().title(), proof.closer(), proof.bids().size()),
                    new LastBids(audit.measure(), proof.last(LAST), system).sentence()))
        .orElseGet(
            () -> List.of("Do not change anything yet for " + word + ": " + why(audit) + "."));
  }
}
