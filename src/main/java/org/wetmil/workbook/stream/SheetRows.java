package org.wetmil.workbook.stream;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.wetmil.workbook.opc.XmlIn;
import org.wetmil.workbook.opc.Xstring;

/** Streams the rows of one worksheet part. */
final class SheetRows {
  private final List<String> sharedStrings;
  private final CellCursor cursor = new CellCursor();

  SheetRows(List<String> sharedStrings) {
    this.sharedStrings = sharedStrings;
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
        cells.add(cell(at));
      } else {
        XmlIn.skip(at);
      }
    }
    return new RawRow(row, hidden, cells);
  }

  private RawCell cell(XMLStreamReader at) throws XMLStreamException {
    int column = cursor.toCell(at);
    int style = XmlIn.whole(at, "s", 0);
    String type = XmlIn.attribute(at, "t");
    String value = null;
    String formula = null;
    String inline = null;
    String shared = null;
    while (XmlIn.nextChild(at)) {
      switch (at.getLocalName()) {
        case "v" -> value = StoredText.of(at);
        case "f" -> {
          shared = "shared".equals(XmlIn.attribute(at, "t")) ? XmlIn.attribute(at, "si") : null;
          formula = Xstring.decode(StoredText.of(at));
        }
        case "is" -> inline = StoredText.ofRuns(at);
        default -> XmlIn.skip(at);
      }
    }
    Stored stored = stored(type == null ? "n" : type, value, inline);
    return new RawCell(
        cursor.address().row(), column, stored.kind(), stored.text(), formula, style, shared);
  }

  private record Stored(CellKind kind, String text) {
    private static final Stored BLANK = new Stored(CellKind.BLANK, "");
  }

  private Stored stored(String type, String value, String inline) throws XMLStreamException {
    if (type.equals("inlineStr") && inline != null) {
      return new Stored(CellKind.TEXT, inline);
    }
    if (value == null) {
      return Stored.BLANK;
    }
    String trimmed = value.trim();
    return switch (type) {
      case "str", "inlineStr" -> new Stored(CellKind.TEXT, Xstring.decode(value));
      case "s" -> trimmed.isEmpty() ? Stored.BLANK : new Stored(CellKind.TEXT, shared(trimmed));
      // A date in words of ISO 8601, which strict workbooks may hold, is not a number as stored.
      case "d" -> new Stored(CellKind.TEXT, trimmed);
      case "b" -> trimmed.isEmpty() ? Stored.BLANK : new Stored(CellKind.BOOLEAN, trimmed);
      case "e" -> new Stored(CellKind.ERROR, trimmed);
      case "n" -> trimmed.isEmpty() ? Stored.BLANK : new Stored(CellKind.NUMBER, trimmed);
      default -> throw new XMLStreamException(cursor.address() + " is of unknown type " + type);
    };
  }

  private String shared(String index) throws XMLStreamException {
    int at;
    try {
      at = Integer.parseInt(index);
    } catch (NumberFormatException e) {
      at = -1;
    }
    if (at < 0 || at >= sharedStrings.size()) {
      throw new XMLStreamException(
          "cell "
              + cursor.address()
              + " asks for text "
              + index
              + " of "
              + sharedStrings.size()
              + " stored texts");
    }
    return sharedStrings.get(at);
  }
}
