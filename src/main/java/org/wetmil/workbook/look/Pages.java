package org.wetmil.workbook.look;

import java.util.stream.IntStream;
import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/** How sheets of ours come out on paper. */
public final class Pages {
  /**
   * Characters across a page of either paper, landscape with narrow margins, at which the usual
   * font of 11 points comes out at 8. Counted with the widest font that may stand in for it.
   */
  public static final int READABLE = 143;

  /** The same of a list of figures, at 5.8 points; 7.7 where the usual font is there. */
  public static final int MOST_ON_ONE = READABLE * 11 / 8;

  private Pages() {}

  /** Sets the width of a column, in characters; the file counts 256ths of one. */
  public static void width(XSSFSheet sheet, int column, int characters) {
    sheet.setColumnWidth(column, characters * 256);
  }

  /** Sets the widths of the first columns, in characters. */
  public static void widths(XSSFSheet sheet, int... characters) {
    for (int i = 0; i < characters.length; i++) {
      width(sheet, i, characters[i]);
    }
  }

  /** Landscape, as wide as one page, as long as it takes, with a footer that numbers the pages. */
  public static void landscape(XSSFSheet sheet, int columns, int rows) {
    sheet.getPrintSetup().setLandscape(true);
    fit(sheet, columns, rows);
  }

  /** Upright, as wide as one page. */
  public static void upright(XSSFSheet sheet, int columns, int rows) {
    sheet.getPrintSetup().setLandscape(false);
    fit(sheet, columns, rows);
  }

  /**
   * A list, landscape: as wide as one page where its letters are then read, else as few pages side
   * by side as it takes, each begun by the first columns.
   *
   * @param kept how many columns tell what a row is about
   */
  public static void list(XSSFSheet sheet, int columns, int rows, int kept) {
    landscape(sheet, columns, rows);
    narrowMargins(sheet);
    sheet.setRepeatingRows(new CellRangeAddress(0, 0, -1, -1));
    int width = characters(sheet, columns);
    if (width > MOST_ON_ONE) {
      int repeated = characters(sheet, kept);
      int pages = (int) Math.ceil((width - repeated) / (double) (MOST_ON_ONE - repeated));
      sheet.getPrintSetup().setFitWidth((short) pages);
      sheet.setRepeatingColumns(new CellRangeAddress(-1, -1, 0, kept - 1));
    }
  }

  private static int characters(XSSFSheet sheet, int columns) {
    return IntStream.range(0, columns).map(sheet::getColumnWidth).sum() / 256;
  }

  /** For pages that are full to the edge. */
  public static void narrowMargins(XSSFSheet sheet) {
    sheet.setMargin(PageMargin.LEFT, 0.4);
    sheet.setMargin(PageMargin.RIGHT, 0.4);
    sheet.setMargin(PageMargin.TOP, 0.4);
    sheet.setMargin(PageMargin.BOTTOM, 0.6);
    sheet.setMargin(PageMargin.FOOTER, 0.3);
  }

  private static void fit(XSSFSheet sheet, int columns, int rows) {
    sheet.setFitToPage(true);
    PrintSetup print = sheet.getPrintSetup();
    print.setFitWidth((short) 1);
    print.setFitHeight((short) 0);
    sheet.getFooter().setLeft("&F, &A");
    sheet.getFooter().setRight("&P / &N");
    sheet
        .getWorkbook()
        .setPrintArea(
            sheet.getWorkbook().getSheetIndex(sheet), 0, columns - 1, 0, Math.max(0, rows - 1));
    sheet.setDisplayGridlines(false);
  }

  /** An address with dollars: C4 becomes $C$4. */
  public static String absolute(String address) {
    CellReference at = new CellReference(address);
    return new CellReference(at.getRow(), at.getCol(), true, true).formatAsString();
  }
}
