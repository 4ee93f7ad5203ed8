package org.wetmil.workbook.fill.page;

import java.util.List;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xddf.usermodel.XDDFColor;
import org.apache.poi.xddf.usermodel.XDDFLineProperties;
import org.apache.poi.xddf.usermodel.XDDFNoFillProperties;
import org.apache.poi.xddf.usermodel.XDDFShapeProperties;
import org.apache.poi.xddf.usermodel.XDDFSolidFillProperties;
import org.apache.poi.xddf.usermodel.chart.AxisCrosses;
import org.apache.poi.xddf.usermodel.chart.AxisOrientation;
import org.apache.poi.xddf.usermodel.chart.AxisPosition;
import org.apache.poi.xddf.usermodel.chart.AxisTickMark;
import org.apache.poi.xddf.usermodel.chart.BarDirection;
import org.apache.poi.xddf.usermodel.chart.BarGrouping;
import org.apache.poi.xddf.usermodel.chart.ChartTypes;
import org.apache.poi.xddf.usermodel.chart.XDDFBarChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFCategoryAxis;
import org.apache.poi.xddf.usermodel.chart.XDDFDataSource;
import org.apache.poi.xddf.usermodel.chart.XDDFDataSourcesFactory;
import org.apache.poi.xddf.usermodel.chart.XDDFNumericalDataSource;
import org.apache.poi.xddf.usermodel.chart.XDDFValueAxis;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTBoolean;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTDLbls;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTStrData;
import org.openxmlformats.schemas.drawingml.x2006.chart.STDLblPos;
import org.openxmlformats.schemas.drawingml.x2006.main.CTShapeProperties;
import org.openxmlformats.schemas.drawingml.x2006.main.CTTextBody;
import org.openxmlformats.schemas.drawingml.x2006.main.CTTextCharacterProperties;
import org.wetmil.workbook.look.Styles;

/**
 * Native charts of the summary: bars in one dark tone with their figures beside them, no grid, no
 * legend; the title says what the bars show and follows a cell.
 */
final class SummaryCharts {
  private static final byte[] PAPER = {-1, -1, -1};
  private static final int TITLE_SIZE = 1100;
  private static final int LABEL_SIZE = 900;

  private final XSSFSheet sheet;

  SummaryCharts(XSSFSheet sheet) {
    this.sheet = sheet;
  }

  /** Cells of the sheet that a chart follows, and what they hold now. */
  record Shown<T>(CellRangeAddress at, List<T> now) {}

  /**
   * Bars from the top down in the order of the cells.
   *
   * @param title the cell of the title, as a formula refers to it, and what it says now
   */
  void bars(int[] corner, String[] title, Shown<String> names, Shown<Double> values, String name) {
    XSSFChart chart = chart(corner, title, name);
    XDDFCategoryAxis down = downwards(chart);
    XDDFValueAxis across = chart.createValueAxis(AxisPosition.TOP);
    across.setCrosses(AxisCrosses.AUTO_ZERO);
    across.setMinimum(0);
    across.setVisible(false);
    XDDFBarChartData data = (XDDFBarChartData) chart.createData(ChartTypes.BAR, down, across);
    data.setBarDirection(BarDirection.BAR);
    data.setGapWidth(45);
    data.setVaryColors(false);
    XDDFBarChartData.Series series =
        (XDDFBarChartData.Series) data.addSeries(texts(names), figures(values));
    series.setTitle(name, null);
    XDDFShapeProperties shape = new XDDFShapeProperties();
    shape.setFillProperties(new XDDFSolidFillProperties(XDDFColor.from(Styles.DRAWN_SLATE)));
    series.setShapeProperties(shape);
    chart.plot(data);
    figuresBeside(chart);
    textSize(chart);
    frame(chart);
  }

  /**
   * Bars that begin somewhere, as on a calendar, from the top down in the order of the cells.
   *
   * @param title the cell of the title, as a formula refers to it, and what it says now
   * @param from where each begins
   * @param lengths how long each is
   */
  void spans(
      int[] corner,
      String[] title,
      Shown<String> names,
      Shown<Double> from,
      Shown<Double> lengths,
      double least,
      double most) {
    XSSFChart chart = chart(corner, title, "Days by room");
    XDDFCategoryAxis down = downwards(chart);
    XDDFValueAxis across = chart.createValueAxis(AxisPosition.TOP);
    across.setCrosses(AxisCrosses.AUTO_ZERO);
    across.setMinimum(least);
    across.setMaximum(most);
    across.setMajorUnit(Math.max(1, Math.ceil((most - least) / 20)));
    across.setNumberFormat("0");
    across.getOrAddMajorGridProperties().setLineProperties(pale());
    XDDFDataSource<String> categories = texts(names);
    XDDFBarChartData data = (XDDFBarChartData) chart.createData(ChartTypes.BAR, down, across);
    data.setBarDirection(BarDirection.BAR);
    data.setBarGrouping(BarGrouping.STACKED);
    data.setOverlap((byte) 100);
    data.setGapWidth(45);
    data.setVaryColors(false);
    XDDFBarChartData.Series gap =
        (XDDFBarChartData.Series) data.addSeries(categories, figures(from));
    gap.setTitle("First day", null);
    XDDFShapeProperties nothing = new XDDFShapeProperties();
    nothing.setFillProperties(new XDDFNoFillProperties());
    gap.setShapeProperties(nothing);
    XDDFBarChartData.Series days =
        (XDDFBarChartData.Series) data.addSeries(categories, figures(lengths));
    days.setTitle("Days", null);
    XDDFShapeProperties shape = new XDDFShapeProperties();
    shape.setFillProperties(new XDDFSolidFillProperties(XDDFColor.from(Styles.DRAWN_SLATE)));
    days.setShapeProperties(shape);
    chart.plot(data);
    textSize(chart);
    frame(chart);
  }

