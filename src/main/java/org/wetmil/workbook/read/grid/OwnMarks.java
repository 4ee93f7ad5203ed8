package org.wetmil.workbook.read.grid;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.wetmil.workbook.stream.CellRange;
import org.wetmil.workbook.stream.DefinedName;
import org.wetmil.workbook.stream.PackageReader;
import org.wetmil.workbook.stream.SheetPart;
import org.wetmil.workbook.stream.SheetReference;
import org.wetmil.workbook.stream.TableRef;

/**
 * What an earlier fill left in a workbook, known by its marks and never by its headings.
 *
 * @param filledBefore whether the workbook says that it was filled
 * @param sheets sheets that the fill added
 * @param columns the cells that it wrote, by sheet
 * @param filled the same, each with the filled column that its mark names
 */
public record OwnMarks(
    boolean filledBefore,
    List<String> sheets,
    Map<String, List<CellRange>> columns,
    List<Filled> filled) {
  /** The document property that a filled workbook carries. */
  public static final String PROPERTY = "Wetmil filled";

  /** Hidden names of a sheet that begin so refer to a filled column, its heading included. */
  public static final String COLUMN = "wm_col_";

  /** Hidden names of the workbook that begin so refer to what a fill wrote on a sheet of ours. */
  public static final String SHEET = "wm_sheet_";

  /** One of several between commas; a comma in quotes parts none. */
  private static final Pattern REFERENCE = Pattern.compile("(?:[^',]|'[^']*(?:'|$))++");

  /**
   * A filled column of a sheet.
   *
   * @param word the name of the column, in small letters
   */
  public record Filled(String sheet, String word, CellRange range) {}

  public static OwnMarks of(PackageReader workbook) {
    boolean before =
        workbook.customProperties().stream()
            .anyMatch(property -> property.name().equalsIgnoreCase(PROPERTY));
    List<String> sheets = new ArrayList<>();
    Map<String, List<CellRange>> columns = new HashMap<>();
    List<Filled> filled = new ArrayList<>();
    for (DefinedName name : workbook.definedNames()) {
      String key = name.name().toLowerCase(Locale.ROOT);
      if (key.startsWith(SHEET)) {
        sheetOf(name.refersTo()).filter(each -> !sheets.contains(each)).ifPresent(sheets::add);
      } else if (key.startsWith(COLUMN)) {
        Optional<String> sheet =
            Optional.ofNullable(name.sheet()).or(() -> sheetOf(name.refersTo()));
        sheet.ifPresent(
            each -> {
              List<CellRange> ranges = ranges(name.refersTo());
              columns.computeIfAbsent(each, any -> new ArrayList<>()).addAll(ranges);
              String word = key.substring(COLUMN.length());
              ranges.forEach(range -> filled.add(new Filled(each, word, range)));
            });
      }
    }
    return new OwnMarks(before, List.copyOf(sheets), Map.copyOf(columns), List.copyOf(filled));
  }

  /** The sheet of ours that carries a word, as in basis. */
  public static Optional<String> sheet(PackageReader workbook, String word) {
    return workbook.definedNames().stream()
        .filter(name -> name.name().equalsIgnoreCase(SHEET + word))
        .flatMap(name -> sheetOf(name.refersTo()).stream())
        .findFirst();
  }

  /** What the earlier fill wrote on a sheet of ours; empty when its mark does not tell. */
  public static Optional<CellRange> span(PackageReader workbook, String sheet) {
    return workbook.definedNames().stream()
        .filter(name -> name.name().toLowerCase(Locale.ROOT).startsWith(SHEET))
        .filter(name -> sheetOf(name.refersTo()).equals(Optional.of(sheet)))
        .flatMap(name -> ranges(name.refersTo()).stream())
        .filter(range -> range.lastRow() > 0)
        .findFirst();
  }

  /** Excel tables as they were before an earlier fill let them grow. */
  public List<TableRef> withoutOurs(SheetPart sheet, List<TableRef> tables) {
    Set<Integer> ours = columnsOf(sheet.name());
    return tables.stream().map(table -> withoutOurs(table, ours)).toList();
  }

  private static TableRef withoutOurs(TableRef table, Set<Integer> ours) {
    CellRange range = table.range();
    int last = range.lastColumn();
    while (last > range.firstColumn() && ours.contains(last)) {
      last--;
    }
    return new TableRef(
        table.name(),
        table.displayName(),
        new CellRange(range.firstRow(), range.firstColumn(), range.lastRow(), last),
        table.headerRows(),
        table.totalsRows());
  }

  /** The columns of a sheet that the earlier fill wrote. */
  public Set<Integer> columnsOf(String sheet) {
    return columns.getOrDefault(sheet, List.of()).stream()
        .flatMap(range -> IntStream.rangeClosed(range.firstColumn(), range.lastColumn()).boxed())
        .collect(Collectors.toSet());
  }

  private static List<CellRange> ranges(String refersTo) {
    return REFERENCE
        .matcher(refersTo)
        .results()
        .map(each -> each.group().substring(each.group().lastIndexOf('!') + 1))
        .flatMap(each -> CellRange.parse(each).stream())
        .toList();
  }

  private static Optional<String> sheetOf(String refersTo) {
    int end = refersTo.lastIndexOf('!');
    if (end <= 0) {
      return Optional.empty();
    }
    return Optional.of(SheetReference.unquoted(refersTo.substring(0, end)));
  }
}
