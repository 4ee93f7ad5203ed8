package org.wetmil.workbook.fill.page;

import org.wetmil.estimate.FilledLine;
import org.wetmil.estimate.InputColumn;

/** What the key columns of the list of hours hold for a line. */
final class HoursKeys {
  private HoursKeys() {}

  static String room(FilledLine line) {
    return HoursColumn.key(label(line, InputColumn.FLOOR), label(line, InputColumn.ROOM));
  }

  static String order(FilledLine line) {
    String coating = line.isSetUp() ? line.work().coating().name() : "";
    return HoursColumn.key(
        coating, label(line, InputColumn.COLOUR), label(line, InputColumn.SHEEN));
  }

  /** A criterion for all rooms of a floor, or for all orders of a coating. */
  static String firstPart(String key) {
    return key.substring(0, key.indexOf(HoursColumn.PART) + HoursColumn.PART.length());
  }

  private static String label(FilledLine line, InputColumn column) {
    return Label.text(line.line().get(column));
  }
}
