package org.wetmil.workbook.stream;

import java.util.ArrayList;
import java.util.List;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.wetmil.workbook.opc.XmlIn;
import org.wetmil.workbook.opc.Xstring;

/** Reads texts as a workbook stores them. */
final class StoredText {
  private StoredText() {}

  /** All shared strings of a workbook. */
  static List<String> sharedStrings(XMLStreamReader at) throws XMLStreamException {
    List<String> strings = new ArrayList<>();
    while (XmlIn.nextChild(at)) {
      if (at.getLocalName().equals("si")) {
        strings.add(ofRuns(at));
      } else {
        XmlIn.skip(at);
      }
    }
    return strings;
  }

  /**
   * The characters of a shared or inline string: its text and the text of its formatted runs,
   * without the phonetic hints of East Asian text.
   */
  static String ofRuns(XMLStreamReader at) throws XMLStreamException {
    StringBuilder text = new StringBuilder();
    while (XmlIn.nextChild(at)) {
      switch (at.getLocalName()) {
        case "t" -> append(at, text);
        case "r" -> {
          while (XmlIn.nextChild(at)) {
            if (at.getLocalName().equals("t")) {
              append(at, text);
            } else {
              XmlIn.skip(at);
            }
          }
        }
        default -> XmlIn.skip(at);
      }
    }
    return Xstring.decode(text.toString());
  }

  /** The characters within an element, to its end. */
  static String of(XMLStreamReader at) throws XMLStreamException {
    StringBuilder text = new StringBuilder();
    append(at, text);
    return text.toString();
  }

  private static void append(XMLStreamReader at, StringBuilder text) throws XMLStreamException {
    while (true) {
      switch (at.next()) {
        case XMLStreamConstants.CHARACTERS, XMLStreamConstants.CDATA, XMLStreamConstants.SPACE ->
            text.append(at.getTextCharacters(), at.getTextStart(), at.getTextLength());
        case XMLStreamConstants.START_ELEMENT -> XmlIn.skip(at);
        case XMLStreamConstants.END_ELEMENT -> {
          return;
        }
        default -> {
          // Comments are no part of the text.
        }
      }
    }
  }
}
