package org.wetmil.workbook.opc;

import java.io.Closeable;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import javax.xml.XMLConstants;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * Writes XML in UTF-8, mostly copied from a reader. The JDK's own stream writer loses line breaks
 * in attributes and carriage returns in text, which would alter the user's prompts and notes.
 *
 * <p>Prefixes are kept as they were where they mean the same here; content copied out of another
 * document takes the prefix that is bound here, or gets its namespace declared where it is needed.
 */
public final class XmlOut implements Closeable {
  private static final int CHUNK = 512;

  private final Utf8Out out;
  private final char[] chunk = new char[CHUNK];
  private final List<String[]> bound = new ArrayList<>();
  private final List<Integer> marks = new ArrayList<>();
  private final List<String> open = new ArrayList<>();
  private boolean inStartTag;

  /** Begins a document. */
  public XmlOut(OutputStream stream) {
    out = new Utf8Out(stream);
    bound.add(new String[] {"", ""});
    bound.add(new String[] {XMLConstants.XML_NS_PREFIX, XMLConstants.XML_NS_URI});
    raw("<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"yes\"?>\n");
  }

  /** Copies the reader's element, from its start to its end. */
  public void element(XMLStreamReader at) throws XMLStreamException {
    start(at);
    content(at);
  }

  /** Copies the rest of an element whose start was copied, to its end. */
  public void content(XMLStreamReader at) throws XMLStreamException {
    for (int depth = 1; depth > 0; ) {
      at.next();
      depth += event(at);
    }
  }

  /** Copies what the reader stands at: 1 when this opened an element, -1 when it closed one. */
  public int event(XMLStreamReader at) {
    switch (at.getEventType()) {
      case XMLStreamConstants.START_ELEMENT -> {
        start(at);
        return 1;
      }
      case XMLStreamConstants.END_ELEMENT -> {
        end();
        return -1;
      }
      case XMLStreamConstants.CHARACTERS, XMLStreamConstants.CDATA, XMLStreamConstants.SPACE ->
          text(at.getTextCharacters(), at.getTextStart(), at.getTextLength());
      default -> {
        // Comments and processing instructions mean nothing in a workbook.
      }
    }
    return 0;
  }

  /** Copies the start of the reader's element with all its attributes. */
  public void start(XMLStreamReader at) {
    startName(at);
    for (int i = 0; i < at.getAttributeCount(); i++) {
      attribute(at, i);
    }
  }

  /** Copies the start of the reader's element without its attributes. */
  public void startName(XMLStreamReader at) {
    closeStartTag();
    marks.add(bound.size());
    for (int i = 0; i < at.getNamespaceCount(); i++) {
      bind(orEmpty(at.getNamespacePrefix(i)), orEmpty(at.getNamespaceURI(i)));
    }
    int own = bound.size();
    String name =
        qualified(orEmpty(at.getPrefix()), orEmpty(at.getNamespaceURI()), at.getLocalName(), true);
    raw("<");
    raw(name);
    open.add(name);
    inStartTag = true;
    for (int i = marks.get(marks.size() - 1); i < bound.size() && i < own; i++) {
      declare(bound.get(i));
    }
    if (bound.size() > own) {
      declare(bound.get(own));
    }
  }

  /** Begins an element under a qualified name whose prefix is known to be bound. */
  public void start(String qualifiedName) {
    closeStartTag();
    marks.add(bound.size());
    raw("<");
    raw(qualifiedName);
    open.add(qualifiedName);
    inStartTag = true;
  }

  /** Copies one attribute of the reader's element. */
  public void attribute(XMLStreamReader at, int index) {
    String uri = orEmpty(at.getAttributeNamespace(index));
    String local = at.getAttributeLocalName(index);
    if (uri.isEmpty()) {
      attribute(local, at.getAttributeValue(index));
      return;
    }
    int known = bound.size();
    String name = qualified(orEmpty(at.getAttributePrefix(index)), uri, local, false);
    if (bound.size() > known) {
      declare(bound.get(known));
    }
    attribute(name, at.getAttributeValue(index));
  }

  /** Writes an attribute of the element just begun. */
  public void attribute(String name, String value) {
    raw(" ");
    raw(name);
    raw("=\"");
    escaped(value, true);
    raw("\"");
  }

