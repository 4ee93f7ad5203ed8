package org.wetmil.workbook.look;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.function.Consumer;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.Font;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Makes each style of a workbook once, with the workbook's own font and our colours. */
public final class Styles {
  public static final byte[] SLATE = rgb(0x2B, 0x3A, 0x42);

  /** The same as drawings and charts write it: cells say first how opaque a colour is. */
  public static final byte[] DRAWN_SLATE = drawn(SLATE);

  static final byte[] MIST = rgb(0xEC, 0xF1, 0xF2);
  static final byte[] LINE = rgb(0xB8, 0xC4, 0xC8);
  public static final byte[] DRAWN_LINE = drawn(LINE);

  static final byte[] WHITE = rgb(0xFF, 0xFF, 0xFF);

  private final XSSFWorkbook workbook;
  private final StylesOnce once;
  private final Map<String, XSSFCellStyle> made = new HashMap<>();
  private final Map<FontKey, XSSFFont> fonts = new HashMap<>();

  Styles(XSSFWorkbook workbook) {
    this.workbook = workbook;
    DefaultStyles.ensure(workbook);
    this.once = new StylesOnce(workbook);
  }

  /** A style by its name, shaped when it is first asked for. */
  public XSSFCellStyle style(String name, Consumer<XSSFCellStyle> shape) {
    return made.computeIfAbsent(
        name,
        key -> {
          XSSFCellStyle style = once.draft();
          // said outright, since a program may take a font of its own for what is not said
          style.setFont(workbook.getFontAt(0));
          shape.accept(style);
          return once.style(style);
        });
  }

  /** The workbook's own font, larger by so many points. */
  public XSSFFont font(boolean bold, int larger, byte[] colour) {
    return font(bold, larger, colour, Font.U_NONE);
  }

  XSSFFont font(boolean bold, int larger, byte[] colour, byte underline) {
    return fonts.computeIfAbsent(
        new FontKey(bold, larger, colour == null ? "" : Arrays.toString(colour), underline),
        key -> newFont(bold, larger, colour, underline));
  }

  private record FontKey(boolean bold, int larger, String colour, byte underline) {}

  private XSSFFont newFont(boolean bold, int larger, byte[] colour, byte underline) {
    XSSFFont own = workbook.getFontAt(0);
    XSSFFont font = new XSSFFont();
    font.setFontName(own.getFontName());
    // without these a program that lacks the font takes another one for each
    font.setFamily(own.getFamily());
    font.setScheme(own.getScheme());
    font.setFontHeight(own.getFontHeightInPoints() + larger);
    font.setBold(bold);
    if (colour != null) {
      font.setColor(new XSSFColor(colour));
    }
    font.setUnderline(underline);
    return once.font(font);
  }

  /** The number of a format in the workbook's list. */
  public short code(String format) {
    return workbook.createDataFormat().getFormat(format);
  }

  /** Shows a number with so many decimals, thousands parted. */
  public void format(XSSFCellStyle style, int decimals) {
    String code = decimals == 0 ? "#,##0" : "#,##0." + "0".repeat(decimals);
    style.setDataFormat(code(code));
  }

  public static void fill(XSSFCellStyle style, byte[] colour) {
    style.setFillForegroundColor(new XSSFColor(colour));
    style.setFillPattern(FillPatternType.SOLID_FOREGROUND);
  }

  public static void above(XSSFCellStyle style) {
    style.setBorderTop(BorderStyle.THIN);
    style.setTopBorderColor(new XSSFColor(LINE));
  }

  public static void edge(XSSFCellStyle style) {
    XSSFColor line = new XSSFColor(LINE);
    style.setBorderBottom(BorderStyle.THIN);
    style.setBottomBorderColor(line);
    style.setBorderRight(BorderStyle.THIN);
    style.setRightBorderColor(line);
  }

  private static byte[] drawn(byte[] cellColour) {
    return Arrays.copyOfRange(cellColour, 1, cellColour.length);
  }

  /** A colour with the opacity that the schema asks for. */
  private static byte[] rgb(int red, int green, int blue) {
    return new byte[] {(byte) 0xFF, (byte) red, (byte) green, (byte) blue};
  }
}
