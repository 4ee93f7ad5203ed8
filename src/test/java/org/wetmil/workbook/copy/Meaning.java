package org.wetmil.workbook.copy;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.wetmil.workbook.WorkbookException;
import org.wetmil.workbook.opc.ZipPackage;
import org.wetmil.workbook.stream.NumberFormats;
import org.wetmil.workbook.stream.PackageReader;
import org.wetmil.workbook.stream.RawCell;
import org.wetmil.workbook.stream.RawRow;
import org.wetmil.workbook.stream.SheetPart;

/** Compares two workbooks by what they mean, not by their bytes. */
final class Meaning {
  private Meaning() {}

  /** What the second workbook has lost or altered of the first; it may have more. */
  static List<String> changes(PackageReader before, PackageReader after) {
    List<String> changes = new ArrayList<>();
    for (SheetPart sheet : before.sheets()) {
      SheetPart copy =
          after.sheets().stream()
              .filter(each -> each.name().equals(sheet.name()))
              .findFirst()
              .orElse(null);
      if (copy == null || copy.visibility() != sheet.visibility()) {
        changes.add("sheet " + sheet.name() + " is lost or its tab changed");
        continue;
      }
      compare("rows of " + sheet.name(), rows(before, sheet), rows(after, copy), changes);
      compare("tables", before.tables(sheet), after.tables(copy), changes);
    }
    compare("calendar", before.date1904(), after.date1904(), changes);
    compare("names", before.definedNames(), after.definedNames(), changes);
    compare("properties", before.customProperties(), after.customProperties(), changes);
    formats(before.formats(), after.formats(), changes);
    parts(before.zip(), after.zip(), changes);
    return changes;
  }

  private static void compare(String what, Object before, Object after, List<String> changes) {
    if (!before.equals(after)) {
      changes.add(what + " changed: " + shortened(before) + " -> " + shortened(after));
    }
  }

  private static String shortened(Object value) {
    String text = value.toString();
    return text.length() < 300 ? text : text.substring(0, 300);
  }

  /** The rows, and the ranges that stand after them. */
  private static Object rows(PackageReader reader, SheetPart sheet) {
    List<RawRow> rows = new ArrayList<>();
    try {
      return List.of(rows, reader.rows(sheet, rows::add));
    } catch (WorkbookException e) {
      // What cannot be read before has to be just as unreadable after.
      String message = e.getMessage();
      return rows + message.substring(message.indexOf(": "));
    }
  }

  private static void formats(NumberFormats before, NumberFormats after, List<String> changes) {
    for (int style = 0; style < before.styles(); style++) {
      compare("format " + style, before.code(style), after.code(style), changes);
    }
  }

  private static void parts(ZipPackage before, ZipPackage after, List<String> changes) {
    Set<String> lost = new TreeSet<>(String.CASE_INSENSITIVE_ORDER);
    lost.addAll(before.names());
    after.names().forEach(lost::remove);
    // The calculation chain is dropped on purpose; what is in [trash] was deleted by the user.
    lost.removeIf(part -> part.endsWith("calcChain.xml") || part.startsWith("[trash]"));
    if (!lost.isEmpty()) {
      changes.add("parts lost: " + lost);
    }
  }

  /** The cells of a sheet by address. */
  static RawCell cell(PackageReader reader, String sheet, int row, int column) {
    SheetPart part =
        reader.sheets().stream()
            .filter(each -> each.name().equals(sheet))
            .findFirst()
            .orElseThrow();
    List<RawCell> found = new ArrayList<>();
    reader.rows(
        part,
        each -> {
          each.cells().stream()
              .filter(cell -> cell.row() == row && cell.column() == column)
              .forEach(found::add);
          return true;
        });
    return found.isEmpty() ? null : found.get(0);
  }
}
