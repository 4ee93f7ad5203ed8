package org.wetmil.workbook.copy;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.wetmil.workbook.stream.SheetPart;

/** Sheets by the names of their parts, which are compared without case and leading slash. */
final class Parts {
  private Parts() {}

  static Map<String, SheetPart> byName(List<SheetPart> sheets) {
    Map<String, SheetPart> byName = new HashMap<>();
    sheets.forEach(sheet -> byName.put(key(sheet.part()), sheet));
    return byName;
  }

  static SheetPart get(Map<String, SheetPart> byName, String part) {
    return byName.get(key(part));
  }

  static String key(String part) {
    String name = part.startsWith("/") ? part.substring(1) : part;
    return name.toLowerCase(Locale.ROOT);
  }
}
