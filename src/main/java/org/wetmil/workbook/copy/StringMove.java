package org.wetmil.workbook.copy;

import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.wetmil.workbook.opc.XmlIn;
import org.wetmil.workbook.opc.XmlOut;

/** Copies a sheet with the numbers of its shared strings raised. */
final class StringMove {
  private final XMLStreamReader at;
  private final XmlOut out;
  private final int by;

  /** The reader stands at the root of the sheet. */
  StringMove(XMLStreamReader at, XmlOut out, int by) {
    this.at = at;
    this.out = out;
    this.by = by;
  }

  void write() throws XMLStreamException {
    out.start(at);
    boolean shared = false;
    for (int depth = 1; depth > 0; ) {
      at.next();
      if (at.isStartElement() && at.getLocalName().equals("c")) {
        shared = "s".equals(XmlIn.attribute(at, "t"));
      }
      if (shared && at.isStartElement() && at.getLocalName().equals("v")) {
        out.start(at);
        out.text(Integer.toString(Integer.parseInt(at.getElementText().trim()) + by));
        out.end();
      } else {
        depth += out.event(at);
      }
      if (at.getEventType() == XMLStreamConstants.END_ELEMENT && at.getLocalName().equals("c")) {
        shared = false;
      }
    }
  }
}
