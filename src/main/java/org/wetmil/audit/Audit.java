package org.wetmil.audit;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.wetmil.audit.change.PaintTable;
import org.wetmil.audit.change.Suggestion;
import org.wetmil.audit.change.Suggestions;
import org.wetmil.audit.past.Measure;
import org.wetmil.audit.past.Observations;
import org.wetmil.audit.past.PastBid;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.quantity.UnitSystem;

/**
 * What past bids say about the next one.
 *
 * @param bids all of them, those without an outcome too
 * @param measures paint and hours, each where at least one bid says how it came out
 * @param ranges whether jobs came out inside their likely ranges
 * @param suggestions figures to change; empty: do not change anything yet
 * @param verdict the one page
 */
public record Audit(
    List<PastBid> bids,
    List<MeasureAudit> measures,
    JobRanges ranges,
    List<Suggestion> suggestions,
    Verdict verdict) {

  /**
   * Audits past bids; the same bids in the same order give the same answer.
   *
   * @param catalogue the tables that the estimates were made with
   * @param paintTable where a paint factor goes
   * @param system units of the page
   */
  public static Audit of(
      List<PastBid> bids, Catalogue catalogue, PaintTable paintTable, UnitSystem system) {
    List<MeasureAudit> measures =
        Stream.of(Measure.values())
            .map(measure -> Observations.of(measure, bids))
            .filter(observations -> !observations.list().isEmpty())
            .map(MeasureAudit::of)
            .toList();
    List<Suggestion> suggestions =
        Suggestions.of(
            proven(measures, Measure.PAINT),
            proven(measures, Measure.HOURS),
            catalogue,
            paintTable);
    JobRanges ranges = JobRanges.of(bids, measures, catalogue);
    return new Audit(
        List.copyOf(bids),
        measures,
        ranges,
        suggestions,
        Verdict.of(
            bids, measures, new RangeWords(ranges, catalogue).sentences(), suggestions, system));
  }

  private static Optional<Suggestions.Proven> proven(List<MeasureAudit> measures, Measure measure) {
    return measures.stream()
        .filter(audit -> audit.measure() == measure)
        .findFirst()
        .flatMap(MeasureAudit::proven);
  }
}
