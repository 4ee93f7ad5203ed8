package org.wetmil.workbook.fill.beside;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTCfRule;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTConditionalFormatting;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTDxf;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTPatternFill;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTWorksheet;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.STCfType;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.STPatternType;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.estimate.InputColumn;
import org.wetmil.workbook.look.StylesOnce;
import org.wetmil.workbook.look.Texts;

/**
 * Marks input cells that a warning or a stop is about, without touching them: one conditional
 * format for each column, which reads the Findings cell of its own row and so follows a sort.
 */
public final class Highlights {
  private static final String OURS = "ISNUMBER(FIND(CHAR(10)&";

  private Highlights() {}

  static void add(XSSFSheet sheet, List<SheetPlan.Block> blocks) {
    int priority = nextPriority(sheet);
    long look = look(sheet);
    for (SheetPlan.Block block : blocks) {
      int first = block.table().firstRow();
      int last = block.table().lastRow();
      for (Map.Entry<InputColumn, Integer> column : block.table().columns().entrySet()) {
        if (column.getKey() != InputColumn.NOTES) {
          hatch(
              sheet,
              rule(block.letters(FilledColumn.FINDINGS), first + 1, column.getKey().heading()),
              new CellRangeAddress(first, last, column.getValue(), column.getValue()),
              priority++,
              look);
        }
      }
    }
  }

  /** The first priority that no rule of a sheet has. */
  public static int nextPriority(XSSFSheet sheet) {
    return 1
        + sheet.getCTWorksheet().getConditionalFormattingList().stream()
            .mapToInt(CTConditionalFormatting::sizeOfCfRuleArray)
            .sum();
  }

  /**
   * Gives cells the look of those that want attention, where a formula holds. Written without the
   * library's own method, which counts all rules of the sheet for each.
   *
   * @param priority of the rule, unlike that of all others
   */
  public static void hatch(XSSFSheet sheet, String formula, CellRangeAddress cells, int priority) {
    hatch(sheet, formula, cells, priority, look(sheet));
  }

  private static void hatch(
      XSSFSheet sheet, String formula, CellRangeAddress cells, int priority, long look) {
    CTConditionalFormatting format = sheet.getCTWorksheet().addNewConditionalFormatting();
    format.setSqref(List.of(cells.formatAsString()));
    CTCfRule rule = format.addNewCfRule();
    rule.setType(STCfType.EXPRESSION);
    rule.addFormula(formula);
    rule.setPriority(priority);
    rule.setDxfId(look);
  }

  /** The number of the look in the workbook. */
  private static long look(XSSFSheet sheet) {
    CTDxf look = CTDxf.Factory.newInstance();
    CTPatternFill fill = look.addNewFill().addNewPatternFill();
    fill.setPatternType(STPatternType.LIGHT_DOWN);
    fill.addNewFgColor().setRgb(new byte[] {(byte) 0xFF, (byte) 0xC9, 0x7B, 0x2A});
    fill.addNewBgColor().setRgb(new byte[] {(byte) 0xFF, (byte) 0xFB, (byte) 0xE3, (byte) 0xC0});
    return new StylesOnce(sheet.getWorkbook()).conditional(look);
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
