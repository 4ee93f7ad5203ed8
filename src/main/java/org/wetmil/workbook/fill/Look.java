package org.wetmil.workbook.fill;

import java.util.HashMap;
import java.util.Map;
import java.util.function.Consumer;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.Font;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * The look of everything that Wetmil writes: ink on paper, one dark tone for headings and one pale
 * tone for what is filled, both far enough apart to read in grey. Each style is made once.
 */
public final class Look {
  private static final byte[] SLATE = rgb(0x2B, 0x3A, 0x42);
  private static final byte[] MIST = rgb(0xEC, 0xF1, 0xF2);
  private static final byte[] LINE = rgb(0xB8, 0xC4, 0xC8);
  private static final byte[] WHITE = rgb(0xFF, 0xFF, 0xFF);

  private final XSSFWorkbook workbook;
  private final StylesOnce styles;
  private final Map<String, XSSFCellStyle> made = new HashMap<>();

  public Look(XSSFWorkbook workbook) {
    this.workbook = workbook;
    DefaultStyles.ensure(workbook);
    this.styles = new StylesOnce(workbook);
  }

  /** The heading of a column that Wetmil fills or of a list. */
  public XSSFCellStyle heading() {
    return style(
        "heading",
        style -> {
          style.setFont(font(true, 0, WHITE));
          fill(style, SLATE);
          style.setWrapText(true);
          style.setVerticalAlignment(VerticalAlignment.BOTTOM);
          edge(style);
        });
  }

  /** The heading of a column that the estimator fills: ink on paper over a firm line. */
  public XSSFCellStyle asked() {
    return style(
        "asked",
        style -> {
          style.setFont(font(true, 0, SLATE));
          style.setWrapText(true);
          style.setVerticalAlignment(VerticalAlignment.BOTTOM);
          style.setBorderBottom(BorderStyle.MEDIUM);
          style.setBottomBorderColor(new XSSFColor(SLATE));
        });
  }

  /** A cell left for the estimator: paper, ruled. */
  public XSSFCellStyle blank(boolean asText) {
    return style(
        "blank " + asText,
        style -> {
          style.setVerticalAlignment(VerticalAlignment.TOP);
          edge(style);
          if (asText) {
            style.setDataFormat(workbook.createDataFormat().getFormat("@"));
          }
        });
  }

  /** The heading of a table on a page, which may run over several cells. */
  public XSSFCellStyle band(boolean right) {
    return style(
        "band " + right,
        style -> {
          style.setFont(font(true, 0, WHITE));
          fill(style, SLATE);
          style.setAlignment(right ? HorizontalAlignment.RIGHT : HorizontalAlignment.LEFT);
        });
  }

  /** A figure that is asked for first. */
  XSSFCellStyle figure(int decimals) {
    return style(
        "figure " + decimals,
        style -> {
          style.setFont(font(true, 8, SLATE));
          format(style, decimals);
          style.setAlignment(HorizontalAlignment.LEFT);
          style.setVerticalAlignment(VerticalAlignment.CENTER);
        });
  }

  /** The words beside a large figure. */
  XSSFCellStyle figureWords() {
    return style(
        "figure words",
        style -> {
          style.setFont(font(true, 3, null));
          style.setVerticalAlignment(VerticalAlignment.CENTER);
        });
  }

  /** A large amount at the end of a line. */
  XSSFCellStyle figureMoney(int decimals) {
    return style(
        "figure money " + decimals,
        style -> {
          style.setFont(font(true, 8, SLATE));
          format(style, decimals);
          style.setAlignment(HorizontalAlignment.RIGHT);
          style.setVerticalAlignment(VerticalAlignment.CENTER);
        });
  }

  /** The currency of a large amount. */
  XSSFCellStyle figureUnit() {
    return style(
        "figure unit",
        style -> {
          style.setFont(font(true, 3, null));
          style.setAlignment(HorizontalAlignment.RIGHT);
          style.setVerticalAlignment(VerticalAlignment.CENTER);
        });
  }

  /** Words of the first line of a room, parted from the room above. */
  XSSFCellStyle roomText() {
    return style(
        "room text",
        style -> {
          style.setWrapText(true);
          style.setVerticalAlignment(VerticalAlignment.TOP);
          above(style);
        });
  }

  /** A number of the first line of a room. */
  XSSFCellStyle roomNumber(int decimals) {
    return style(
        "room number " + decimals,
        style -> {
          format(style, decimals);
          style.setVerticalAlignment(VerticalAlignment.TOP);
          above(style);
        });
  }

  /** A cell under a line. */
  XSSFCellStyle lineAbove() {
    return style("line above", Look::above);
  }

