package org.wetmil.workbook.audit;

import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xddf.usermodel.XDDFColor;
import org.apache.poi.xddf.usermodel.XDDFFillProperties;
import org.apache.poi.xddf.usermodel.XDDFLineProperties;
import org.apache.poi.xddf.usermodel.XDDFNoFillProperties;
import org.apache.poi.xddf.usermodel.XDDFShapeProperties;
import org.apache.poi.xddf.usermodel.XDDFSolidFillProperties;
import org.apache.poi.xddf.usermodel.chart.AxisCrosses;
import org.apache.poi.xddf.usermodel.chart.AxisOrientation;
import org.apache.poi.xddf.usermodel.chart.AxisPosition;
import org.apache.poi.xddf.usermodel.chart.BarDirection;
import org.apache.poi.xddf.usermodel.chart.BarGrouping;
import org.apache.poi.xddf.usermodel.chart.ChartTypes;
import org.apache.poi.xddf.usermodel.chart.DisplayBlanks;
import org.apache.poi.xddf.usermodel.chart.LegendPosition;
import org.apache.poi.xddf.usermodel.chart.MarkerStyle;
import org.apache.poi.xddf.usermodel.chart.ScatterStyle;
import org.apache.poi.xddf.usermodel.chart.XDDFBarChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFCategoryAxis;
import org.apache.poi.xddf.usermodel.chart.XDDFDataSourcesFactory;
import org.apache.poi.xddf.usermodel.chart.XDDFNumericalDataSource;
import org.apache.poi.xddf.usermodel.chart.XDDFScatterChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFValueAxis;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTTitle;
import org.openxmlformats.schemas.drawingml.x2006.main.CTTextCharacterProperties;
import org.openxmlformats.schemas.drawingml.x2006.main.CTTextParagraph;
import org.wetmil.workbook.look.Styles;

/** A native chart in one dark tone, titled with what it shows. */
final class Chart {
  private static final byte[] PALE = {(byte) 0xA9, (byte) 0xB8, (byte) 0xBE};
  private static final int TITLE_SIZE = 1100;
  private static final int TEXT_SIZE = 900;

  private final XSSFSheet data;
  private final XSSFChart chart;

  /**
   * @param data the sheet of its figures
   * @param corners first column and row, last column and row, from 0
   */
  Chart(XSSFSheet page, XSSFSheet data, int[] corners, String title) {
    this.data = data;
    XSSFClientAnchor anchor =
        page.createDrawingPatriarch()
            .createAnchor(0, 0, 0, 0, corners[0], corners[1], corners[2], corners[3]);
    chart = page.getDrawingPatriarch().createChart(anchor);
    chart.setTitleText(title);
    chart.setTitleOverlay(false);
    // a program that pads the shorter series would draw a line to 0
    chart.displayBlanksAs(DisplayBlanks.GAP);
    chart.setAutoTitleDeleted(false);
    plain(chart.getCTChart().getTitle(), TITLE_SIZE, true);
    chart.getCTChartSpace().addNewTxPr().addNewBodyPr();
    CTTextParagraph text = chart.getCTChartSpace().getTxPr().addNewP();
    ink(text.addNewPPr().addNewDefRPr(), TEXT_SIZE, false);
    text.addNewEndParaRPr().setLang("en-US");
  }

  /** Two axes of numbers. */
  record Axes(String across, String up, String acrossFormat, String upFormat) {}

