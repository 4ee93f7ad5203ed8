package org.wetmil.workbook.fill;

import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFConditionalFormattingRule;
import org.apache.poi.xssf.usermodel.XSSFPatternFormatting;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFSheetConditionalFormatting;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.estimate.InputColumn;

/**
 * Marks input cells that a finding is about, without touching them: one conditional format for each
 * column, which reads the Findings cell of its own row and so follows a sort.
 */
final class Highlights {
  private Highlights() {}

  static void add(XSSFSheet sheet, SheetPlan.Block block) {
    int first = block.table().firstRow();
    int last = block.table().lastRow();
    XSSFSheetConditionalFormatting formats = sheet.getSheetConditionalFormatting();
    for (Map.Entry<InputColumn, Integer> column : block.table().columns().entrySet()) {
      if (column.getKey() == InputColumn.NOTES) {
        continue;
      }
      XSSFConditionalFormattingRule rule =
          formats.createConditionalFormattingRule(
              rule(block.letters(FilledColumn.FINDINGS), first + 1, column.getKey().heading()));
      XSSFPatternFormatting fill = rule.createPatternFormatting();
      fill.setFillPattern(FillPatternType.THIN_BACKWARD_DIAG.getCode());
      fill.setFillBackgroundColor(
          new XSSFColor(new byte[] {(byte) 0xFB, (byte) 0xE3, (byte) 0xC0}));
      fill.setFillForegroundColor(new XSSFColor(new byte[] {(byte) 0xC9, 0x7B, 0x2A}));
      CellRangeAddress cells =
          new CellRangeAddress(first, last, column.getValue(), column.getValue());
      formats.addConditionalFormatting(List.of(cells).toArray(CellRangeAddress[]::new), rule);
    }
  }

  /** Whether the Findings cell has a line that begins with a column's name. */
  static String rule(String findingsLetters, int row, String heading) {
    return "ISNUMBER(FIND(CHAR(10)&%s,CHAR(10)&$%s%d))"
        .formatted(Texts.quoted(heading + ": "), findingsLetters, row);
  }

  /** Whether a rule is one of ours. */
  static boolean isOurs(String formula) {
    return formula != null && formula.startsWith("ISNUMBER(FIND(CHAR(10)&");
  }

  /** Takes away the rules of an earlier fill. */
  static void clear(XSSFSheet sheet) {
    XSSFSheetConditionalFormatting formats = sheet.getSheetConditionalFormatting();
    for (int i = formats.getNumConditionalFormattings() - 1; i >= 0; i--) {
      var format = formats.getConditionalFormattingAt(i);
      boolean ours = format.getNumberOfRules() == 1 && isOurs(format.getRule(0).getFormula1());
      if (ours) {
        formats.removeConditionalFormatting(i);
      }
    }
  }
}
