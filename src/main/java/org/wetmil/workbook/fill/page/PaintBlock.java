package org.wetmil.workbook.fill.page;

import java.util.List;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.estimate.job.FilledJob;
import org.wetmil.quantity.Quantity;
import org.wetmil.quantity.UnitSystem;
import org.wetmil.workbook.look.Canvas;
import org.wetmil.workbook.look.Look;

/** Paint by coating, and what the job takes in all. */
final class PaintBlock {
  private static final int MOST_COATINGS = 10;

  private final Canvas page;
  private final Look look;
  private final FilledJob job;
  private final HoursSums sums;
  private final UnitSystem system;

  /**
   * @param total the row of the paint of the job
   * @param next the row after the block
   */
  record Written(int total, int next) {}

  PaintBlock(Canvas page, Look look, FilledJob job, HoursSums sums) {
    this.page = page;
    this.look = look;
    this.job = job;
    this.sums = sums;
    this.system = job.filled().bid().system();
  }

  Written write(int row, String orderSheet) {
    page.text(row, SummarySheet.LABEL, "Paint by coating", look.band(false))
        .across(row, SummarySheet.LABEL, SummarySheet.UNIT, look.band(false))
        .text(row, SummarySheet.VALUE, Quantity.VOLUME.unit(system).symbol(), look.band(true));
    int at = row + 1;
    int first = at;
    List<Group> groups =
        Group.of(
            job.filled(),
            line -> line.work().coating().name(),
            line -> HoursKeys.firstPart(HoursKeys.order(line)));
    for (Group group : groups.subList(0, Math.min(MOST_COATINGS, groups.size()))) {
      page.text(at, SummarySheet.LABEL, group.first().work().coating().name(), look.text(false));
      page.formula(
          at++,
          SummarySheet.VALUE,
          sums.begunBy(HoursColumn.PAINT, HoursColumn.ORDER_KEY, group.keys()),
          group.total(FilledColumn.PAINT, system),
          look.number(1));
    }
    if (groups.size() > MOST_COATINGS) {
      double rest =
          groups.subList(MOST_COATINGS, groups.size()).stream()
              .mapToDouble(group -> group.total(FilledColumn.PAINT, system))
              .sum();
      String of = Canvas.range(first, at - 1, SummarySheet.VALUE);
      page.text(
          at,
          SummarySheet.LABEL,
          groups.size() - MOST_COATINGS + " more coatings",
          look.text(false));
      page.formula(
          at++,
          SummarySheet.VALUE,
          sums.all(HoursColumn.PAINT) + "-SUM(" + of + ")",
          rest,
          look.number(1));
    }
    if (job.order().hoseGal() > 0) {
      page.text(at, SummarySheet.LABEL, "Left in hoses", look.text(false));
      page.formula(
          at++,
          SummarySheet.VALUE,
          "SUM(" + OrderColumn.IN_HOSES.whole(orderSheet) + ")",
          Quantity.VOLUME.shown(job.order().hoseGal(), system),
          look.number(1));
    }
    page.text(at, SummarySheet.LABEL, "Paint of the job", look.strong());
    // where Include leaves every line out, there is no row to add up
    page.formula(
        at,
        SummarySheet.VALUE,
        at == first
            ? sums.all(HoursColumn.PAINT)
            : "SUM(" + Canvas.range(first, at - 1, SummarySheet.VALUE) + ")",
        Quantity.VOLUME.shown(job.paintGal(), system),
        look.strongNumber(1));
    return new Written(at, at + 1);
  }
}
