package org.wetmil.workbook.stream;

import java.util.List;
import java.util.function.Supplier;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.wetmil.workbook.opc.XmlIn;
import org.wetmil.workbook.opc.Xstring;

/** Reads cells as a workbook stores them. */
public final class StoredCells {
  private final Supplier<List<String>> sharedStrings;

  /**
   * @param sharedStrings asked for with each cell that has one
   */
  StoredCells(Supplier<List<String>> sharedStrings) {
    this.sharedStrings = sharedStrings;
  }

  /**
   * Reads a cell; the reader stands at its start, and then at its end.
   *
   * @param row counted from 0
   * @param column counted from 0
   */
  public RawCell read(XMLStreamReader at, int row, int column) throws XMLStreamException {
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
    Stored stored = stored(type == null ? "n" : type, value, inline, row, column);
    return new RawCell(row, column, stored.kind(), stored.text(), formula, style, shared);
  }

  private record Stored(CellKind kind, String text) {
    private static final Stored BLANK = new Stored(CellKind.BLANK, "");
  }

  private Stored stored(String type, String value, String inline, int row, int column)
      throws XMLStreamException {
    if (type.equals("inlineStr") && inline != null) {
      return new Stored(CellKind.TEXT, inline);
    }
    if (value == null) {
      return Stored.BLANK;
    }
    String trimmed = value.trim();
    return switch (type) {
      case "str", "inlineStr" -> new Stored(CellKind.TEXT, Xstring.decode(value));
      case "s" ->
          trimmed.isEmpty()
              ? Stored.BLANK
              : new Stored(CellKind.TEXT, shared(trimmed, row, column));
      // A date in words of ISO 8601, which strict workbooks may hold, is not a number as stored.
      case "d" -> new Stored(CellKind.TEXT, trimmed);
      case "b" -> trimmed.isEmpty() ? Stored.BLANK : new Stored(CellKind.BOOLEAN, trimmed);
      case "e" -> new Stored(CellKind.ERROR, trimmed);
      case "n" -> trimmed.isEmpty() ? Stored.BLANK : new Stored(CellKind.NUMBER, trimmed);
      default ->
          throw new XMLStreamException(
              new CellAddress(row, column) + " is of unknown type " + type);
    };
  }

  private String shared(String index, int row, int column) throws XMLStreamException {
    List<String> strings = sharedStrings.get();
    int at;
    try {
      at = Integer.parseInt(index);
    } catch (NumberFormatException e) {
      at = -1;
    }
    if (at < 0 || at >= strings.size()) {
      throw new XMLStreamException(
          "cell "
              + new CellAddress(row, column)
              + " asks for text "
              + index
              + " of "
              + strings.size()
              + " stored texts");
    }
    return strings.get(at);
  }
}
