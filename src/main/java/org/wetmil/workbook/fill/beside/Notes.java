package org.wetmil.workbook.fill.beside;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.apache.poi.ss.util.CellAddress;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFComment;
import org.apache.poi.xssf.usermodel.XSSFDrawing;
import org.apache.poi.xssf.usermodel.XSSFRichTextString;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.wetmil.checks.Finding;

/**
 * Notes on input cells that a finding is about: few, since many make a workbook slow, and never on
 * a cell that has one.
 */
public final class Notes {
  static final int MOST = 200;
  private static final String AUTHOR = "Wetmil";

  /** About the width of a digit, in the units of drawings (914,400 an inch). */
  private static final int MAX_DIGIT_EMU = 7 * 9_525;

  private Notes() {}

  /**
   * @param worst findings of one sheet, worst first
   */
  static void add(XSSFSheet sheet, SheetPlan plan, List<Finding> worst) {
    Map<CellAddress, List<Finding>> byCell = new LinkedHashMap<>();
    for (Finding finding : worst) {
      CellAddress cell = cell(plan, finding);
      if (cell == null || (byCell.size() >= MOST && !byCell.containsKey(cell))) {
        continue;
      }
      byCell.computeIfAbsent(cell, c -> new ArrayList<>()).add(finding);
    }
    XSSFDrawing drawing = null;
    for (Map.Entry<CellAddress, List<Finding>> entry : new TreeMap<>(byCell).entrySet()) {
      CellAddress cell = entry.getKey();
      if (sheet.getCellComment(cell) != null) {
        continue;
      }
      if (drawing == null) {
        drawing = sheet.createDrawingPatriarch();
      }
      String text =
          entry.getValue().stream().map(Finding::message).collect(Collectors.joining("\n"));
      int lines = 1 + text.length() / 34 + entry.getValue().size();
      // begun in the cell itself: where the box begins the library makes the note, and the cell
      // beside may have one; the offset then takes the box to the cell's right edge
      int right = sheet.getColumnWidth(cell.getColumn()) * MAX_DIGIT_EMU / 256;
      XSSFClientAnchor anchor =
          drawing.createAnchor(
              right,
              0,
              0,
              0,
              cell.getColumn(),
              cell.getRow(),
              cell.getColumn() + 5,
              cell.getRow() + Math.max(3, lines));
      XSSFComment comment = drawing.createCellComment(anchor);
      comment.setAuthor(AUTHOR);
      comment.setString(new XSSFRichTextString(text));
    }
  }

  private static CellAddress cell(SheetPlan plan, Finding finding) {
    if (finding.spot().column() == null) {
      return null;
    }
    return plan.of(finding)
        .map(placed -> placed.block().table().columns().get(finding.spot().column()))
        .map(column -> new CellAddress(finding.spot().row() - 1, column))
        .orElse(null);
  }

  /** Takes away the notes of an earlier fill, known by their author. */
  public static void clear(XSSFSheet sheet) {
    // all are sought before the first goes: the library's notes go stale when one is removed
    List<CellAddress> ours =
        sheet.getCellComments().entrySet().stream()
            .filter(note -> AUTHOR.equals(note.getValue().getAuthor()))
            .map(Map.Entry::getKey)
            .toList();
    ours.forEach(at -> remove(sheet, at));
  }

  private static void remove(XSSFSheet sheet, CellAddress at) {
    // a cell that is needed only to take its note away, since rows are not loaded here; the row
    // stays, for with it the library would take the estimator's notes on it away
    XSSFRow loaded = sheet.getRow(at.getRow());
    XSSFRow row = loaded == null ? sheet.createRow(at.getRow()) : loaded;
    XSSFCell cell = row.createCell(at.getColumn());
    cell.removeCellComment();
    row.removeCell(cell);
  }
}