  /**
   * Points, and a line drawn through two others.
   *
   * @param x cells of the points across
   * @param y cells of the points up
   * @param line cells of the line's two points: across, up; null for no line
   * @param limits of the axes: least and most across, least and most up
   */
  void points(
      Axes titles,
      String pointsName,
      CellRangeAddress x,
      CellRangeAddress y,
      String lineName,
      CellRangeAddress[] line,
      double[] limits) {
    XDDFValueAxis across = axis(AxisPosition.BOTTOM, titles.across(), titles.acrossFormat());
    XDDFValueAxis up = axis(AxisPosition.LEFT, titles.up(), titles.upFormat());
    across.setMinimum(limits[0]);
    across.setMaximum(limits[1]);
    up.setMinimum(limits[2]);
    up.setMaximum(limits[3]);
    across.setCrosses(AxisCrosses.MIN);
    up.setCrosses(AxisCrosses.MIN);
    XDDFScatterChartData points =
        (XDDFScatterChartData) chart.createData(ChartTypes.SCATTER, across, up);
    points.setStyle(ScatterStyle.LINE_MARKER);
    points.setVaryColors(false);
    var dots = (XDDFScatterChartData.Series) points.addSeries(numbers(x), numbers(y));
    dots.setTitle(pointsName, null);
    dots.setSmooth(false);
    dots.setMarkerStyle(MarkerStyle.CIRCLE);
    dots.setMarkerSize((short) 6);
    dots.setLineProperties(new XDDFLineProperties(new XDDFNoFillProperties()));
    if (line != null) {
      var drawn =
          (XDDFScatterChartData.Series) points.addSeries(numbers(line[0]), numbers(line[1]));
      drawn.setTitle(lineName, null);
      drawn.setSmooth(false);
      drawn.setMarkerStyle(MarkerStyle.NONE);
      XDDFLineProperties stroke = new XDDFLineProperties();
      stroke.setFillProperties(solid(Styles.DRAWN_SLATE));
      stroke.setWidth(1.25);
      drawn.setLineProperties(stroke);
    }
    chart.plot(points);
    var marker =
        chart.getCTChart().getPlotArea().getScatterChartArray(0).getSerArray(0).getMarker();
    marker.addNewSpPr().addNewSolidFill().addNewSrgbClr().setVal(Styles.DRAWN_SLATE);
    legend();
  }

  /**
   * For each name a bar from low to high, which changes its tone at the middle.
   *
   * @param parts cells stacked on each other: from 0 to low, which is not seen, low to middle,
   *     middle to high
   * @param said names of the parts
   * @param ends least and most of the axis
   */
  void spans(
      String title,
      CellRangeAddress names,
      CellRangeAddress[] parts,
      String[] said,
      double[] ends) {
    XDDFCategoryAxis down = chart.createCategoryAxis(AxisPosition.LEFT);
    down.setOrientation(AxisOrientation.MAX_MIN);
    down.setCrosses(AxisCrosses.AUTO_ZERO);
    XDDFValueAxis across = axis(AxisPosition.TOP, title, "0.00");
    across.setMinimum(ends[0]);
    across.setMaximum(ends[1]);
    across.setCrosses(AxisCrosses.AUTO_ZERO);
    XDDFBarChartData bars = (XDDFBarChartData) chart.createData(ChartTypes.BAR, down, across);
    bars.setBarDirection(BarDirection.BAR);
    bars.setBarGrouping(BarGrouping.STACKED);
    bars.setOverlap((byte) 100);
    bars.setGapWidth(60);
    bars.setVaryColors(false);
    var categories = XDDFDataSourcesFactory.fromStringCellRange(data, names);
    for (int i = 0; i < parts.length; i++) {
      var series = (XDDFBarChartData.Series) bars.addSeries(categories, numbers(parts[i]));
      series.setTitle(said[i], null);
      series.setShapeProperties(
          filled(
              switch (i) {
                case 0 -> new XDDFNoFillProperties();
                case 1 -> solid(PALE);
                default -> solid(Styles.DRAWN_SLATE);
              }));
    }
    chart.plot(bars);
  }

  private void legend() {
    chart.getOrAddLegend().setPosition(LegendPosition.BOTTOM);
  }

  private XDDFValueAxis axis(AxisPosition position, String title, String format) {
    XDDFValueAxis axis = chart.createValueAxis(position);
    axis.setTitle(title);
    axis.setNumberFormat(format);
    return axis;
  }

  private XDDFNumericalDataSource<Double> numbers(CellRangeAddress range) {
    return XDDFDataSourcesFactory.fromNumericCellRange(data, range);
  }

  private static XDDFFillProperties solid(byte[] colour) {
    return new XDDFSolidFillProperties(XDDFColor.from(colour));
  }

  private static XDDFShapeProperties filled(XDDFFillProperties fill) {
    XDDFShapeProperties shape = new XDDFShapeProperties();
    shape.setFillProperties(fill);
    return shape;
  }

  private static void plain(CTTitle title, int size, boolean bold) {
    for (CTTextParagraph paragraph : title.getTx().getRich().getPList()) {
      paragraph
          .getRList()
          .forEach(run -> ink(run.isSetRPr() ? run.getRPr() : run.addNewRPr(), size, bold));
    }
  }

  private static void ink(CTTextCharacterProperties look, int size, boolean bold) {
    look.setSz(size);
    look.setB(bold);
    look.addNewSolidFill().addNewSrgbClr().setVal(Styles.DRAWN_SLATE);
  }
}
