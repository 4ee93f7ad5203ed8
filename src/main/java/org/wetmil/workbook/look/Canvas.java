package org.wetmil.workbook.look;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.stream.IntStream;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.wetmil.workbook.copy.AddedCell;
import org.wetmil.workbook.copy.CellContent;
import org.wetmil.workbook.copy.Cells;
import org.wetmil.workbook.stream.SheetReference;

/** Writes cells of a page anywhere, so that blocks can stand side by side. */
public final class Canvas {
  /** The size of the font in which sheets are written. */
  private static final int FONT_PT = 11;

  private final XSSFSheet sheet;
  private final Cells cells;
  private final Map<Integer, Double> heights = new HashMap<>();

  public Canvas(XSSFSheet sheet) {
    this.sheet = sheet;
    this.cells = Cells.of(sheet);
  }

  public XSSFSheet sheet() {
    return sheet;
  }

  public Canvas text(int row, int column, String text, XSSFCellStyle style) {
    return put(row, column, Contents.text(text), style);
  }

  public Canvas number(int row, int column, double value, XSSFCellStyle style) {
    return put(row, column, Contents.number(value), style);
  }

  /** A formula with its value; the value alone where there is no formula. */
  public Canvas formula(int row, int column, String formula, double value, XSSFCellStyle style) {
    return put(row, column, Contents.formula(formula, value), style);
  }

  public Canvas formula(int row, int column, String formula, String value, XSSFCellStyle style) {
    return put(row, column, Contents.formula(formula, value), style);
  }

  /** Gives the cells of a row that have none a style, so that its line runs across. */
  public Canvas across(int row, int first, int last, XSSFCellStyle style) {
    for (int column = first; column <= last; column++) {
      if (cells.get(row, column) == null) {
        put(row, column, new CellContent.Blank(), style);
      }
    }
    return this;
  }

  /** The text that was put into a cell. */
  public String textAt(int row, int column) {
    return ((CellContent.Text) value(row, column)).value();
  }

  /** The number that was put into a cell. */
  public double numberAt(int row, int column) {
    return ((CellContent.Num) value(row, column)).value();
  }

  private CellContent value(int row, int column) {
    CellContent content = cells.get(row, column);
    return content instanceof CellContent.Formula formula ? formula.cached() : content;
  }

  public Canvas merged(int row, int first, int last) {
    sheet.addMergedRegionUnsafe(new CellRangeAddress(row, row, first, last));
    return this;
  }

  public Canvas height(int row, double points) {
    cells.height(row, (float) points);
    heights.put(row, points);
    return this;
  }

  /** How high rows are together, in points; those that were given no height are of one line. */
  public double heightOf(int first, int end) {
    return IntStream.range(first, end)
        .mapToDouble(row -> heights.getOrDefault(row, Heights.points(1)))
        .sum();
  }

  /** An address on this sheet as its own formulas write it. */
  public static String at(int row, int column) {
    return new CellReference(row, column, true, true).formatAsString();
  }

  public static String range(int first, int last, int column) {
    return at(first, column) + ":" + at(last, column);
  }

  /** An address on this sheet as formulas of other sheets write it. */
  public String from(int row, int column) {
    return SheetReference.quoted(sheet.getSheetName()) + "!" + at(row, column);
  }

  private Canvas put(int row, int column, CellContent content, XSSFCellStyle style) {
    cells.put(row, new AddedCell(column, style == null ? 0 : style.getIndex(), content));
    return this;
  }

  /**
   * A text across the columns of a page, in a row as high as it needs.
   *
   * @param widths of those columns, in characters
   */
  public void paragraph(int row, String text, int[] widths, XSSFCellStyle style) {
    text(row, 0, text, style).merged(row, 0, widths.length - 1);
    height(row, Heights.of(text, Arrays.stream(widths).sum(), FONT_PT));
  }
}
