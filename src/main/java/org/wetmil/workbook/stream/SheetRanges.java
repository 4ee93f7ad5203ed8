package org.wetmil.workbook.stream;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.wetmil.workbook.opc.XmlIn;

/**
 * The ranges that a sheet declares after its rows.
 *
 * @param merged blocks of cells shown as one
 * @param autoFilter the range of the sheet's own filter, if any; tables have theirs
 */
public record SheetRanges(List<CellRange> merged, Optional<CellRange> autoFilter) {
  public SheetRanges {
    merged = List.copyOf(merged);
  }

  static SheetRanges read(XMLStreamReader at) throws XMLStreamException {
    List<CellRange> merged = new ArrayList<>();
    Optional<CellRange> autoFilter = Optional.empty();
    while (XmlIn.nextChild(at)) {
      switch (at.getLocalName()) {
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
}
