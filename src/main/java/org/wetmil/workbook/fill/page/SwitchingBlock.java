package org.wetmil.workbook.fill.page;

import org.wetmil.estimate.job.FilledJob;
import org.wetmil.estimate.job.Switching;
import org.wetmil.quantity.Quantity;
import org.wetmil.quantity.UnitSystem;
import org.wetmil.workbook.look.Canvas;
import org.wetmil.workbook.look.Look;

/** What the recommended tips would save, as at the fill: tips are choices. */
final class SwitchingBlock {
  private final Canvas page;
  private final Look look;
  private final FilledJob job;
  private final UnitSystem system;

  SwitchingBlock(Canvas page, Look look, FilledJob job) {
    this.page = page;
    this.look = look;
    this.job = job;
    this.system = job.filled().bid().system();
  }

  /** Returns the row after it: the same row where there is nothing to switch. */
  int write(int row) {
    Switching switching = job.switching();
    if (switching.lines() == 0) {
      return row;
    }
    page.text(
            row,
            0,
            "Planned and recommended tips differ on "
                + switching.lines()
                + (switching.lines() == 1 ? " line" : " lines"),
            look.band(false))
        .across(row, 0, PlacesBlock.HOURS, look.band(false))
        .text(row, 3, HoursColumn.PAINT.heading(system), look.band(true))
        .text(row, 4, "Spray (h)", look.band(true));
    int at = row + 1;
    side(at++, "With the planned tips", switching.plannedGal(), switching.plannedHours());
    side(
        at++,
        "With the recommended tips",
        switching.recommendedGal(),
        switching.recommendedHours());
    page.text(at, 0, "Saved by switching", look.strong());
    for (int column = 3; column <= 4; column++) {
      double saved =
          column == 3
              ? Quantity.VOLUME.shown(switching.savedGal(), system)
              : switching.savedHours();
      page.formula(
          at,
          column,
          Canvas.at(at - 2, column) + "-" + Canvas.at(at - 1, column),
          saved,
          look.strongNumber(1));
    }
    return at + 1;
  }

  private void side(int row, String label, double gal, double hours) {
    page.text(row, 0, label, look.text(false));
    page.number(row, 3, Quantity.VOLUME.shown(gal, system), look.number(1));
    page.number(row, 4, hours, look.number(1));
  }
}
