package org.wetmil.jobs.explain;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.wetmil.workbook.read.ReadWorkbook;
import org.wetmil.workbook.read.SheetLayout;
import org.wetmil.workbook.read.TableLayout;
import org.wetmil.workbook.read.table.RowKind;
import org.wetmil.workbook.stream.SheetReference;

/** What is said when a cell belongs to no bid line. */
final class Reply {
  private static final String WHICH =
      "; explain takes any cell of a bid line, or of a line's row on the sheet Hours.";

  private Reply() {}

  static Optional<String> find(List<String> sheets, String name) {
    return sheets.stream()
        .filter(name::equals)
        .findFirst()
        .or(() -> sheets.stream().filter(name::equalsIgnoreCase).findFirst());
  }

  static String names(List<String> sheets) {
    return sheets.stream().map(name -> "\"" + name + "\"").collect(Collectors.joining(", "));
  }

  /** A cell as the user would write it. */
  static String reference(String sheet, Asked asked) {
    String cell =
        asked.column().isPresent()
            ? new Asked("", asked.row(), asked.column()).toString()
            : String.valueOf(asked.row());
    return sheet.matches("[\\p{L}\\p{N}_]+")
        ? sheet + "!" + cell
        : SheetReference.quoted(sheet) + "!" + cell;
  }

  static String noSheet(Asked asked, List<String> bidSheets) {
    return "no lines of a bid were read from a sheet \"%s\"; they stand on %s."
        .formatted(asked.sheet(), names(bidSheets));
  }

  static String ownSheet(Asked asked, String sheet) {
    return "%s stands on a sheet that Wetmil adds, and no single line is behind it%s"
        .formatted(new Asked(sheet, asked.row(), asked.column()), WHICH);
  }

  /** What a row is that is no line. */
  static String noLine(Asked meant, ReadWorkbook read) {
    SheetLayout layout =
        read.layouts().stream()
            .filter(each -> each.sheet().equals(meant.sheet()))
            .findFirst()
            .orElseThrow();
    String where = "row %d of sheet %s ".formatted(meant.row(), meant.sheet());
    return where
        + "is no bid line: "
        + what(meant.row() - 1, layout.tables())
        + "; lines stand in "
        + lines(layout.tables())
        + ".";
  }

  private static String what(int row, List<TableLayout> tables) {
    for (TableLayout table : tables) {
      RowKind kind = table.otherRows().get(row);
      if (row == table.headingRow()) {
        return "the headings stand there";
      }
      if (kind != null) {
        return what(kind);
      }
    }
    boolean above = tables.stream().allMatch(table -> row < table.headingRow());
    boolean inside =
        tables.stream().anyMatch(table -> row > table.headingRow() && row <= table.lastRow());
    if (inside) {
      return "it is blank";
    }
    return above ? "it stands above the headings" : "it stands outside the table";
  }

  private static String what(RowKind kind) {
    return switch (kind) {
      case TITLE -> "it is a title or a note, with nothing to measure or to paint";
      case TOTAL -> "it is a row of totals";
      case REPEATED_HEADING -> "the headings are repeated there";
      case BELOW -> "it stands below the table and is left out";
      case BLANK, LINE -> "it is blank";
    };
  }

  private static String lines(List<TableLayout> tables) {
    return tables.stream()
        .filter(table -> !table.lineRows().isEmpty())
        .map(
            table ->
                "rows %d to %d"
                    .formatted(
                        table.lineRows().get(0) + 1,
                        table.lineRows().get(table.lineRows().size() - 1) + 1))
        .distinct()
        .collect(Collectors.joining(", "));
  }
}
