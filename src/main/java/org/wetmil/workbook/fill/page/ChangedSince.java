package org.wetmil.workbook.fill.page;

import java.math.BigDecimal;
import org.wetmil.estimate.job.FilledJob;
import org.wetmil.estimate.job.JobFigure;
import org.wetmil.workbook.look.Texts;

/**
 * Says on a page that the bid was changed after it was filled: figures of the page that are
 * formulas follow, its rows stay as they were. Each line that counts has hours, so that a size
 * changed and a line left out or taken in both show in the hours of the job.
 *
 * @param hours the cell of the job's hours, as this page writes it
 * @param filled what stood there when the bid was filled
 */
record ChangedSince(String hours, double filled) {
  /** A spreadsheet program may sum in another order. */
  private static final String ROUNDING = "0.000001";

  static ChangedSince of(FilledJob job, String hours) {
    return new ChangedSince(hours, job.hours().number(JobFigure.TOTAL));
  }

  /** A formula that is empty until then; for ever, where the hours are beyond numbers. */
  String formula(String sentence) {
    if (!Double.isFinite(filled)) {
      return Texts.quoted("");
    }
    return "IF(ABS(%1$s-%2$s)<=%3$s*%2$s,\"\",%4$s)"
        .formatted(
            hours, BigDecimal.valueOf(filled).toPlainString(), ROUNDING, Texts.quoted(sentence));
  }
}
