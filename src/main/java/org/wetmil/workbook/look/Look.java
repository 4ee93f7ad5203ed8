package org.wetmil.workbook.look;

import java.math.BigDecimal;
import java.math.MathContext;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.Font;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * The look of everything that Wetmil writes: ink on paper, one dark tone for headings and one pale
 * tone for what is filled, both far enough apart to read in grey. Each style is made once.
 */
public final class Look {
  /** Digits of a figure that has more. */
  private static final MathContext SHOWN = new MathContext(6);

  private final Styles styles;

  public Look(XSSFWorkbook workbook) {
    this.styles = new Styles(workbook);
  }

  /** For a page whose styles nobody else needs. */
  public Styles styles() {
    return styles;
  }

  /** The heading of a column that Wetmil fills or of a list. */
  public XSSFCellStyle heading() {
    return styles.style(
        "heading",
        style -> {
          style.setFont(styles.font(true, 0, Styles.WHITE));
          Styles.fill(style, Styles.SLATE);
          style.setWrapText(true);
          style.setVerticalAlignment(VerticalAlignment.BOTTOM);
          Styles.edge(style);
        });
  }

  /** The heading of a column that the estimator fills: ink on paper over a firm line. */
  public XSSFCellStyle asked() {
    return styles.style(
        "asked",
        style -> {
          style.setFont(styles.font(true, 0, Styles.SLATE));
          style.setWrapText(true);
          style.setVerticalAlignment(VerticalAlignment.BOTTOM);
          style.setBorderBottom(BorderStyle.MEDIUM);
          style.setBottomBorderColor(new XSSFColor(Styles.SLATE));
        });
  }

  /** A cell left for the estimator: paper, ruled. */
  public XSSFCellStyle blank(boolean asText) {
    return styles.style(
        "blank " + asText,
        style -> {
          style.setVerticalAlignment(VerticalAlignment.TOP);
          Styles.edge(style);
          if (asText) {
            style.setDataFormat(styles.code("@"));
          }
        });
  }

  /** The heading of a table on a page, which may run over several cells. */
  public XSSFCellStyle band(boolean right) {
    return styles.style(
        "band " + right,
        style -> {
          style.setFont(styles.font(true, 0, Styles.WHITE));
          Styles.fill(style, Styles.SLATE);
          style.setAlignment(right ? HorizontalAlignment.RIGHT : HorizontalAlignment.LEFT);
        });
  }

  /** A figure that is asked for first. */
  public XSSFCellStyle figure(int decimals) {
    return styles.style(
        "figure " + decimals,
        style -> {
          style.setFont(styles.font(true, 8, Styles.SLATE));
          styles.format(style, decimals);
          style.setAlignment(HorizontalAlignment.LEFT);
          style.setVerticalAlignment(VerticalAlignment.CENTER);
        });
  }

  /** The unit of the number before it. */
  public XSSFCellStyle unit() {
    return styles.style(
        "unit",
        style -> {
          style.setIndention((short) 1);
          style.setAlignment(HorizontalAlignment.LEFT);
          style.setVerticalAlignment(VerticalAlignment.TOP);
        });
  }

  /** A share as a percentage. */
  public XSSFCellStyle percent() {
    return styles.style(
        "percent",
        style -> {
          style.setDataFormat(styles.code("0.0%"));
          style.setVerticalAlignment(VerticalAlignment.TOP);
        });
  }

  /** A filled number with so many decimals, on the line where the estimator's own cells stand. */
  public XSSFCellStyle filled(int decimals, boolean choice) {
    return styles.style(
        "filled " + decimals + choice,
        style -> {
          style.setFont(styles.font(choice, 0, null));
          Styles.fill(style, Styles.MIST);
          styles.format(style, decimals);
          Styles.edge(style);
        });
  }

  /** Filled words, on several lines where they are long. */
  public XSSFCellStyle filledText(boolean wrap) {
    return styles.style(
        "filled text " + wrap,
        style -> {
          Styles.fill(style, Styles.MIST);
          style.setWrapText(wrap);
          if (wrap) {
            style.setAlignment(HorizontalAlignment.LEFT);
            style.setIndention((short) 1);
          }
          Styles.edge(style);
        });
  }

  /** The title of a page. */
  public XSSFCellStyle title() {
    return styles.style("title", style -> style.setFont(styles.font(true, 6, Styles.SLATE)));
  }

  /** The title of a block on a page. */
  public XSSFCellStyle block() {
    return styles.style(
        "block",
        style -> {
          style.setFont(styles.font(true, 2, Styles.SLATE));
          style.setBorderBottom(BorderStyle.MEDIUM);
          style.setBottomBorderColor(new XSSFColor(Styles.SLATE));
        });
  }

