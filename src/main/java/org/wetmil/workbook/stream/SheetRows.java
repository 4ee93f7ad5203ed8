package org.wetmil.workbook.stream;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.wetmil.workbook.opc.XmlIn;

/** Streams the rows of one worksheet part. */
final class SheetRows {
  private final StoredCells stored;
  private final CellCursor cursor = new CellCursor();

  SheetRows(StoredCells stored) {
    this.stored = stored;
  }

  /**
   * Gives every row to the consumer; the reader stands at the root of the sheet.
   *
   * @return what stands beside the rows; of it nothing that follows a row which was enough
   */
  SheetRanges read(XMLStreamReader at, RowConsumer consumer) throws XMLStreamException {
    List<CellRange> merged = new ArrayList<>();
    Optional<CellRange> autoFilter = Optional.empty();
    boolean more = true;
    while (more && XmlIn.nextChild(at)) {
      switch (at.getLocalName()) {
        case "sheetData" -> more = rows(at, consumer);
        case "mergeCells" -> {
          while (XmlIn.nextChild(at)) {
            reference(at).ifPresent(merged::add);
            XmlIn.skip(at);
          }
        }
        case "autoFilter" -> {
          autoFilter = reference(at);
          XmlIn.skip(at);
        }
        default -> XmlIn.skip(at);
      }
    }
    return new SheetRanges(merged, autoFilter);
  }

  private static Optional<CellRange> reference(XMLStreamReader at) {
    String reference = XmlIn.attribute(at, "ref");
    return reference == null ? Optional.empty() : CellRange.parse(reference);
  }

  /** Whether the consumer would take more. */
  private boolean rows(XMLStreamReader at, RowConsumer consumer) throws XMLStreamException {
    while (XmlIn.nextChild(at)) {
      if (!at.getLocalName().equals("row")) {
        XmlIn.skip(at);
      } else if (!consumer.accept(row(at))) {
        return false;
      }
    }
    return true;
  }

  private RawRow row(XMLStreamReader at) throws XMLStreamException {
    int row = cursor.toRow(at);
    boolean hidden = XmlIn.flag(at, "hidden");
    List<RawCell> cells = new ArrayList<>();
    while (XmlIn.nextChild(at)) {
      if (at.getLocalName().equals("c")) {
        cells.add(stored.read(at, row, cursor.toCell(at)));
      } else {
        XmlIn.skip(at);
      }
    }
    return new RawRow(row, hidden, cells);
  }
}
