package org.wetmil.workbook.fill.beside;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.ss.usermodel.PaperSize;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.wetmil.estimate.FilledColumn;

/**
 * Where the filled columns of a bid sheet are parted on paper: between groups that are read
 * together, and so that the last page has the findings beside the hours. The estimator's page setup
 * is left alone, and so are a sheet that they fit to a page, where breaks have no effect, and one
 * whose print area they chose.
 */
final class PrintStrips {
  /** The columns that begin a group; the first one is begun by the first column. */
  private static final Set<FilledColumn> BEGIN =
      EnumSet.of(FilledColumn.WET_FILM, FilledColumn.LABOUR, FilledColumn.FINDINGS);

  /** Points that a character takes, counted with the widest font that may stand in for theirs. */
  private static final double CHARACTER_PT = 7;

  private static final double INCH_PT = 72;
  private static final double LETTER_SHORT_PT = 612;
  private static final double LETTER_LONG_PT = 792;
  private static final double A4_SHORT_PT = 595;
  private static final double A4_LONG_PT = 842;

  private final XSSFSheet sheet;

  PrintStrips(XSSFSheet sheet) {
    this.sheet = sheet;
  }

  /**
   * Parts the columns of a block.
   *
   * @param first where it begins
   */
  void part(int first, List<FilledColumn> columns) {
    int index = sheet.getWorkbook().getSheetIndex(sheet);
    double room = room();
    int last = first + columns.size() - 1;
    boolean fits = width(0, last) <= room + repeated();
    if (fits || sheet.getFitToPage() || sheet.getWorkbook().getPrintArea(index) != null) {
      return;
    }
    List<Integer> begins = new ArrayList<>(List.of(first));
    columns.stream().filter(BEGIN::contains).forEach(c -> begins.add(first + columns.indexOf(c)));
    int end = last;
    for (int i = begins.size() - 1; i >= 0; i--) {
      boolean roomForOneMore = i > 0 && width(begins.get(i - 1), end) <= room;
      if (!roomForOneMore) {
        // the library counts the column before the break
        sheet.setColumnBreak(begins.get(i) - 1);
        end = begins.get(i) - 1;
      }
    }
  }

  /** Takes away the breaks among columns of an earlier fill, and the one before them. */
  void clear(int first, int last) {
    IntStream.rangeClosed(first - 1, last)
        .filter(sheet::isColumnBroken)
        .forEach(sheet::removeColumnBreak);
  }

  /** Characters that a page takes beside the columns that are repeated on each. */
  private double room() {
    var print = sheet.getPrintSetup();
    boolean metric = print.getPaperSizeEnum() == PaperSize.A4_PAPER;
    double paper =
        print.getLandscape()
            ? (metric ? A4_LONG_PT : LETTER_LONG_PT)
            : (metric ? A4_SHORT_PT : LETTER_SHORT_PT);
    double margins = sheet.getMargin(PageMargin.LEFT) + sheet.getMargin(PageMargin.RIGHT);
    int scale = print.getScale() == 0 ? 100 : print.getScale();
    return (paper - margins * INCH_PT) * 100 / scale / CHARACTER_PT - repeated();
  }

  private double repeated() {
    CellRangeAddress columns = sheet.getRepeatingColumns();
    return columns == null ? 0 : width(columns.getFirstColumn(), columns.getLastColumn());
  }

  private double width(int first, int last) {
    return IntStream.rangeClosed(first, last)
            .filter(column -> !sheet.isColumnHidden(column))
            .map(sheet::getColumnWidth)
            .sum()
        / 256.0;
  }
}
