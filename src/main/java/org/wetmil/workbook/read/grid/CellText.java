package org.wetmil.workbook.read.grid;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.wetmil.workbook.stream.CellKind;
import org.wetmil.workbook.stream.NumberFormats;
import org.wetmil.workbook.stream.RawCell;

/** What a cell shows to whoever looks at the sheet. */
public final class CellText {
  private static final String GENERAL = "General";
  private static final MathContext DIGITS = new MathContext(15);

  private final NumberFormats formats;
  private final boolean date1904;
  private final DataFormatter formatter = new DataFormatter(Locale.US);

  public CellText(NumberFormats formats, boolean date1904) {
    this.formats = formats;
    this.date1904 = date1904;
  }

  /** The text as shown, with the number format applied. */
  public String shown(RawCell cell) {
    return switch (cell.kind()) {
      case NUMBER -> shownNumber(cell);
      case BOOLEAN -> cell.text().equals("1") ? "TRUE" : "FALSE";
      case TEXT, ERROR, BLANK -> cell.text();
    };
  }

  /** The text with a number's digits as they are, not as its format rounds them. */
  public String exact(RawCell cell) {
    if (cell.kind() != CellKind.NUMBER || isDate(cell)) {
      return shown(cell);
    }
    return isPercent(cell) ? formatted(cell, "0.##########%") : general(cell);
  }

  /** Whether the cell holds a number that is shown as a date or a time. */
  public boolean isDate(RawCell cell) {
    return cell.kind() == CellKind.NUMBER && formats.isDate(cell.style());
  }

  /** Whether the cell holds a number that is shown times 100 with a percent sign. */
  public boolean isPercent(RawCell cell) {
    return cell.kind() == CellKind.NUMBER && formats.isPercent(cell.style());
  }

  /** The number format of a cell. */
  public String format(RawCell cell) {
    return formats.code(cell.style());
  }

  /** The number that a cell holds; NaN when it holds none. */
  public static double number(RawCell cell) {
    if (cell.kind() != CellKind.NUMBER) {
      return Double.NaN;
    }
    try {
      return Double.parseDouble(cell.text().strip());
    } catch (NumberFormatException e) {
      return Double.NaN;
    }
  }

  private String shownNumber(RawCell cell) {
    String code = formats.code(cell.style());
    return code.equals(GENERAL) ? general(cell) : formatted(cell, code);
  }

  /** The digits of a number, to the 15 that spreadsheets keep. */
  private static String general(RawCell cell) {
    double number = number(cell);
    return Double.isFinite(number)
        ? BigDecimal.valueOf(number).round(DIGITS).stripTrailingZeros().toPlainString()
        : cell.text();
  }

  private String formatted(RawCell cell, String code) {
    double number = number(cell);
    if (Double.isNaN(number)) {
      return cell.text();
    }
    return formatter.formatRawCellContents(number, -1, code, date1904).strip();
  }
}
