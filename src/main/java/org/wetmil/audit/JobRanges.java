package org.wetmil.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wetmil.audit.past.Measure;
import org.wetmil.audit.past.PastBid;
import org.wetmil.audit.range.RangeAudit;
import org.wetmil.audit.range.RangeChange;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.estimate.likely.Spreads;

/**
 * Whether jobs came out inside their likely ranges, by measure, and what would set that right.
 *
 * @param audits of measures of which any outcome is known with its range
 * @param changes of the same, one for each
 */
public record JobRanges(List<RangeAudit> audits, List<RangeChange> changes) {
  public JobRanges {
    audits = List.copyOf(audits);
    changes = List.copyOf(changes);
  }

  /** Paint first, since the factors of paint are in the hours, too. */
  static JobRanges of(List<PastBid> bids, List<MeasureAudit> measures, Catalogue today) {
    List<RangeAudit> audits = new ArrayList<>();
    List<RangeChange> changes = new ArrayList<>();
    Spreads spreads = Spreads.of(today);
    for (Measure measure : Measure.values()) {
      RangeAudit audit = RangeAudit.of(measure, bids);
      if (!audit.jobs().isEmpty() || audit.partly() > 0) {
        RangeChange change =
            RangeChange.of(
                audit,
                measures.stream()
                    .filter(each -> each.measure() == measure)
                    .findFirst()
                    .flatMap(MeasureAudit::offered),
                today,
                spreads);
        spreads = RangeChange.with(change.settings(), spreads);
        audits.add(audit);
        changes.add(change);
      }
    }
    return new JobRanges(audits, changes);
  }

  /** The audit of a measure; empty where no outcome is known with its range. */
  public Optional<RangeAudit> of(Measure measure) {
    return audits.stream().filter(audit -> audit.measure() == measure).findFirst();
  }
}
