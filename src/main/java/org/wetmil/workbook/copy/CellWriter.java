package org.wetmil.workbook.copy;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import org.wetmil.workbook.copy.CellContent.Formula;
import org.wetmil.workbook.copy.CellContent.Num;
import org.wetmil.workbook.copy.CellContent.Text;
import org.wetmil.workbook.copy.CellContent.Value;
import org.wetmil.workbook.opc.XmlOut;
import org.wetmil.workbook.opc.Xstring;
import org.wetmil.workbook.stream.CellAddress;

/**
 * Writes our cells into a row: &lt;c r="B12" s="3" t="str"&gt;&lt;f&gt;A12&lt;/f&gt;&lt;v&gt;a
 * text&lt;/v&gt;&lt;/c&gt;. A text is kept in its cell, so that the estimator's table of shared
 * strings is left alone.
 */
final class CellWriter {
  /** Up to here every whole number is exact and its digits are written without an exponent. */
  private static final double MAX_WHOLE = 1e15;

  private static final byte[] TEXT = bytes("\" t=\"str\">");
  private static final byte[] OTHER = bytes("\">");

  private final XmlOut out;
  private final String cell;
  private final byte[] cellEnd;
  private final Tag formula;
  private final Tag value;

  /** The start of a cell of each column, and its style; the same for all rows. */
  private byte[][] starts = new byte[64][];

  private final Map<Integer, byte[]> styles = new HashMap<>();
  private int row = -1;
  private byte[] digits;

  /** The markup around the text of an element. */
  private static final class Tag {
    private final byte[] start;
    private final byte[] startPreserved;
    private final byte[] end;

    Tag(String name) {
      start = bytes("<" + name + ">");
      startPreserved = bytes("<" + name + " xml:space=\"preserve\">");
      end = bytes("</" + name + ">");
    }
  }

  private static byte[] bytes(String markup) {
    return markup.getBytes(StandardCharsets.UTF_8);
  }

  /**
   * Writes where a prefix is bound to the namespace of sheets.
   *
   * @param prefix "" when that namespace is the default
   */
  CellWriter(XmlOut out, String prefix) {
    this.out = out;
    String lead = prefix.isEmpty() ? "" : prefix + ":";
    cell = "<" + lead + "c r=\"";
    cellEnd = bytes("</" + lead + "c>");
    formula = new Tag(lead + "f");
    value = new Tag(lead + "v");
  }

  void write(int inRow, AddedCell added) {
    if (row != inRow) {
      row = inRow;
      digits = bytes(Integer.toString(inRow + 1));
    }
    out.markup(start(added.column()));
    out.markup(digits);
    if (added.style() != 0) {
      out.markup(style(added.style()));
    }
    Value stored = stored(added.content());
    out.markup(stored instanceof Text ? TEXT : OTHER);
    if (added.content() instanceof Formula live) {
      element(formula, live.formula());
    }
    if (stored instanceof Text text) {
      element(value, text.value());
    } else if (stored instanceof Num number) {
      out.markup(value.start);
      out.markup(number(number.value()));
      out.markup(value.end);
    }
    out.markup(cellEnd);
  }

  private byte[] start(int column) {
    if (column >= starts.length) {
      starts = Arrays.copyOf(starts, Math.max(column + 1, 2 * starts.length));
    }
    if (starts[column] == null) {
      starts[column] = bytes(cell + CellAddress.letters(column));
    }
    return starts[column];
  }

  private byte[] style(int style) {
    byte[] known = styles.get(style);
    if (known == null) {
      known = bytes("\" s=\"" + style);
      styles.put(style, known);
    }
    return known;
  }

  private static Value stored(CellContent content) {
    if (content instanceof Formula formula) {
      return formula.cached();
    }
    return content instanceof Value value ? value : null;
  }

  private void element(Tag tag, String text) {
    out.markup(isTrimmedByReaders(text) ? tag.startPreserved : tag.start);
    out.text(Xstring.encode(text));
    out.markup(tag.end);
  }

  private static boolean isTrimmedByReaders(String text) {
    return !text.isEmpty()
        && (text.charAt(0) <= ' '
            || text.charAt(text.length() - 1) <= ' '
            || text.indexOf('\n') >= 0);
  }

  private static String number(double number) {
    boolean whole = Math.abs(number) < MAX_WHOLE && number == Math.rint(number);
    return whole ? Long.toString((long) number) : Double.toString(number);
  }
}
