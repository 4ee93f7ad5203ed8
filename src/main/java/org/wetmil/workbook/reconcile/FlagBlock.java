package org.wetmil.workbook.reconcile;

import java.util.List;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.wetmil.reconcile.flag.Flag;
import org.wetmil.workbook.look.Heights;
import org.wetmil.workbook.look.Look;
import org.wetmil.workbook.look.Rows;

/** What was flagged, what each flag could mean and what to look at first; in words. */
final class FlagBlock {
  /** Columns after the names that each text runs over. */
  private static final List<Integer> SPANS = List.of(3, 6, 4);

  private final XSSFSheet sheet;
  private final Rows rows;
  private final Look look;

  FlagBlock(XSSFSheet sheet, Rows rows, Look look) {
    this.sheet = sheet;
    this.rows = rows;
    this.look = look;
  }

  void write(List<Flag> flags) {
    if (flags.isEmpty()) {
      return;
    }
    rows.row().text("What was flagged", look.block());
    rows.underline(ReconcilePage.COLUMNS, look.block());
    rows.row().text("Job", look.heading()).text("Coating", look.heading());
    spread(List.of("What was found", "What it could mean", "Where to look first"), look.heading());
    for (Flag flag : flags) {
      rows.row()
          .text(Keys.job(flag.job()), look.text(true))
          .text(Keys.coating(flag.coating()), look.text(true));
      List<String> texts =
          List.of(sentence(flag.type().title()) + at(flag), flag.couldMean(), flag.lookFirst());
      spread(texts, look.text(true));
      rows.height(Heights.points(lines(texts)));
    }
    rows.gap();
  }

  private void spread(List<String> texts, XSSFCellStyle style) {
    int row = rows.number() - 1;
    int column = ReconcilePage.FIGURES;
    for (int i = 0; i < texts.size(); i++) {
      rows.text(texts.get(i), style);
      for (int more = 1; more < SPANS.get(i); more++) {
        rows.text("", style);
      }
      sheet.addMergedRegionUnsafe(
          new CellRangeAddress(row, row, column, column + SPANS.get(i) - 1));
      column += SPANS.get(i);
    }
  }

  private static int lines(List<String> texts) {
    int lines = 1;
    for (int i = 0; i < texts.size(); i++) {
      int width = SPANS.get(i) * ReconcilePage.FIGURE_WIDTH;
      lines = Math.max(lines, Heights.lines(texts.get(i), width));
    }
    return lines;
  }

  private static String at(Flag flag) {
    return flag.line() == null ? "" : " (" + flag.line().file() + ":" + flag.line().line() + ")";
  }

  private static String sentence(String words) {
    return Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }
}
