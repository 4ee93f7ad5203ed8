package org.wetmil.workbook.fill.page;

import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.ShapeTypes;
import org.apache.poi.util.Units;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFDrawing;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFSimpleShape;
import org.apache.poi.xssf.usermodel.XSSFTextBox;
import org.apache.poi.xssf.usermodel.XSSFTextRun;
import org.wetmil.workbook.look.Plain;

/**
 * A small drawing of the pass, of plain shapes: on the left the gun seen from above with its fan on
 * the work, on the right three passes that overlap, back and forth. Its words are figures alone, so
 * that it needs no translation.
 */
final class PassDrawing {
  private static final int[] INK = {0x2B, 0x3A, 0x42};
  private static final int[] FAN = {0xD5, 0xDE, 0xE1};
  private static final int[] TWICE = {0xA9, 0xB8, 0xBE};
  private static final int[] PAPER = {0xFF, 0xFF, 0xFF};

  private static final int PASSES = 3;

  private final XSSFSheet sheet;
  private final XSSFDrawing drawing;
  private final int firstColumn;
  private final int firstRow;
  private final double rowPt;
  private final double width;
  private final double height;
  private int shapes;

  /**
   * Draws into a range of cells, whose widths are set.
   *
   * @param columns first and last
   * @param rows first and last
   * @param rowPt the height of each row in points
   */
  PassDrawing(XSSFSheet sheet, int[] columns, int[] rows, double rowPt) {
    this.sheet = sheet;
    this.rowPt = rowPt;
    this.drawing = sheet.createDrawingPatriarch();
    this.firstColumn = columns[0];
    this.firstRow = rows[0];
    double across = 0;
    for (int column = columns[0]; column <= columns[1]; column++) {
      across += wide(column);
    }
    this.width = across;
    this.height = (rows[1] - rows[0] + 1) * rowPt;
  }

  /**
   * @param distance from gun to work, as the crew reads it
   * @param overlap share of each pass that the next one covers, 0..0.9
   * @return how many shapes it took
   */
  int draw(String distance, double overlap) {
    // the gun, its fan and the work
    shape(ShapeTypes.RECT, INK, 0.14, 0.06, 0.20, 0.20);
    shape(ShapeTypes.TRIANGLE, FAN, 0.04, 0.20, 0.30, 0.84);
    shape(ShapeTypes.RECT, INK, 0.00, 0.84, 0.34, 0.92);
    shape(ShapeTypes.UP_DOWN_ARROW, INK, 0.335, 0.20, 0.36, 0.84);
    label(distance, 0.36, 0.42, 0.50);

    double band = 0.86 / (1 + (PASSES - 1) * (1 - overlap));
    double pitch = band * (1 - overlap);
    for (int pass = 0; pass < PASSES; pass++) {
      double top = 0.06 + pass * pitch;
      shape(ShapeTypes.RECT, FAN, 0.52, top, 0.82, top + band);
    }
    for (int pass = 1; pass < PASSES; pass++) {
      double top = 0.06 + pass * pitch;
      shape(ShapeTypes.RECT, TWICE, 0.52, top, 0.82, 0.06 + (pass - 1) * pitch + band);
    }
    for (int pass = 0; pass < PASSES; pass++) {
      double middle = 0.06 + pass * pitch + band / 2;
      boolean forth = pass % 2 == 0;
      shape(
          forth ? ShapeTypes.RIGHT_ARROW : ShapeTypes.LEFT_ARROW,
          INK,
          0.56,
          middle - 0.05,
          0.78,
          middle + 0.05);
    }
    label(Plain.unbroken(Plain.percent(overlap)), 0.82, 0.06 + pitch, 1.0);
    return shapes;
  }

  private void shape(int type, int[] fill, double left, double top, double right, double bottom) {
    if (bottom <= top) {
      return;
    }
    shapes++;
    XSSFSimpleShape shape = drawing.createSimpleShape(anchor(left, top, right, bottom));
    shape.setShapeType(type);
    shape.setFillColor(fill[0], fill[1], fill[2]);
    shape.setLineStyleColor(PAPER[0], PAPER[1], PAPER[2]);
    shape.setLineWidth(0.5);
    runs(shape).forEach(PassDrawing::ofNoLanguage);
  }

  private static Stream<XSSFTextRun> runs(XSSFSimpleShape shape) {
    return shape.getTextParagraphs().stream()
        .flatMap(paragraph -> paragraph.getTextRuns().stream());
  }

  /** The library writes the language of the machine, which is not to show in the result. */
  private static void ofNoLanguage(XSSFTextRun run) {
    if (run.getXmlObject().isSetRPr() && run.getXmlObject().getRPr().isSetLang()) {
      run.getXmlObject().getRPr().unsetLang();
    }
  }

  /** In the workbook's own font. */
  private void label(String text, double left, double top, double right) {
    shapes++;
    XSSFTextBox box = drawing.createTextbox(anchor(left, top, right, Math.min(1, top + 0.24)));
    String font = sheet.getWorkbook().getFontAt(0).getFontName();
    box.setText(text);
    box.setNoFill(true);
    box.setLeftInset(2);
    box.setRightInset(0);
    box.setTopInset(0);
    box.setBottomInset(0);
    runs(box)
        .forEach(
            run -> {
              run.setFont(font);
              run.setFontSize(13);
              run.setBold(true);
              ofNoLanguage(run);
            });
  }

  private XSSFClientAnchor anchor(double left, double top, double right, double bottom) {
    int[] from = at(left * width, top * height);
    int[] to = at(right * width, bottom * height);
    return drawing.createAnchor(from[1], from[3], to[1], to[3], from[0], from[2], to[0], to[2]);
  }

  /** The column, how far in it, the row, and how far in it, of a place in points. */
  private int[] at(double x, double y) {
    int column = firstColumn;
    double across = x;
    while (across > wide(column)) {
      across -= wide(column++);
    }
    int row = firstRow;
    double down = y;
    while (down > rowPt) {
      down -= rowPt;
      row++;
    }
    return new int[] {column, Units.toEMU(across), row, Units.toEMU(down)};
  }

  private double wide(int column) {
    return Units.pixelToPoints(sheet.getColumnWidthInPixels(column));
  }
}