  /** The unit of the number before it. */
  XSSFCellStyle unit() {
    return style(
        "unit",
        style -> {
          style.setIndention((short) 1);
          style.setAlignment(HorizontalAlignment.LEFT);
          style.setVerticalAlignment(VerticalAlignment.TOP);
        });
  }

  /** A share as a percentage. */
  public XSSFCellStyle percent() {
    return style(
        "percent",
        style -> {
          style.setDataFormat(workbook.createDataFormat().getFormat("0.0%"));
          style.setVerticalAlignment(VerticalAlignment.TOP);
        });
  }

  /** A filled number with so many decimals, on the line where the estimator's own cells stand. */
  public XSSFCellStyle filled(int decimals, boolean choice) {
    return style(
        "filled " + decimals + choice,
        style -> {
          style.setFont(font(choice, 0, null));
          fill(style, MIST);
          format(style, decimals);
          edge(style);
        });
  }

  /** Filled words, on several lines where they are long. */
  public XSSFCellStyle filledText(boolean wrap) {
    return style(
        "filled text " + wrap,
        style -> {
          fill(style, MIST);
          style.setWrapText(wrap);
          if (wrap) {
            style.setAlignment(HorizontalAlignment.LEFT);
            style.setIndention((short) 1);
          }
          edge(style);
        });
  }

  /** The title of a page. */
  public XSSFCellStyle title() {
    return style("title", style -> style.setFont(font(true, 6, SLATE)));
  }

  /** The title of a block on a page. */
  public XSSFCellStyle block() {
    return style(
        "block",
        style -> {
          style.setFont(font(true, 2, SLATE));
          style.setBorderBottom(BorderStyle.MEDIUM);
          style.setBottomBorderColor(new XSSFColor(SLATE));
        });
  }

  /** A word or figure to be read from two metres. */
  XSSFCellStyle poster() {
    return style(
        "poster",
        style -> {
          style.setFont(font(true, 15, null));
          style.setVerticalAlignment(VerticalAlignment.CENTER);
        });
  }

  /**
   * A figure of the crew to be read from two metres: its capitals are 7 mm high and more.
   *
   * @param larger points over the workbook's own font
   */
  XSSFCellStyle farFigure(int larger) {
    return style(
        "far figure " + larger,
        style -> {
          style.setFont(font(true, larger, null));
          style.setAlignment(HorizontalAlignment.LEFT);
          style.setVerticalAlignment(VerticalAlignment.CENTER);
        });
  }

  /** Words and figures to be read at arm's length. */
  XSSFCellStyle large(boolean bold) {
    return style(
        "large " + bold,
        style -> {
          style.setFont(font(bold, 5, null));
          style.setWrapText(true);
          style.setVerticalAlignment(VerticalAlignment.CENTER);
        });
  }

  /** Words beside those, on two lines where they are long. */
  XSSFCellStyle smaller() {
    return style(
        "smaller",
        style -> {
          style.setFont(font(false, 2, null));
          style.setWrapText(true);
          style.setVerticalAlignment(VerticalAlignment.CENTER);
        });
  }

  /** Words to be read while standing. */
  XSSFCellStyle medium(boolean bold) {
    return style(
        "medium " + bold,
        style -> {
          style.setFont(font(bold, 2, null));
          style.setVerticalAlignment(VerticalAlignment.CENTER);
        });
  }

  /** A sentence with a line above and below. */
  XSSFCellStyle boxed() {
    return style(
        "boxed",
        style -> {
          style.setFont(font(false, 2, null));
          style.setWrapText(true);
          style.setVerticalAlignment(VerticalAlignment.CENTER);
          style.setBorderTop(BorderStyle.THIN);
          style.setBorderBottom(BorderStyle.THIN);
        });
  }

  /** Words in a list or on a page. */
  public XSSFCellStyle text(boolean wrap) {
    return style(
        "text " + wrap,
        style -> {
          style.setWrapText(wrap);
          style.setVerticalAlignment(VerticalAlignment.TOP);
        });
  }

  /** Words that follow a number, set off from it. */
  public XSSFCellStyle aside() {
    return style(
        "aside",
        style -> {
          style.setIndention((short) 1);
          style.setVerticalAlignment(VerticalAlignment.TOP);
        });
  }

  /** Words that stand out. */
  public XSSFCellStyle strong() {
    return style(
        "strong",
        style -> {
          style.setFont(font(true, 0, null));
          style.setVerticalAlignment(VerticalAlignment.TOP);
        });
  }

  /** The one sentence of a page that is read first. */
  public XSSFCellStyle strongText() {
    return style(
        "strong text",
        style -> {
          style.setFont(font(true, 0, null));
          style.setWrapText(true);
          style.setVerticalAlignment(VerticalAlignment.TOP);
        });
  }

