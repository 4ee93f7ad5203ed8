package org.wetmil.workbook.copy;

import org.apache.xmlbeans.XmlObject;
import org.apache.xmlbeans.XmlString;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTRst;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTWorkbook;

/**
 * The classes that the spreadsheet library's types rest on. They need each other to be set up, in a
 * circle: of two threads that come to it from two sides, each waits for the other for ever.
 */
public final class SpreadsheetClasses {

  private SpreadsheetClasses() {}

  /** Sets them up; to be called by one thread before several use the library. */
  public static void load() {
    XmlObject.Factory.newInstance();
    XmlString.Factory.newInstance();
    CTWorkbook.Factory.newInstance();
    CTRst.Factory.newInstance();
  }
}
