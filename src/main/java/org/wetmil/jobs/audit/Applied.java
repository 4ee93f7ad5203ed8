package org.wetmil.jobs.audit;

import org.wetmil.audit.past.PastLine;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Surface;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.estimate.FilledLine;

/**
 * Factors of an earlier audit that a bid already holds: its own stick and trigger share against
 * today's, to which new suggestions refer.
 *
 * <p>Paint goes as one over the stick; the gun's hours go with the paint and as one over the
 * trigger share; the other hours stay (derived).
 *
 * @param sprayHours the gun's part of the line's hours, in the proportion it would have without
 *     them; NaN when the line is not filled
 */
record Applied(PastLine.Factors factors, double sprayHours) {

  static Applied of(FilledLine line, Catalogue today) {
    if (!line.isFilled()) {
      return new Applied(PastLine.Factors.NONE, Double.NaN);
    }
    Surface own = line.work().surface();
    Surface now = today.surface(own.name(), line.work().coating()).orNull();
    double hours = line.base(FilledColumn.LABOUR);
    double spray = line.base(FilledColumn.SPRAY);
    if (now == null || !(hours > 0)) {
      return new Applied(PastLine.Factors.NONE, spray);
    }
    double paint = now.stick() / own.stick();
    double slower = paint * now.triggerShare() / own.triggerShare();
    double before = spray / slower + hours - spray;
    return new Applied(
        new PastLine.Factors(paint, hours / before), hours * (spray / slower) / before);
  }
}
