package org.wetmil.workbook.copy;

import java.io.OutputStream;
import java.util.Set;
import java.util.stream.Collectors;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.wetmil.workbook.opc.Limits;
import org.wetmil.workbook.opc.Relationships;
import org.wetmil.workbook.opc.XmlIn;
import org.wetmil.workbook.opc.XmlOut;
import org.wetmil.workbook.opc.ZipPackage;
import org.wetmil.workbook.stream.PackageReader;
import org.wetmil.workbook.stream.SheetPart;

/**
 * The first step: a copy of the package whose worksheets have no rows and whose table of shared
 * strings is empty, small enough for the library to hold. The calculation chain is left out, since
 * it lists cells with formulas and would no longer be right; programs make it anew.
 */
final class EmptiedCopy {
  private static final String CONTENT_TYPES = "[Content_Types].xml";
  private static final String CALC_CHAIN = "calcChain";

  private final PackageReader original;
  private final ZipPackage zip;
  private final ZipWriter out;
  private int sharedStrings;

  private EmptiedCopy(PackageReader original, ZipWriter out) {
    this.original = original;
    this.zip = original.zip();
    this.out = out;
  }

  /**
   * Writes the copy.
   *
   * @return how many shared strings the original has
   */
  static int write(PackageReader original, OutputStream stream) {
    // Not compressed: the file lives for a second, and the library suspects what inflates much.
    try (ZipWriter out = new ZipWriter(stream, 0)) {
      EmptiedCopy copy = new EmptiedCopy(original, out);
      copy.parts();
      return copy.sharedStrings;
    }
  }

  private void parts() {
    Set<String> sheets =
        original.sheets().stream().map(SheetPart::part).collect(Collectors.toSet());
    String strings = original.sharedStringsPart().orElse("");
    String relationships = Relationships.partOf(original.mainPart());
    String chain = original.calculationChainPart().orElse("");
    for (String part : zip.names()) {
      if (part.equalsIgnoreCase(chain)) {
        continue;
      }
      if (sheets.stream().anyMatch(part::equalsIgnoreCase)) {
        rewrite(part, EmptiedCopy::withoutRows);
      } else if (part.equalsIgnoreCase(strings)) {
        rewrite(part, this::withoutStrings);
      } else if (part.equalsIgnoreCase(relationships)) {
        rewrite(part, EmptiedCopy::withoutChain);
      } else if (part.equalsIgnoreCase(CONTENT_TYPES)) {
        rewrite(part, (at, to) -> withoutType(at, to, "/" + chain));
      } else {
        if (part.endsWith(".xml") || part.endsWith(".vml")) {
          Limits.requireTree(zip, part);
        }
        out.copy(zip, part);
      }
    }
  }

  private interface Rewriter {
    void write(XMLStreamReader at, XmlOut out) throws XMLStreamException;
  }

  private void rewrite(String part, Rewriter rewriter) {
    zip.xml(
        part,
        at -> {
          out.xml(part, to -> rewriter.write(at, to));
          return null;
        });
  }

  private static void withoutRows(XMLStreamReader at, XmlOut out) throws XMLStreamException {
    out.start(at);
    while (XmlIn.nextChild(at)) {
      if (at.getLocalName().equals("sheetData")) {
        out.start(at);
        XmlIn.skip(at);
        out.end();
      } else {
        out.element(at);
      }
    }
    out.end();
  }

  private void withoutStrings(XMLStreamReader at, XmlOut out) throws XMLStreamException {
    out.startName(at);
    out.end();
    while (XmlIn.nextChild(at)) {
      sharedStrings += at.getLocalName().equals("si") ? 1 : 0;
      XmlIn.skip(at);
    }
  }

  private static void withoutChain(XMLStreamReader at, XmlOut out) throws XMLStreamException {
    out.start(at);
    while (XmlIn.nextChild(at)) {
      String type = XmlIn.attribute(at, "Type");
      if (type != null && Relationships.lastWord(type).equals(CALC_CHAIN)) {
        XmlIn.skip(at);
      } else {
        out.element(at);
      }
    }
    out.end();
  }

  private static void withoutType(XMLStreamReader at, XmlOut out, String partName)
      throws XMLStreamException {
    out.start(at);
    while (XmlIn.nextChild(at)) {
      if (partName.equalsIgnoreCase(XmlIn.attribute(at, "PartName"))) {
        XmlIn.skip(at);
      } else {
        out.element(at);
      }
    }
    out.end();
  }
}
