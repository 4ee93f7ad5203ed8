package org.wetmil.workbook.opc;

import java.io.BufferedInputStream;
import java.io.CharConversionException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.regex.Pattern;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/** Reading XML of unknown origin: no document type, no entities but the five of XML itself. */
public final class XmlIn {
  private static final String DEPTH_LIMIT = "jdk.xml.maxElementDepth";

  /** Bytes within which the reader looks for the XML declaration, after a mark of the encoding. */
  private static final int HEAD = 6;

  /** Bytes within which the first element begins, and a document type is looked for. */
  private static final int PROLOG = 8_000;

  private static final String BEFORE = "(?s)[^<]*(?:(?:<\\?.*?\\?>|<!--.*?-->)[^<]*)*+";
  private static final Pattern TYPED = Pattern.compile(BEFORE + "<!DOCTYPE.*");
  private static final Pattern BEGUN = Pattern.compile(BEFORE + "<[^!?].*");

  private static final String A_TYPE = "a document type, which a workbook may not have";
  private static final String NO_XML = "it does not begin as XML does";

  private XmlIn() {}

  /** A reader standing at the root element. */
  public static XMLStreamReader open(InputStream in) throws XMLStreamException {
    // A factory for each reader: the interface does not promise that one may be shared by threads.
    XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    factory.setXMLResolver(
        (publicId, systemId, base, namespace) -> {
          throw new XMLStreamException("an entity outside the file");
        });
    factory.setProperty(DEPTH_LIMIT, Limits.MAX_XML_DEPTH);
    XMLStreamReader reader = factory.createXMLStreamReader(begun(in));
    while (reader.next() != XMLStreamConstants.START_ELEMENT) {
      if (reader.getEventType() == XMLStreamConstants.DTD) {
        throw new XMLStreamException(A_TYPE);
      }
    }
    return reader;
  }

  /**
   * The reader prints what is wrong with the first bytes, and that a document type is cut off,
   * whoever listens; so they are seen to.
   */
  private static InputStream begun(InputStream in) throws XMLStreamException {
    BufferedInputStream bytes = new BufferedInputStream(in);
    try {
      bytes.mark(PROLOG);
      byte[] head = bytes.readNBytes(PROLOG);
      bytes.reset();
      boolean utf16 = starts(head, 0xFE, 0xFF) || starts(head, 0xFF, 0xFE);
      int from = starts(head, 0xEF, 0xBB, 0xBF) ? 3 : 0;
      for (int i = from; i < Math.min(head.length, from + HEAD) && !utf16; i++) {
        if (head[i] < 0) {
          throw new XMLStreamException(NO_XML);
        }
      }
      String prolog = new String(head, StandardCharsets.ISO_8859_1).replace("\0", "");
      if (TYPED.matcher(prolog).matches()) {
        throw new XMLStreamException(A_TYPE);
      }
      if (head.length == PROLOG && !BEGUN.matcher(prolog).matches()) {
        throw new XMLStreamException("no element begins in its first " + PROLOG + " bytes");
      }
      return bytes;
    } catch (IOException e) {
      throw new XMLStreamException(e);
    }
  }

  private static boolean starts(byte[] head, int... with) {
    for (int i = 0; i < with.length; i++) {
      if (i >= head.length || (head[i] & 0xFF) != with[i]) {
        return false;
      }
    }
    return true;
  }

  /** Goes from the start of an element to its end. */
  public static void skip(XMLStreamReader at) throws XMLStreamException {
    for (int depth = 1; depth > 0; ) {
      int event = at.next();
      if (event == XMLStreamConstants.START_ELEMENT) {
        depth++;
      } else if (event == XMLStreamConstants.END_ELEMENT) {
        depth--;
      }
    }
  }

  /** Goes to the end of the document; gives how many elements it saw. */
  public static long end(XMLStreamReader at) throws XMLStreamException {
    long elements = 0;
    while (at.hasNext()) {
      elements += at.next() == XMLStreamConstants.START_ELEMENT ? 1 : 0;
    }
    return elements;
  }

  /**
   * Goes to the next child of the element whose start, or whose last child's end, the reader stands
   * at.
   *
   * @return false at the end of that element
   */
  public static boolean nextChild(XMLStreamReader at) throws XMLStreamException {
    while (true) {
      int event = at.next();
      if (event == XMLStreamConstants.START_ELEMENT) {
        return true;
      }
      if (event == XMLStreamConstants.END_ELEMENT) {
        return false;
      }
    }
  }

  /** An attribute without a namespace, or null. */
  public static String attribute(XMLStreamReader at, String name) {
    for (int i = 0; i < at.getAttributeCount(); i++) {
      String prefix = at.getAttributePrefix(i);
      if ((prefix == null || prefix.isEmpty()) && at.getAttributeLocalName(i).equals(name)) {
        return at.getAttributeValue(i);
      }
    }
    return null;
  }

  /** An attribute of the type xsd:boolean; absent is false. */
  public static boolean flag(XMLStreamReader at, String name) {
    String value = attribute(at, name);
    return value != null && (value.trim().equals("1") || value.trim().equals("true"));
  }

  /** An attribute that is a whole number; the fallback when it is absent. */
  public static int whole(XMLStreamReader at, String name, int fallback) throws XMLStreamException {
    String value = attribute(at, name);
    if (value == null) {
      return fallback;
    }
    try {
      return Integer.parseInt(value.trim());
    } catch (NumberFormatException e) {
      throw new XMLStreamException(name + "=\"" + value + "\" is not a whole number", e);
    }
  }

  /** Why a part could not be read, without the library's prefix. */
  public static String reason(XMLStreamException e) {
    String message = e.getMessage() == null ? "its text cannot be read" : e.getMessage();
    if (e.getNestedException() instanceof IOException io
        && !(io instanceof CharConversionException)) {
      return "it cannot be inflated";
    }
    if (message.contains("maxElementDepth")) {
      return "its elements are nested more than " + Limits.MAX_XML_DEPTH + " deep";
    }
    if (!message.contains("Message: ")) {
      return message.replace('\n', ' ');
    }
    int line = e.getLocation() == null ? -1 : e.getLocation().getLineNumber();
    return "its XML is broken at line " + line;
  }
}
