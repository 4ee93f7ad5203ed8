package org.wetmil.workbook.opc;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.junit.jupiter.api.Test;

class XmlOutTest {
  @Test
  void aDocumentIsCopiedAsItWas() throws XMLStreamException {
    String xml =
        "<a xmlns=\"u:a\" xmlns:p=\"u:p\" p:x=\"1&#10;2&#9;&quot;\" y=\"&lt;\"><p:b>&#13;&amp;&gt;</p:b>"
            + "<c xmlns=\"\"/><p:d xmlns:p=\"u:q\" p:z=\"\"/></a>";

    assertThat(copied(xml)).isEqualTo(xml);
  }

  @Test
  void contentOfAnotherDocumentTakesThePrefixBoundHere() throws XMLStreamException {
    XMLStreamReader row = open("<x:row xmlns:x=\"u:a\" xmlns:q=\"u:q\" q:k=\"v\"><x:c/></x:row>");
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (XmlOut out = new XmlOut(bytes)) {
      out.start(open("<sheet xmlns=\"u:a\" xmlns:q=\"u:other\"/>"));
      row.next();
      out.start(row);
      out.end();
      out.end();
    }

    assertThat(body(bytes)).isEqualTo("<sheet xmlns=\"u:a\" xmlns:q=\"u:other\"><c/></sheet>");
  }

  @Test
  void aPrefixTakenByAnotherNamespaceIsReplaced() throws XMLStreamException {
    XMLStreamReader row = open("<r xmlns=\"u:a\" xmlns:q=\"u:q\"><c q:k=\"v\"/></r>");
    row.next();
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (XmlOut out = new XmlOut(bytes)) {
      out.start(open("<q:sheet xmlns:q=\"u:a\"/>"));
      out.element(row);
      out.end();
    }

    assertThat(body(bytes))
        .isEqualTo("<q:sheet xmlns:q=\"u:a\"><q:c xmlns:ns1=\"u:q\" ns1:k=\"v\"/></q:sheet>");
  }

  private static String copied(String xml) throws XMLStreamException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (XmlOut out = new XmlOut(bytes)) {
      out.element(open(xml));
    }
    return body(bytes);
  }

  private static XMLStreamReader open(String xml) throws XMLStreamException {
    return XmlIn.open(new ByteArrayInputStream(xml.getBytes(StandardCharsets.UTF_8)));
  }

  private static String body(ByteArrayOutputStream bytes) {
    String xml = bytes.toString(StandardCharsets.UTF_8);
    return xml.substring(xml.indexOf('\n') + 1);
  }
}
