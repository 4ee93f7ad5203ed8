package org.wetmil.workbook.reconcile;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xddf.usermodel.XDDFColor;
import org.apache.poi.xddf.usermodel.XDDFShapeProperties;
import org.apache.poi.xddf.usermodel.XDDFSolidFillProperties;
import org.apache.poi.xddf.usermodel.chart.AxisCrossBetween;
import org.apache.poi.xddf.usermodel.chart.AxisCrosses;
import org.apache.poi.xddf.usermodel.chart.AxisOrientation;
import org.apache.poi.xddf.usermodel.chart.AxisPosition;
import org.apache.poi.xddf.usermodel.chart.AxisTickMark;
import org.apache.poi.xddf.usermodel.chart.BarDirection;
import org.apache.poi.xddf.usermodel.chart.ChartTypes;
import org.apache.poi.xddf.usermodel.chart.LegendPosition;
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
import org.wetmil.reconcile.use.GroupUse;
import org.wetmil.workbook.look.Styles;

/** A native chart of bid against used by coating, its title the answer. */
final class UseChart {
  /** The page's rows beside which it stands. */
  static final int LAST_ROW = 26;

  private static final int FIRST_ROW = 3;

  /** More bars than these cannot be read. */
  private static final int MOST = 15;

  private UseChart() {}

  static void draw(XSSFSheet page, XSSFSheet byCoating, Books books) {
    int coatings = Math.min(MOST, books.result().byCoating().size());
    if (coatings == 0) {
      return;
    }
    XSSFClientAnchor anchor =
        page.createDrawingPatriarch().createAnchor(0, 0, 0, 0, 5, FIRST_ROW, 15, LAST_ROW - 1);
    XSSFChart chart = page.getDrawingPatriarch().createChart(anchor);
    chart.getGraphicFrame().setName("Bid against used");
    chart.setTitleText(title(books, coatings));
    chart.getCTChart().getTitle().getTx().getRich().getPArray(0).getRArray(0).getRPr().setSz(1000);
    chart.setTitleOverlay(false);
    chart.getOrAddLegend().setPosition(LegendPosition.BOTTOM);
    XDDFCategoryAxis down = chart.createCategoryAxis(AxisPosition.LEFT);
    down.setOrientation(AxisOrientation.MAX_MIN);
    down.setMajorTickMark(AxisTickMark.NONE);
    XDDFValueAxis across = chart.createValueAxis(AxisPosition.BOTTOM);
    across.setCrosses(AxisCrosses.MAX);
    across.setCrossBetween(AxisCrossBetween.BETWEEN);
    across.setNumberFormat("#,##0");
    XDDFBarChartData bars = (XDDFBarChartData) chart.createData(ChartTypes.BAR, down, across);
    bars.setBarDirection(BarDirection.BAR);
    bars.setGapWidth(45);
    bars.setVaryColors(false);
    series(bars, byCoating, PaintColumn.BID, books, GroupUse::bidGal, Styles.DRAWN_LINE);
    series(bars, byCoating, PaintColumn.USED, books, GroupUse::usedGal, Styles.DRAWN_SLATE);
    chart.plot(bars);
    var names = chart.getCTChart().getPlotArea().getCatAxArray(0);
    names.addNewTickLblSkip().setVal(1);
    CTBoolean rounded =
        chart.getCTChartSpace().isSetRoundedCorners()
            ? chart.getCTChartSpace().getRoundedCorners()
            : chart.getCTChartSpace().addNewRoundedCorners();
    rounded.setVal(false);
  }

  private static String title(Books books, int coatings) {
    int all = books.result().byCoating().size();
    return Headline.of(books)
        + (coatings < all ? " (the first " + coatings + " of " + all + " coatings)" : "");
  }

  private static void series(
      XDDFBarChartData bars,
      XSSFSheet sheet,
      PaintColumn column,
      Books books,
      ToDoubleFunction<GroupUse> gallons,
      byte[] colour) {
    List<GroupUse> groups = books.result().byCoating().stream().limit(MOST).toList();
    // values are given, since the library would compute every formula behind the cells to find them
    XDDFDataSource<String> names =
        XDDFDataSourcesFactory.fromArray(
            groups.stream().map(GroupUse::name).map(Keys::coating).toArray(String[]::new),
            range(sheet, 0, groups.size()));
    XDDFNumericalDataSource<Double> values =
        XDDFDataSourcesFactory.fromArray(
            groups.stream()
                .map(group -> books.volume(gallons.applyAsDouble(group)))
                .toArray(Double[]::new),
            range(sheet, GroupSheet.FIGURES + column.ordinal(), groups.size()));
    XDDFBarChartData.Series series = (XDDFBarChartData.Series) bars.addSeries(names, values);
    series.setTitle(column.heading(books.volumeUnit()), null);
    XDDFShapeProperties shape = new XDDFShapeProperties();
    shape.setFillProperties(new XDDFSolidFillProperties(XDDFColor.from(colour)));
    series.setShapeProperties(shape);
  }

  private static String range(XSSFSheet sheet, int column, int rows) {
    return new CellRangeAddress(1, rows, column, column).formatAsString(sheet.getSheetName(), true);
  }
}
