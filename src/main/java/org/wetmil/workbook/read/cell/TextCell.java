package org.wetmil.workbook.read.cell;

import java.util.HashMap;
import java.util.Map;
import org.wetmil.estimate.InputColumn;
import org.wetmil.estimate.InputValue;
import org.wetmil.estimate.InputValue.State;
import org.wetmil.measure.DecimalMark;
import org.wetmil.measure.NumberText;
import org.wetmil.measure.Typed;
import org.wetmil.workbook.read.grid.CellText;
import org.wetmil.workbook.stream.CellKind;
import org.wetmil.workbook.stream.RawCell;

/** Reads the cells of columns that hold names and words. */
final class TextCell {
  /** No word for not known is longer; names are mostly longer, and need no reading. */
  private static final int LONGEST_OPEN = 11;

  private final CellText texts;
  private final Map<String, Boolean> known = new HashMap<>();

  TextCell(CellText texts) {
    this.texts = texts;
  }

  InputValue read(InputColumn column, RawCell cell) {
    if (cell.kind() == CellKind.BLANK && cell.formula() != null) {
      return InputValue.fault(
          State.UNREADABLE,
          "=" + cell.formula(),
          "a computed value; open the workbook in the spreadsheet program and save it once");
    }
    String shown = texts.shown(cell).strip();
    if (shown.isEmpty()) {
      return InputValue.NOTHING;
    }
    if (isOpen(column) && isNotKnown(shown)) {
      return InputValue.open(shown);
    }
    if (cell.kind() == CellKind.ERROR) {
      return InputValue.fault(State.FORMULA_ERROR, shown, "a word");
    }
    if (column == InputColumn.TIP) {
      return tip(cell, shown);
    }
    // the number of a day is not what is meant
    return texts.isDate(cell)
        ? InputValue.text(shown)
        : InputValue.text(shown, CellText.number(cell));
  }

  /** Of a tip no format is to be seen: 517 shown as 517.00 is 517. */
  private InputValue tip(RawCell cell, String shown) {
    if (texts.isDate(cell)) {
      return InputValue.fault(State.DATE, shown, "a tip code such as 517");
    }
    if (cell.kind() == CellKind.NUMBER) {
      double number = CellText.number(cell);
      return number == 0 ? InputValue.NOTHING : InputValue.text(texts.exact(cell));
    }
    return InputValue.text(shown);
  }

  /** Columns in which a dash or n/a says that nothing is known yet. */
  private static boolean isOpen(InputColumn column) {
    return column != InputColumn.ROOM && column != InputColumn.NOTES;
  }

  private boolean isNotKnown(String text) {
    return text.length() <= LONGEST_OPEN && known.computeIfAbsent(text, TextCell::readsAsOpen);
  }

  private static boolean readsAsOpen(String text) {
    return NumberText.read(text, DecimalMark.UNKNOWN) instanceof Typed.NotKnown;
  }
}
