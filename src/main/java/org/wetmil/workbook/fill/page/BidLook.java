package org.wetmil.workbook.fill.page;

import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.wetmil.workbook.look.Look;
import org.wetmil.workbook.look.Styles;

/** Styles of the page for the customer alone. */
final class BidLook {
  private final Styles styles;

  BidLook(Look look) {
    this.styles = look.styles();
  }

  /** The words beside a large figure. */
  XSSFCellStyle figureWords() {
    return styles.style(
        "figure words",
        style -> {
          style.setFont(styles.font(true, 3, null));
          style.setVerticalAlignment(VerticalAlignment.CENTER);
        });
  }

  /** A large amount at the end of a line. */
  XSSFCellStyle figureMoney(int decimals) {
    return styles.style(
        "figure money " + decimals,
        style -> {
          style.setFont(styles.font(true, 8, Styles.SLATE));
          styles.format(style, decimals);
          style.setAlignment(HorizontalAlignment.RIGHT);
          style.setVerticalAlignment(VerticalAlignment.CENTER);
        });
  }

  /** The currency of a large amount. */
  XSSFCellStyle figureUnit() {
    return styles.style(
        "figure unit",
        style -> {
          style.setFont(styles.font(true, 3, null));
          style.setAlignment(HorizontalAlignment.RIGHT);
          style.setVerticalAlignment(VerticalAlignment.CENTER);
        });
  }

  /** Words of the first line of a room, parted from the room above. */
  XSSFCellStyle roomText() {
    return styles.style(
        "room text",
        style -> {
          style.setWrapText(true);
          style.setVerticalAlignment(VerticalAlignment.TOP);
          Styles.above(style);
        });
  }

  /** A number of the first line of a room. */
  XSSFCellStyle roomNumber(int decimals) {
    return styles.style(
        "room number " + decimals,
        style -> {
          styles.format(style, decimals);
          style.setVerticalAlignment(VerticalAlignment.TOP);
          Styles.above(style);
        });
  }

  /** A cell under a line. */
  XSSFCellStyle lineAbove() {
    return styles.style("line above", Styles::above);
  }
}