  private XSSFChart chart(int[] corner, String[] title, String name) {
    XSSFClientAnchor anchor =
        sheet
            .createDrawingPatriarch()
            .createAnchor(0, 0, 0, 0, corner[1], corner[0], corner[3], corner[2]);
    XSSFChart chart = sheet.getDrawingPatriarch().createChart(anchor);
    chart.getGraphicFrame().setName(name);
    title(chart, title);
    return chart;
  }

  private static XDDFCategoryAxis downwards(XSSFChart chart) {
    XDDFCategoryAxis down = chart.createCategoryAxis(AxisPosition.LEFT);
    down.setOrientation(AxisOrientation.MAX_MIN);
    down.setMajorTickMark(AxisTickMark.NONE);
    down.getOrAddShapeProperties().setLineProperties(line());
    return down;
  }

  private XDDFDataSource<String> texts(Shown<String> cells) {
    return XDDFDataSourcesFactory.fromArray(
        cells.now().toArray(String[]::new), cells.at().formatAsString(sheetName(), true));
  }

  private XDDFNumericalDataSource<Double> figures(Shown<Double> cells) {
    return XDDFDataSourcesFactory.fromArray(
        cells.now().toArray(Double[]::new), cells.at().formatAsString(sheetName(), true));
  }

  private String sheetName() {
    return sheet.getSheetName();
  }

  private static void title(XSSFChart chart, String[] title) {
    chart.setTitleFormula(title[0]);
    CTStrData cache = chart.getCTChart().getTitle().getTx().getStrRef().addNewStrCache();
    cache.addNewPtCount().setVal(1);
    var point = cache.addNewPt();
    point.setIdx(0);
    point.setV(title[1]);
    chart.setTitleOverlay(false);
    CTTextBody look = chart.getCTChart().getTitle().addNewTxPr();
    text(look, TITLE_SIZE, true);
    chart.setAutoTitleDeleted(false);
  }

  private static void figuresBeside(XSSFChart chart) {
    CTDLbls labels =
        chart.getCTChart().getPlotArea().getBarChartArray(0).getSerArray(0).addNewDLbls();
    labels.addNewNumFmt().setFormatCode("#,##0.0");
    labels.getNumFmt().setSourceLinked(false);
    labels.addNewDLblPos().setVal(STDLblPos.OUT_END);
    labels.addNewShowLegendKey().setVal(false);
    labels.addNewShowVal().setVal(true);
    labels.addNewShowCatName().setVal(false);
    labels.addNewShowSerName().setVal(false);
    labels.addNewShowPercent().setVal(false);
    labels.addNewShowBubbleSize().setVal(false);
  }

  private static void textSize(XSSFChart chart) {
    text(chart.getCTChartSpace().addNewTxPr(), LABEL_SIZE, false);
  }

  private static void text(CTTextBody body, int size, boolean bold) {
    body.addNewBodyPr();
    CTTextCharacterProperties look = body.addNewP().addNewPPr().addNewDefRPr();
    look.setSz(size);
    look.setB(bold);
    look.addNewSolidFill().addNewSrgbClr().setVal(Styles.DRAWN_SLATE);
    body.getPArray(0).addNewEndParaRPr().setLang("en-US");
  }

  /** White, without a frame, so that the title's cell beneath is covered. */
  private static void frame(XSSFChart chart) {
    CTShapeProperties shape = chart.getCTChartSpace().addNewSpPr();
    shape.addNewSolidFill().addNewSrgbClr().setVal(PAPER);
    shape.addNewLn().addNewNoFill();
    CTBoolean rounded =
        chart.getCTChartSpace().isSetRoundedCorners()
            ? chart.getCTChartSpace().getRoundedCorners()
            : chart.getCTChartSpace().addNewRoundedCorners();
    rounded.setVal(false);
  }

  private static XDDFLineProperties pale() {
    XDDFLineProperties line = new XDDFLineProperties();
    line.setFillProperties(new XDDFSolidFillProperties(XDDFColor.from(Styles.DRAWN_LINE)));
    line.setWidth(0.5);
    return line;
  }

  private static XDDFLineProperties line() {
    XDDFLineProperties line = new XDDFLineProperties();
    line.setFillProperties(new XDDFSolidFillProperties(XDDFColor.from(Styles.DRAWN_SLATE)));
    line.setWidth(0.75);
    return line;
  }
}