  /** Words in a list or on a page. */
  public XSSFCellStyle text(boolean wrap) {
    return styles.style(
        "text " + wrap,
        style -> {
          style.setWrapText(wrap);
          style.setVerticalAlignment(VerticalAlignment.TOP);
        });
  }

  /** Words that follow a number, set off from it. */
  public XSSFCellStyle aside() {
    return styles.style(
        "aside",
        style -> {
          style.setIndention((short) 1);
          style.setVerticalAlignment(VerticalAlignment.TOP);
        });
  }

  /** Words that stand out. */
  public XSSFCellStyle strong() {
    return styles.style(
        "strong",
        style -> {
          style.setFont(styles.font(true, 0, null));
          style.setVerticalAlignment(VerticalAlignment.TOP);
        });
  }

  /** The one sentence of a page that is read first. */
  public XSSFCellStyle strongText() {
    return styles.style(
        "strong text",
        style -> {
          style.setFont(styles.font(true, 0, null));
          style.setWrapText(true);
          style.setVerticalAlignment(VerticalAlignment.TOP);
        });
  }

  /** A number in a list or on a page. */
  public XSSFCellStyle number(int decimals) {
    return styles.style(
        "number " + decimals,
        style -> {
          styles.format(style, decimals);
          style.setVerticalAlignment(VerticalAlignment.TOP);
        });
  }

  /** A number that stands out, as a total does. */
  public XSSFCellStyle strongNumber(int decimals) {
    return styles.style(
        "strong number " + decimals,
        style -> {
          style.setFont(styles.font(true, 0, null));
          styles.format(style, decimals);
          style.setVerticalAlignment(VerticalAlignment.TOP);
        });
  }

  /** A whole number that was chosen and follows nothing. */
  public XSSFCellStyle choice() {
    return strongNumber(0);
  }

  /** A number shown as it is, without rounding what is seen. */
  public XSSFCellStyle plain() {
    return styles.style(
        "plain",
        style -> {
          style.setAlignment(HorizontalAlignment.RIGHT);
          style.setVerticalAlignment(VerticalAlignment.TOP);
        });
  }

  /** A number as it is where its digits are few; six of them are shown of one that has more. */
  public XSSFCellStyle shortened(double value) {
    BigDecimal exact = BigDecimal.valueOf(value);
    BigDecimal shown = exact.round(SHOWN).stripTrailingZeros();
    if (shown.compareTo(exact) == 0) {
      return plain();
    }
    boolean tiny = Math.abs(value) < 1e-4;
    int decimals = tiny ? SHOWN.getPrecision() - 1 : Math.max(0, shown.scale());
    String code = "0" + (decimals == 0 ? "" : "." + "0".repeat(decimals)) + (tiny ? "E+00" : "");
    return styles.style(
        "shortened " + code,
        style -> {
          style.setDataFormat(styles.code(code));
          style.setAlignment(HorizontalAlignment.RIGHT);
          style.setVerticalAlignment(VerticalAlignment.TOP);
        });
  }

  /** Text that does not run over into the columns beside it. */
  public XSSFCellStyle cut() {
    return styles.style("cut", style -> style.setAlignment(HorizontalAlignment.FILL));
  }

  /** A number or word of a column in which both stand. */
  public XSSFCellStyle atLeft() {
    return styles.style(
        "at left",
        style -> {
          style.setAlignment(HorizontalAlignment.LEFT);
          style.setVerticalAlignment(VerticalAlignment.TOP);
        });
  }

  /** A number of which nothing is shown as a dash, so that the others stand out. */
  public XSSFCellStyle sparse(int decimals) {
    return styles.style(
        "sparse " + decimals,
        style -> {
          String code = "#,##0" + (decimals == 0 ? "" : "." + "0".repeat(decimals));
          style.setDataFormat(styles.code(code + ";-" + code + ";\"–\""));
          style.setVerticalAlignment(VerticalAlignment.TOP);
          style.setAlignment(HorizontalAlignment.RIGHT);
        });
  }

  /** Words that stand to the right of a number. */
  public XSSFCellStyle apart(boolean wrap) {
    return styles.style(
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
    return styles.style(
        "date",
        style -> {
          style.setDataFormat(styles.code("yyyy-mm-dd"));
          style.setAlignment(HorizontalAlignment.LEFT);
          style.setVerticalAlignment(VerticalAlignment.TOP);
        });
  }

  /** A link to another cell. */
  public XSSFCellStyle link() {
    return styles.style(
        "link",
        style -> {
          style.setFont(styles.font(false, 0, Styles.SLATE, Font.U_SINGLE));
          style.setWrapText(true);
          style.setVerticalAlignment(VerticalAlignment.TOP);
        });
  }
}
