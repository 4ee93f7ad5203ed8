package org.wetmil.workbook.copy;

import org.apache.poi.ooxml.POIXMLTypeLoader;
import org.apache.poi.openxml4j.util.ZipSecureFile;
import org.apache.xmlbeans.XmlException;
import org.apache.xmlbeans.XmlOptionCharEscapeMap;
import org.wetmil.workbook.opc.Limits;

/** Settings that the library has once for the whole program. */
final class LibrarySettings {
  private static final char[] LOST_IN_ATTRIBUTES = {'\n', '\r', '\t'};

  private LibrarySettings() {}

  static void apply() {
    // The input was held to our limits; the library's own stops at 1,000 parts.
    ZipSecureFile.setMaxFileCount(Limits.MAX_ENTRIES);
    // Written as they are, line breaks in attributes (prompts, alternative texts of pictures,
    // headings of table columns) are read back as spaces.
    XmlOptionCharEscapeMap escapes = new XmlOptionCharEscapeMap();
    try {
      for (char each : LOST_IN_ATTRIBUTES) {
        escapes.addMapping(each, XmlOptionCharEscapeMap.HEXADECIMAL);
      }
    } catch (XmlException e) {
      throw new IllegalStateException(e);
    }
    POIXMLTypeLoader.DEFAULT_XML_OPTIONS.setSaveSubstituteCharacters(escapes);
  }
}
