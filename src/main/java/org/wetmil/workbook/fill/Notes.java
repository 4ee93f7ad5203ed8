package org.wetmil.workbook.fill;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.apache.poi.ss.util.CellAddress;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFComment;
import org.apache.poi.xssf.usermodel.XSSFDrawing;
import org.apache.poi.xssf.usermodel.XSSFRichTextString;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.wetmil.checks.Finding;

/**
 * Notes on input cells that a finding is about: few, since many make a workbook slow, and never on
 * a cell that has one.
 */
final class Notes {
  static final int MOST = 200;
  private static final String AUTHOR = "Wetmil";

  private Notes() {}

  /**
   * @param worst findings of one sheet, worst first
   */
  static void add(XSSFSheet sheet, SheetPlan plan, List<Finding> worst) {
    Map<CellAddress, List<Finding>> byCell = new java.util.LinkedHashMap<>();
    for (Finding finding : worst) {
      CellAddress cell = cell(plan, finding);
      if (cell == null || (byCell.size() >= MOST && !byCell.containsKey(cell))) {
        continue;
      }
      byCell.computeIfAbsent(cell, c -> new java.util.ArrayList<>()).add(finding);
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
      XSSFClientAnchor anchor =
          drawing.createAnchor(
              0,
              0,
              0,
              0,
              cell.getColumn() + 1,
              cell.getRow(),
              cell.getColumn() + 5,
              cell.getRow() + Math.max(3, lines));
      XSSFComment comment = drawing.createCellComment(anchor);
      comment.setAddress(cell);
      comment.setAuthor(AUTHOR);
      comment.setString(new XSSFRichTextString(text));
    }
  }

  private static CellAddress cell(SheetPlan plan, Finding finding) {
    int row = finding.spot().row() - 1;
    if (row < 0 || finding.spot().column() == null || plan.lineAt(row) == null) {
      return null;
    }
    Integer column = plan.blockOf(row).table().columns().get(finding.spot().column());
    return column == null ? null : new CellAddress(row, column);
  }

  /** Takes away the notes of an earlier fill, known by their author. */
  static void clear(XSSFSheet sheet) {
    for (Map.Entry<CellAddress, XSSFComment> note :
        List.copyOf(sheet.getCellComments().entrySet())) {
      if (AUTHOR.equals(note.getValue().getAuthor())) {
        remove(sheet, note.getKey());
      }
    }
  }

  private static void remove(XSSFSheet sheet, CellAddress at) {
    // a cell that is needed only to take its note away, since rows are not loaded here
    var row = sheet.getRow(at.getRow());
    boolean made = row == null;
    var cell = (made ? sheet.createRow(at.getRow()) : row).createCell(at.getColumn());
    cell.removeCellComment();
    if (made) {
      sheet.removeRow(sheet.getRow(at.getRow()));
    }
  }
}
