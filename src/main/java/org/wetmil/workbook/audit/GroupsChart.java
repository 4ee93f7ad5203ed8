package org.wetmil.workbook.audit;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.wetmil.audit.MeasureAudit;
import org.wetmil.audit.model.JudgedEffect;
import org.wetmil.audit.past.GroupedBy;
import org.wetmil.workbook.look.Look;
import org.wetmil.workbook.look.Rows;

/** Groups that have an interval, the furthest from right first: their figures and their chart. */
final class GroupsChart {
  private static final int MOST_GROUPS = 12;

  private final XSSFSheet sheet;
  private final Look look;
  private final Rows rows;

  /**
   * @param rows where the figures go on
   */
  GroupsChart(XSSFSheet sheet, Look look, Rows rows) {
    this.sheet = sheet;
    this.look = look;
    this.rows = rows;
  }

  /**
   * @param corners of the chart: first column and row, last column and row, from 0
   */
  void write(MeasureAudit audit, int[] corners) {
    List<JudgedEffect> groups =
        audit.effects().stream()
            .filter(effect -> effect.likely().isKnown())
            .filter(effect -> effect.effect().by() != GroupedBy.YEAR)
            .sorted(Comparator.comparingDouble(effect -> -Math.abs(Math.log(middle(effect)))))
            .limit(MOST_GROUPS)
            .toList();
    if (groups.isEmpty()) {
      return;
    }
    rows.gap().row();
    for (String heading :
        List.of("Group", "Low", "Middle", "High", "Low to middle", "Middle to high")) {
      rows.text(heading, look.heading());
    }
    int first = rows.number();
    for (JudgedEffect group : groups) {
      int row = rows.row().number();
      double low = group.likely().low();
      double high = group.likely().high();
      rows.text(
              group.effect().by().title().toLowerCase(Locale.ROOT) + ": " + group.effect().group(),
              look.text(false))
          .number(low, look.number(2))
          .number(middle(group), look.number(2))
          .number(high, look.number(2))
          .formula("C" + row + "-B" + row, middle(group) - low, look.number(2))
          .formula("D" + row + "-C" + row, high - middle(group), look.number(2));
    }
    int last = rows.number() - 1;
    double[] ends =
        AxisEnds.ratios(
            groups.stream().flatMap(g -> Stream.of(g.likely().low(), g.likely().high())), 0.05);
    new Chart(sheet, sheet, corners, ChartTitles.furthest(audit, groups))
        .spans(
            "taken/bid: pale below the middle, dark above it; 1.00 is right",
            column(first, last, 0),
            new CellRangeAddress[] {
              column(first, last, 1), column(first, last, 4), column(first, last, 5)
            },
            new String[] {"", "low to middle", "middle to high"},
            ends);
  }

  private static double middle(JudgedEffect effect) {
    return Math.sqrt(effect.likely().low() * effect.likely().high());
  }

  private static CellRangeAddress column(int first, int last, int column) {
    return new CellRangeAddress(first, last, column, column);
  }
}
