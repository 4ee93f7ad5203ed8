package org.wetmil.workbook.copy;

import java.util.BitSet;
import java.util.List;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.wetmil.workbook.opc.XmlIn;
import org.wetmil.workbook.opc.XmlOut;
import org.wetmil.workbook.stream.CellAddress;
import org.wetmil.workbook.stream.CellCursor;
import org.wetmil.workbook.stream.RawCell;
import org.wetmil.workbook.stream.StoredCells;

/** Copies the rows of a sheet, leaving cells out and adding ours in the order of the columns. */
final class RowSplice {
  private final SheetEdit edit;
  private final StoredCells stored;
  private final XmlOut out;
  private final CellWriter cells;
  private final CellCursor cursor = new CellCursor();
  private final BitSet asked = new BitSet();

  /**
   * @param stored reads the cells that ours take the place of
   */
  RowSplice(SheetEdit edit, StoredCells stored, XmlOut out, String prefix) {
    this.edit = edit;
    this.stored = stored;
    this.out = out;
    this.cells = new CellWriter(out, prefix);
  }

  /** Copies the content of the element of all rows, whose start was copied, and ends it. */
  void rows(XMLStreamReader at) throws XMLStreamException {
    while (at.next() != XMLStreamConstants.END_ELEMENT) {
      if (at.isStartElement() && at.getLocalName().equals("row")) {
        row(at);
      } else if (at.isStartElement()) {
        out.element(at);
      } else {
        out.event(at);
      }
    }
    out.end();
  }

  private void row(XMLStreamReader at) throws XMLStreamException {
    int row = cursor.toRow(at);
    List<AddedCell> added = additions(row);
    startRow(at, added, edit.additions().heightPt(row));
    int next = 0;
    while (at.next() != XMLStreamConstants.END_ELEMENT) {
      if (!at.isStartElement()) {
        out.event(at);
      } else if (at.getLocalName().equals("c")) {
        int column = cursor.toCell(at);
        next = write(row, added, next, column);
        boolean ours = next < added.size() && added.get(next).column() == column;
        if (edit.dropped().test(row, column)) {
          XmlIn.skip(at);
        } else if (ours) {
          requireEmpty(stored.read(at, row, column));
        } else {
          cell(at);
        }
      } else {
        next = write(row, added, next, CellAddress.MAX_COLUMNS);
        out.element(at);
      }
    }
    write(row, added, next, CellAddress.MAX_COLUMNS);
    out.end();
  }

  private List<AddedCell> additions(int row) {
    if (asked.get(row)) {
      // A broken workbook can have a row twice; our cells go into the first.
      return List.of();
    }
    asked.set(row);
    List<AddedCell> added = edit.additions().forRow(row);
    for (int i = 1; i < added.size(); i++) {
      if (added.get(i - 1).column() >= added.get(i).column()) {
        throw new IllegalArgumentException("the cells added to row " + (row + 1) + " lack order");
      }
    }
    return added;
  }

  private void startRow(XMLStreamReader at, List<AddedCell> added, double heightPt)
      throws XMLStreamException {
    out.startName(at);
    boolean grows = heightPt > 0 && isFitted(at) && heightPt > storedHeightPt(at);
    if (grows) {
      out.attribute("ht", Double.toString(heightPt));
    }
    for (int i = 0; i < at.getAttributeCount(); i++) {
      if (grows && at.getAttributeLocalName(i).equals("ht")) {
        continue;
      }
      if (!added.isEmpty() && at.getAttributeLocalName(i).equals("spans")) {
        out.attribute("spans", widened(at.getAttributeValue(i), added));
      } else {
        out.attribute(at, i);
      }
    }
  }

  /** Whether the height follows the content, rather than being set or hidden. */
  private static boolean isFitted(XMLStreamReader at) {
    String set = XmlIn.attribute(at, "customHeight");
    String hidden = XmlIn.attribute(at, "hidden");
    return !isTrue(set) && !isTrue(hidden);
  }

  private static boolean isTrue(String value) {
    return value != null && (value.equals("1") || value.equals("true"));
  }

  private static double storedHeightPt(XMLStreamReader at) throws XMLStreamException {
    String height = XmlIn.attribute(at, "ht");
    try {
      return height == null ? 0 : Double.parseDouble(height);
    } catch (NumberFormatException e) {
      throw new XMLStreamException("a row is \"" + height + "\" high", e);
    }
  }

  /** The columns that a row uses, such as 1:14, counted from 1; a hint for the reader's speed. */
  private static String widened(String spans, List<AddedCell> added) throws XMLStreamException {
    int from = added.get(0).column() + 1;
    int to = added.get(added.size() - 1).column() + 1;
    for (String each : spans.trim().split("[ :]+", -1)) {
      try {
        from = Math.min(from, Integer.parseInt(each));
        to = Math.max(to, Integer.parseInt(each));
      } catch (NumberFormatException e) {
        throw new XMLStreamException("a row spans \"" + spans + "\"", e);
      }
    }
    return from + ":" + to;
  }

  /** Writes our cells left of a column; gives the index of the next one to write. */
  private int write(int row, List<AddedCell> added, int from, int column) {
    int next = from;
    while (next < added.size() && added.get(next).column() < column) {
      cells.write(row, added.get(next));
      next++;
    }
    return next;
  }

  private void cell(XMLStreamReader at) throws XMLStreamException {
    out.startName(at);
    if (XmlIn.attribute(at, "r") == null) {
      // Its place followed from the cell before it, which may be another now.
      out.attribute("r", cursor.address().toString());
    }
    for (int i = 0; i < at.getAttributeCount(); i++) {
      out.attribute(at, i);
    }
    out.content(at);
  }

  /** Ours may take the place of a cell that has nothing but a format and spaces. */
  private void requireEmpty(RawCell cell) {
    if (!cell.isEmpty()) {
      throw new IllegalStateException(
          "a cell of the original would be lost: " + edit.sheet() + "!" + cursor.address());
    }
  }
}
