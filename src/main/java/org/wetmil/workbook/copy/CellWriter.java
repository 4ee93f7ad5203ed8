package org.wetmil.workbook.copy;

import org.wetmil.workbook.copy.CellContent.Formula;
import org.wetmil.workbook.copy.CellContent.Num;
import org.wetmil.workbook.copy.CellContent.Text;
import org.wetmil.workbook.copy.CellContent.Value;
import org.wetmil.workbook.opc.XmlOut;
import org.wetmil.workbook.opc.Xstring;
import org.wetmil.workbook.stream.CellAddress;

/** Writes our cells into a row. */
final class CellWriter {
  /** Up to here every whole number is exact and its digits are written without an exponent. */
  private static final double MAX_WHOLE = 1e15;

  private final XmlOut out;
  private final String c;
  private final String f;
  private final String v;

  /**
   * Writes where a prefix is bound to the namespace of sheets.
   *
   * @param prefix "" when that namespace is the default
   */
  CellWriter(XmlOut out, String prefix) {
    this.out = out;
    String lead = prefix.isEmpty() ? "" : prefix + ":";
    c = lead + "c";
    f = lead + "f";
    v = lead + "v";
  }

  void write(int row, AddedCell cell) {
    out.start(c);
    out.attribute("r", CellAddress.letters(cell.column()) + (row + 1));
    if (cell.style() != 0) {
      out.attribute("s", Integer.toString(cell.style()));
    }
    CellContent content = cell.content();
    Value value =
        content instanceof Formula formula
            ? formula.cached()
            : content instanceof Value plain ? plain : null;
    if (value instanceof Text) {
      // In the cell itself, so that the estimator's table of shared strings is left alone.
      out.attribute("t", "str");
    }
    if (content instanceof Formula formula) {
      element(f, Xstring.encode(formula.formula()));
    }
    if (value != null) {
      element(v, stored(value));
    }
    out.end();
  }

  private void element(String name, String text) {
    out.start(name);
    if (isTrimmedByReaders(text)) {
      out.attribute("xml:space", "preserve");
    }
    out.text(text);
    out.end();
  }

  private static boolean isTrimmedByReaders(String text) {
    return !text.isEmpty()
        && (text.charAt(0) <= ' '
            || text.charAt(text.length() - 1) <= ' '
            || text.indexOf('\n') >= 0);
  }

  private static String stored(Value value) {
    if (value instanceof Text text) {
      return Xstring.encode(text.value());
    }
    double number = ((Num) value).value();
    boolean whole = Math.abs(number) < MAX_WHOLE && number == Math.rint(number);
    return whole ? Long.toString((long) number) : Double.toString(number);
  }
}
