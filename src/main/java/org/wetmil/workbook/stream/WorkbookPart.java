package org.wetmil.workbook.stream;

import java.util.ArrayList;
import java.util.List;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.wetmil.workbook.opc.XmlIn;

/** What the part xl/workbook.xml says: its sheets, its names, its calendar. */
record WorkbookPart(boolean strict, boolean date1904, List<Entry> sheets, List<DefinedName> names) {

  private static final String TRANSITIONAL =
      "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
  private static final String STRICT = "http://purl.oclc.org/ooxml/spreadsheetml/main";

  /** A sheet of any sort; not every sort is a worksheet. */
  record Entry(String name, String relationshipId, SheetPart.Visibility visibility) {}

  private record UnplacedName(DefinedName name, int sheet) {}

  static WorkbookPart read(XMLStreamReader at) throws XMLStreamException {
    boolean strict = STRICT.equals(at.getNamespaceURI());
    if (!at.getLocalName().equals("workbook")
        || !(strict || TRANSITIONAL.equals(at.getNamespaceURI()))) {
      throw new XMLStreamException("it does not begin with the element of a workbook");
    }
    boolean date1904 = false;
    List<Entry> sheets = new ArrayList<>();
    List<UnplacedName> names = new ArrayList<>();
    while (XmlIn.nextChild(at)) {
      switch (at.getLocalName()) {
        case "workbookPr" -> {
          date1904 = XmlIn.flag(at, "date1904");
          XmlIn.skip(at);
        }
        case "sheets" -> {
          while (XmlIn.nextChild(at)) {
            sheets.add(sheet(at));
            XmlIn.skip(at);
          }
        }
        case "definedNames" -> {
          while (XmlIn.nextChild(at)) {
            names.add(name(at));
          }
        }
        default -> XmlIn.skip(at);
      }
    }
    return new WorkbookPart(
        strict,
        date1904,
        List.copyOf(sheets),
        names.stream().map(each -> placed(each, sheets)).toList());
  }

  private static Entry sheet(XMLStreamReader at) throws XMLStreamException {
    String id = "";
    for (int i = 0; i < at.getAttributeCount(); i++) {
      String uri = at.getAttributeNamespace(i);
      if (at.getAttributeLocalName(i).equals("id")
          && uri != null
          && uri.endsWith("/relationships")) {
        id = at.getAttributeValue(i);
      }
    }
    String name = XmlIn.attribute(at, "name");
    if (name == null) {
      throw new XMLStreamException("a sheet has no name");
    }
    String state = XmlIn.attribute(at, "state");
    return new Entry(
        name,
        id,
        switch (state == null ? "visible" : state) {
          case "hidden" -> SheetPart.Visibility.HIDDEN;
          case "veryHidden" -> SheetPart.Visibility.VERY_HIDDEN;
          default -> SheetPart.Visibility.VISIBLE;
        });
  }

  private static UnplacedName name(XMLStreamReader at) throws XMLStreamException {
    String name = XmlIn.attribute(at, "name");
    if (name == null) {
      throw new XMLStreamException("what should name cells has no name");
    }
    boolean hidden = XmlIn.flag(at, "hidden");
    int sheet = XmlIn.whole(at, "localSheetId", -1);
    String refersTo = StoredText.of(at);
    return new UnplacedName(new DefinedName(name, null, refersTo, hidden), sheet);
  }

  private static DefinedName placed(UnplacedName unplaced, List<Entry> sheets) {
    DefinedName name = unplaced.name();
    int at = unplaced.sheet();
    String sheet = at >= 0 && at < sheets.size() ? sheets.get(at).name() : null;
    return new DefinedName(name.name(), sheet, name.refersTo(), name.hidden());
  }
}
