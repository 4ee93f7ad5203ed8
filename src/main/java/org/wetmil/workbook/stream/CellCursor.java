package org.wetmil.workbook.stream;

import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.wetmil.workbook.opc.XmlIn;

/**
 * Where we are while a sheet is streamed. The addresses of rows and cells are optional in the file
 * format: one without follows the one before it.
 */
public final class CellCursor {
  private int row = -1;
  private int column = -1;

  /** Goes to the row whose start the reader stands at; gives its number counted from 0. */
  public int toRow(XMLStreamReader at) throws XMLStreamException {
    row = XmlIn.whole(at, "r", row + 2) - 1;
    column = -1;
    if (row < 0 || row >= CellAddress.MAX_ROWS) {
      throw new XMLStreamException("row " + (row + 1) + " is outside the sheet");
    }
    return row;
  }

  /** Goes to the cell whose start the reader stands at; gives its column counted from 0. */
  public int toCell(XMLStreamReader at) throws XMLStreamException {
    String reference = XmlIn.attribute(at, "r");
    if (reference == null) {
      column++;
      if (column >= CellAddress.MAX_COLUMNS) {
        throw new XMLStreamException("row " + (row + 1) + " has too many cells");
      }
      return column;
    }
    CellAddress address = CellAddress.find(reference).orElse(null);
    if (address == null) {
      throw new XMLStreamException("cell \"" + reference + "\" is no address");
    }
    if (address.row() != row) {
      throw new XMLStreamException("cell " + reference + " stands in row " + (row + 1));
    }
    column = address.column();
    return column;
  }

  /** Where the cursor is. */
  public CellAddress address() {
    return new CellAddress(row, column);
  }
}
