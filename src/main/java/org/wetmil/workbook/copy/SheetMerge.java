package org.wetmil.workbook.copy;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.wetmil.workbook.opc.XmlIn;
import org.wetmil.workbook.opc.XmlOut;
import org.wetmil.workbook.stream.StoredCells;

/** Puts the original rows of a sheet back into the sheet that was shaped without them. */
final class SheetMerge {
  private static final String COMPATIBILITY =
      "http://schemas.openxmlformats.org/markup-compatibility/2006";
  private static final String IGNORABLE = "Ignorable";

  private final XMLStreamReader shaped;
  private final XMLStreamReader original;
  private final StoredCells stored;
  private final XmlOut out;

  /**
   * Both readers stand at their root.
   *
   * @param stored reads cells of the original
   */
  SheetMerge(XMLStreamReader shaped, XMLStreamReader original, StoredCells stored, XmlOut out) {
    this.shaped = shaped;
    this.original = original;
    this.stored = stored;
    this.out = out;
  }

  /**
   * Writes the sheet.
   *
   * @param edit what changes among its cells, null when nothing does
   */
  void write(SheetEdit edit) throws XMLStreamException {
    root();
    while (XmlIn.nextChild(shaped)) {
      switch (shaped.getLocalName()) {
        case "sheetData" -> {
          requireNoCells();
          rows(edit);
        }
        case "dimension" -> {
          // The block of used cells is a hint that may be absent but must not be wrong.
          if (edit == null) {
            out.element(shaped);
          } else {
            XmlIn.skip(shaped);
          }
        }
        default -> out.element(shaped);
      }
    }
    out.end();
  }

  /** The rows use prefixes of the original's root, some of which are to be ignored when unknown. */
  private void root() {
    out.startName(shaped);
    Set<String> ignorable = new LinkedHashSet<>();
    for (int i = 0; i < shaped.getAttributeCount(); i++) {
      if (isIgnorable(shaped, i)) {
        ignorable.addAll(words(shaped.getAttributeValue(i)));
      } else {
        out.attribute(shaped, i);
      }
    }
    for (int i = 0; i < original.getNamespaceCount(); i++) {
      String prefix = original.getNamespacePrefix(i);
      String uri = original.getNamespaceURI(i);
      if (prefix != null && out.prefixOf(uri, true) == null) {
        out.declare(prefix, uri);
      }
    }
    for (int i = 0; i < original.getAttributeCount(); i++) {
      if (isIgnorable(original, i)) {
        for (String prefix : words(original.getAttributeValue(i))) {
          String uri = original.getNamespaceURI(prefix);
          if (uri != null) {
            ignorable.add(out.declare(prefix, uri));
          }
        }
      }
    }
    if (!ignorable.isEmpty()) {
      out.attribute(
          out.declare("mc", COMPATIBILITY) + ":" + IGNORABLE, String.join(" ", ignorable));
    }
  }

  private static boolean isIgnorable(XMLStreamReader at, int attribute) {
    return IGNORABLE.equals(at.getAttributeLocalName(attribute))
        && COMPATIBILITY.equals(at.getAttributeNamespace(attribute));
  }

  private static List<String> words(String text) {
    return text.isBlank() ? List.of() : List.of(text.trim().split("\\s+"));
  }

  /** Rows without a cell are what is left where a note was taken away. */
  private void requireNoCells() throws XMLStreamException {
    while (XmlIn.nextChild(shaped)) {
      if (XmlIn.nextChild(shaped)) {
        throw new IllegalStateException("cells were made in an original sheet; use an edit");
      }
    }
  }

  private void rows(SheetEdit edit) throws XMLStreamException {
    while (XmlIn.nextChild(original)) {
      if (!original.getLocalName().equals("sheetData")) {
        XmlIn.skip(original);
        continue;
      }
      out.start(original);
      if (edit == null) {
        out.content(original);
      } else {
        String prefix = out.prefixOf(original.getNamespaceURI(), true);
        new RowSplice(edit, stored, out, prefix).rows(original);
      }
      return;
    }
    throw new XMLStreamException("the sheet has no rows element");
  }
}
