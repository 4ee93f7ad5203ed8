package org.wetmil.workbook.fill.beside;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFConditionalFormattingRule;
import org.apache.poi.xssf.usermodel.XSSFPatternFormatting;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFSheetConditionalFormatting;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTConditionalFormatting;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTWorksheet;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.estimate.InputColumn;
import org.wetmil.workbook.look.Texts;

/**
 * Marks input cells that a warning or a stop is about, without touching them: one conditional
 * format for each column, which reads the Findings cell of its own row and so follows a sort.
 */
public final class Highlights {
  private static final String OURS = "ISNUMBER(FIND(CHAR(10)&";

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
      hatch(rule);
      CellRangeAddress cells =
          new CellRangeAddress(first, last, column.getValue(), column.getValue());
      formats.addConditionalFormatting(List.of(cells).toArray(CellRangeAddress[]::new), rule);
    }
  }

  /** The look of a cell that wants attention. */
  public static void hatch(XSSFConditionalFormattingRule rule) {
    XSSFPatternFormatting fill = rule.createPatternFormatting();
    fill.setFillPattern(FillPatternType.THIN_BACKWARD_DIAG.getCode());
    fill.setFillBackgroundColor(
        new XSSFColor(new byte[] {(byte) 0xFF, (byte) 0xFB, (byte) 0xE3, (byte) 0xC0}));
    fill.setFillForegroundColor(new XSSFColor(new byte[] {(byte) 0xFF, (byte) 0xC9, 0x7B, 0x2A}));
  }

  /** Whether the Findings cell has a line that begins with a column's name. */
  static String rule(String findingsLetters, int row, String heading) {
    return OURS + Texts.quoted(heading + ": ") + ",CHAR(10)&$" + findingsLetters + row + "))";
  }

  /** Whether a rule is one of ours. */
  static boolean isOurs(String formula) {
    return formula != null && formula.startsWith(OURS);
  }

  /**
   * Takes away the rules of an earlier fill; a spreadsheet program may since have put them with the
   * estimator's own, which stay.
   */
  public static void clear(XSSFSheet sheet) {
    CTWorksheet worksheet = sheet.getCTWorksheet();
    for (int i = worksheet.sizeOfConditionalFormattingArray() - 1; i >= 0; i--) {
      CTConditionalFormatting format = worksheet.getConditionalFormattingArray(i);
      for (int j = format.sizeOfCfRuleArray() - 1; j >= 0; j--) {
        if (Arrays.stream(format.getCfRuleArray(j).getFormulaArray())
            .anyMatch(Highlights::isOurs)) {
          format.removeCfRule(j);
        }
      }
      if (format.sizeOfCfRuleArray() == 0) {
        worksheet.removeConditionalFormatting(i);
      }
    }
  }
}
