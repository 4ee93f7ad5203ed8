package org.wetmil.workbook.fill.beside;

import java.util.List;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.wetmil.checks.Finding;
import org.wetmil.estimate.FilledColumn;

/**
 * Widths, outline, page breaks, marks, highlights and notes of a bid sheet; its cells are not
 * touched.
 */
public final class BidSheetShape {
  private BidSheetShape() {}

  public static void shape(XSSFSheet sheet, SheetPlan plan, List<Finding> worst) {
    for (int first : plan.firstColumns()) {
      widths(sheet, plan, first);
    }
    for (int first : plan.firstColumns()) {
      new PrintStrips(sheet).part(first, plan.columns());
    }
    for (int i = 0; i < plan.blocks().size(); i++) {
      Marks.columns(sheet, plan.blocks().get(i), i);
    }
    Highlights.add(sheet, plan.blocks());
    Notes.add(sheet, plan, worst);
  }

  /** Takes away what an earlier fill gave columns of ours. */
  public static void clear(XSSFSheet sheet, int first, int last) {
    new ColumnSpans(sheet).clear(first, last);
    new PrintStrips(sheet).clear(first, last);
  }

  private static void widths(XSSFSheet sheet, SheetPlan plan, int first) {
    ColumnSpans spans = new ColumnSpans(sheet);
    int firstGrouped = Integer.MAX_VALUE;
    int lastGrouped = -1;
    for (FilledColumn column : plan.columns()) {
      int at = first + plan.columns().indexOf(column);
      spans.widen(at, width(column));
      if (column.isGrouped()) {
        firstGrouped = Math.min(firstGrouped, at);
        lastGrouped = Math.max(lastGrouped, at);
      }
    }
    if (lastGrouped >= 0) {
      spans.fold(firstGrouped, lastGrouped);
    }
  }

  private static int width(FilledColumn column) {
    return switch (column) {
      case FINDINGS -> RowCells.FINDINGS_WIDTH;
      case COATING_USED -> 16;
      case ORIFICE, FAN -> 14;
      case PREPARE -> 12;
      default -> 10;
    };
  }
}
