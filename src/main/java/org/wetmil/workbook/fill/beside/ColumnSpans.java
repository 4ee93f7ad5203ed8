package org.wetmil.workbook.fill.beside;

import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTCol;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTCols;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTSheetFormatPr;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTWorksheet;

/**
 * Widths and outline of the columns of a sheet, which the file tells of spans of columns. Each
 * column is told of once: the library's own grouping tells of some twice, and a spreadsheet program
 * takes such a sheet for damaged.
 */
public final class ColumnSpans {
  private final CTWorksheet sheet;
  private final CTCols spans;

  public ColumnSpans(XSSFSheet sheet) {
    this.sheet = sheet.getCTWorksheet();
    this.spans =
        this.sheet.sizeOfColsArray() == 0 ? this.sheet.addNewCols() : this.sheet.getColsArray(0);
  }

  /** Sets the width of a column, from 0, in characters. */
  void widen(int column, int characters) {
    CTCol span = only(column);
    span.setWidth(characters);
    span.setCustomWidth(true);
  }

  /** Folds columns away under a sign on the column after them. */
  void fold(int first, int last) {
    for (int column = first; column <= last; column++) {
      CTCol span = only(column);
      span.setOutlineLevel((short) 1);
      span.setHidden(true);
    }
    only(last + 1).setCollapsed(true);
    CTSheetFormatPr format =
        sheet.isSetSheetFormatPr() ? sheet.getSheetFormatPr() : sheet.addNewSheetFormatPr();
    format.setOutlineLevelCol((short) Math.max(1, format.getOutlineLevelCol()));
  }

  /** Takes width and outline away from columns; a format of the whole column stays. */
  public void clear(int first, int last) {
    for (int column = first; column <= last; column++) {
      CTCol before = only(column);
      CTCol bare = CTCol.Factory.newInstance();
      bare.setMin(before.getMin());
      bare.setMax(before.getMax());
      if (before.isSetStyle()) {
        bare.setStyle(before.getStyle());
        before.set(bare);
      } else {
        spans.removeCol(spanAt(column + 1L));
      }
    }
    int after = spanAt(last + 2L);
    if (holds(after, last + 2L) && spans.getColArray(after).isSetCollapsed()) {
      only(last + 1).unsetCollapsed();
    }
  }

  /** The first span that ends at or after a column, from 1. */
  private int spanAt(long at) {
    int index = 0;
    while (index < spans.sizeOfColArray() && spans.getColArray(index).getMax() < at) {
      index++;
    }
    return index;
  }

  private boolean holds(int index, long at) {
    return index < spans.sizeOfColArray() && spans.getColArray(index).getMin() <= at;
  }

  /** The span of one column alone, parted from its neighbours. */
  private CTCol only(int column) {
    long at = column + 1L;
    int index = spanAt(at);
    if (!holds(index, at)) {
      CTCol span = spans.insertNewCol(index);
      span.setMin(at);
      span.setMax(at);
      return span;
    }
    if (spans.getColArray(index).getMin() < at) {
      copy(index).setMax(at - 1);
      index++;
      spans.getColArray(index).setMin(at);
    }
    if (spans.getColArray(index).getMax() > at) {
      copy(index).setMax(at);
      spans.getColArray(index + 1).setMin(at + 1);
    }
    return spans.getColArray(index);
  }

  /** Puts a copy of a span before it. */
  private CTCol copy(int index) {
    CTCol copy = spans.insertNewCol(index);
    copy.set(spans.getColArray(index + 1));
    return copy;
  }
}