  /** A number in a list or on a page. */
  public XSSFCellStyle number(int decimals) {
    return style(
        "number " + decimals,
        style -> {
          format(style, decimals);
          style.setVerticalAlignment(VerticalAlignment.TOP);
        });
  }

  /** A number that stands out, as a total does. */
  public XSSFCellStyle strongNumber(int decimals) {
    return style(
        "strong number " + decimals,
        style -> {
          style.setFont(font(true, 0, null));
          format(style, decimals);
          style.setVerticalAlignment(VerticalAlignment.TOP);
        });
  }

  /** A whole number that was chosen and follows nothing. */
  XSSFCellStyle choice() {
    return strongNumber(0);
  }

  /** A number shown as it is, without rounding what is seen. */
  public XSSFCellStyle plain() {
    return style(
        "plain",
        style -> {
          style.setAlignment(HorizontalAlignment.RIGHT);
          style.setVerticalAlignment(VerticalAlignment.TOP);
        });
  }

  /** Text that does not run over into the columns beside it. */
  XSSFCellStyle cut() {
    return style("cut", style -> style.setAlignment(HorizontalAlignment.FILL));
  }

  /** A number or word of a column in which both stand. */
  public XSSFCellStyle atLeft() {
    return style(
        "at left",
        style -> {
          style.setAlignment(HorizontalAlignment.LEFT);
          style.setVerticalAlignment(VerticalAlignment.TOP);
        });
  }

  /** A number of which nothing is shown as a dash, so that the others stand out. */
  public XSSFCellStyle sparse(int decimals) {
    return style(
        "sparse " + decimals,
        style -> {
          String code = "#,##0" + (decimals == 0 ? "" : "." + "0".repeat(decimals));
          style.setDataFormat(workbook.createDataFormat().getFormat(code + ";-" + code + ";\"–\""));
          style.setVerticalAlignment(VerticalAlignment.TOP);
          style.setAlignment(HorizontalAlignment.RIGHT);
        });
  }

  /** Words that stand to the right of a number. */
  public XSSFCellStyle apart(boolean wrap) {
    return style(
        "apart " + wrap,
        style -> {
          style.setWrapText(wrap);
          style.setAlignment(HorizontalAlignment.LEFT);
          style.setIndention((short) 1);
          style.setVerticalAlignment(VerticalAlignment.TOP);
        });
  }

  /** A day, written so that every country reads it alike. */
  public XSSFCellStyle date() {
    return style(
        "date",
        style -> {
          style.setDataFormat(workbook.createDataFormat().getFormat("yyyy-mm-dd"));
          style.setAlignment(HorizontalAlignment.LEFT);
          style.setVerticalAlignment(VerticalAlignment.TOP);
        });
  }

  /** A link to another cell. */
  public XSSFCellStyle link() {
    return style(
        "link",
        style -> {
          style.setFont(font(false, 0, SLATE, Font.U_SINGLE));
          style.setVerticalAlignment(VerticalAlignment.TOP);
        });
  }

  private XSSFCellStyle style(String name, Consumer<XSSFCellStyle> shape) {
    return made.computeIfAbsent(
        name,
        key -> {
          XSSFCellStyle style = styles.draft();
          // said outright, since a program may take a font of its own for what is not said
          style.setFont(workbook.getFontAt(0));
          shape.accept(style);
          return styles.style(style);
        });
  }

  /** The workbook's own font, larger by so many points. */
  private XSSFFont font(boolean bold, int larger, byte[] colour) {
    return font(bold, larger, colour, Font.U_NONE);
  }

  private XSSFFont font(boolean bold, int larger, byte[] colour, byte underline) {
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
    return styles.font(font);
  }

  private void format(XSSFCellStyle style, int decimals) {
    String code = decimals == 0 ? "#,##0" : "#,##0." + "0".repeat(decimals);
    style.setDataFormat(workbook.createDataFormat().getFormat(code));
  }

  private static void fill(XSSFCellStyle style, byte[] colour) {
    style.setFillForegroundColor(new XSSFColor(colour));
    style.setFillPattern(FillPatternType.SOLID_FOREGROUND);
  }

  private static void above(XSSFCellStyle style) {
    style.setBorderTop(BorderStyle.THIN);
    style.setTopBorderColor(new XSSFColor(LINE));
  }

  private static void edge(XSSFCellStyle style) {
    XSSFColor line = new XSSFColor(LINE);
    style.setBorderBottom(BorderStyle.THIN);
    style.setBottomBorderColor(line);
    style.setBorderRight(BorderStyle.THIN);
    style.setRightBorderColor(line);
  }

  /** A colour with the opacity that the schema asks for. */
  private static byte[] rgb(int red, int green, int blue) {
    return new byte[] {(byte) 0xFF, (byte) red, (byte) green, (byte) blue};
  }
}
