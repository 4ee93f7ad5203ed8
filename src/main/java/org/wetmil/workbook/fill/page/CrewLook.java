package org.wetmil.workbook.fill.page;

import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.wetmil.workbook.look.Look;
import org.wetmil.workbook.look.Styles;

/** Styles of what is read while standing: the crew pages and the cautions. */
final class CrewLook {
  private final Styles styles;

  CrewLook(Look look) {
    this.styles = look.styles();
  }

  /** A word or figure to be read from two metres. */
  XSSFCellStyle poster() {
    return styles.style(
        "poster",
        style -> {
          style.setFont(styles.font(true, 15, null));
          style.setVerticalAlignment(VerticalAlignment.CENTER);
        });
  }

  /**
   * A figure of the crew to be read from two metres: its capitals are 7 mm high and more.
   *
   * @param larger points over the workbook's own font
   */
  XSSFCellStyle farFigure(int larger) {
    return styles.style(
        "far figure " + larger,
        style -> {
          style.setFont(styles.font(true, larger, null));
          style.setAlignment(HorizontalAlignment.LEFT);
          style.setVerticalAlignment(VerticalAlignment.CENTER);
        });
  }

  /** Words and figures to be read at arm's length. */
  XSSFCellStyle large(boolean bold) {
    return styles.style(
        "large " + bold,
        style -> {
          style.setFont(styles.font(bold, 5, null));
          style.setWrapText(true);
          style.setVerticalAlignment(VerticalAlignment.CENTER);
        });
  }

  /** Words beside those, on two lines where they are long. */
  XSSFCellStyle smaller() {
    return styles.style(
        "smaller",
        style -> {
          style.setFont(styles.font(false, 2, null));
          style.setWrapText(true);
          style.setVerticalAlignment(VerticalAlignment.CENTER);
        });
  }

  /** The same beside such words, which may reach to the edge of their cell. */
  XSSFCellStyle besideSmaller() {
    return styles.style(
        "beside smaller",
        style -> {
          style.setFont(styles.font(false, 2, null));
          style.setWrapText(true);
          style.setIndention((short) 1);
          style.setAlignment(HorizontalAlignment.LEFT);
          style.setVerticalAlignment(VerticalAlignment.CENTER);
        });
  }

  /** Words to be read while standing. */
  XSSFCellStyle medium(boolean bold) {
    return styles.style(
        "medium " + bold,
        style -> {
          style.setFont(styles.font(bold, 2, null));
          style.setVerticalAlignment(VerticalAlignment.CENTER);
        });
  }

  /** A sentence with a line above and below. */
  XSSFCellStyle boxed() {
    return styles.style(
        "boxed",
        style -> {
          style.setFont(styles.font(false, 2, null));
          style.setWrapText(true);
          style.setVerticalAlignment(VerticalAlignment.CENTER);
          style.setBorderTop(BorderStyle.THIN);
          style.setBorderBottom(BorderStyle.THIN);
        });
  }
}
