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
  private final String is;
  private final String t;

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
    is = lead + "is";
    t = lead + "t";
  }

  void write(int row, AddedCell cell) {
    out.start(c);
    out.attribute("r", new CellAddress(row, cell.column()).toString());
    if (cell.style() != 0) {
      out.attribute("s", Integer.toString(cell.style()));
    }
    CellContent content = cell.content();
    if (content instanceof Formula formula) {
      if (formula.cached() instanceof Text) {
        out.attribute("t", "str");
      }
      element(f, Xstring.encode(formula.formula()));
      element(v, stored(formula.cached()));
    } else if (content instanceof Text text) {
      // Inline, so that the estimator's table of shared strings is left alone.
      out.attribute("t", "inlineStr");
      out.start(is);
      element(t, stored(text));
      out.end();
    } else if (content instanceof Num number) {
      element(v, stored(number));
    }
    out.end();
  }

  private void element(String name, String text) {
    out.start(name);
    if (!text.equals(text.strip()) || name.equals(t)) {
      out.attribute("xml:space", "preserve");
    }
    out.text(text);
    out.end();
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