  /**
   * Sees to it that a namespace has a prefix on the element just begun.
   *
   * @param wish the prefix to declare if there is none yet and it is free
   * @return the prefix
   */
  public String declare(String wish, String uri) {
    String prefix = prefixOf(uri, false);
    for (int i = 0; prefix == null; i++) {
      String free = i == 0 ? wish : wish + i;
      if (uriOf(free) == null) {
        prefix = free;
        bind(prefix, uri);
        declare(bound.get(bound.size() - 1));
      }
    }
    return prefix;
  }

  /** The prefix a namespace has here, or null. */
  public String prefixOf(String uri, boolean mayBeDefault) {
    for (int i = bound.size() - 1; i >= 0; i--) {
      String[] each = bound.get(i);
      if (each[1].equals(uri)
          && (mayBeDefault || !each[0].isEmpty())
          && uri.equals(uriOf(each[0]))) {
        return each[0];
      }
    }
    return null;
  }

  /** Writes text. */
  public void text(String text) {
    closeStartTag();
    escaped(text, false);
  }

  private void text(char[] chars, int from, int length) {
    closeStartTag();
    escaped(chars, from, length, false);
  }

  /**
   * Writes markup as it stands, between two elements: for what is written millions of times in one
   * form. Whoever calls answers for its being well formed.
   */
  public void markup(String markup) {
    closeStartTag();
    raw(markup);
  }

  /** The same for markup that is in UTF-8 already. */
  public void markup(byte[] markup) {
    closeStartTag();
    out.write(markup);
  }

  /** Ends the element begun last. */
  public void end() {
    String name = open.remove(open.size() - 1);
    int mark = marks.remove(marks.size() - 1);
    while (bound.size() > mark) {
      bound.remove(bound.size() - 1);
    }
    if (inStartTag) {
      raw("/>");
      inStartTag = false;
    } else {
      raw("</");
      raw(name);
      raw(">");
    }
  }

  /** Passes everything on; the stream beneath stays open, for it may be an entry of a zip file. */
  @Override
  public void close() {
    out.flush();
  }

  private String qualified(String prefix, String uri, String local, boolean mayBeDefault) {
    String found = uri.equals(uriOf(prefix)) && (mayBeDefault || !prefix.isEmpty()) ? prefix : null;
    if (found == null) {
      found = prefixOf(uri, mayBeDefault);
    }
    if (found == null) {
      found = prefix;
      for (int i = 1; found.isEmpty() ? !mayBeDefault : uriOf(found) != null; i++) {
        found = "ns" + i;
      }
      bind(found, uri);
    }
    return found.isEmpty() ? local : found + ":" + local;
  }

  private void bind(String prefix, String uri) {
    bound.add(new String[] {prefix, uri});
  }

  private String uriOf(String prefix) {
    for (int i = bound.size() - 1; i >= 0; i--) {
      if (bound.get(i)[0].equals(prefix)) {
        return bound.get(i)[1];
      }
    }
    return null;
  }

  private void declare(String[] binding) {
    attribute(binding[0].isEmpty() ? "xmlns" : "xmlns:" + binding[0], binding[1]);
  }

  private void closeStartTag() {
    if (inStartTag) {
      raw(">");
      inStartTag = false;
    }
  }

  private void escaped(String text, boolean inAttribute) {
    for (int from = 0; from < text.length(); from += CHUNK) {
      int to = Math.min(text.length(), from + CHUNK);
      text.getChars(from, to, chunk, 0);
      escaped(chunk, 0, to - from, inAttribute);
    }
  }

  private void escaped(char[] text, int from, int length, boolean inAttribute) {
    int done = from;
    for (int i = from; i < from + length; i++) {
      char c = text[i];
      String escape = XmlEscapes.of(c, inAttribute);
      if (escape != null) {
        out.write(text, done, i - done);
        out.write(escape);
        done = i + 1;
      }
    }
    out.write(text, done, from + length - done);
  }

  private void raw(String text) {
    out.write(text);
  }

  private static String orEmpty(String text) {
    return text == null ? "" : text;
  }
}
