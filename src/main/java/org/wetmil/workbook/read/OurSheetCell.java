package org.wetmil.workbook.read;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.wetmil.workbook.opc.Passwords;
import org.wetmil.workbook.stream.CellAddress;
import org.wetmil.workbook.stream.PackageReader;
import org.wetmil.workbook.stream.RawCell;
import org.wetmil.workbook.stream.SheetPart;

/** Where a row of a sheet that a fill added takes its figures from. */
public final class OurSheetCell {
  private static final Pattern REFERENCE =
      Pattern.compile("(?:'((?:[^']|'')++)'|([\\p{L}\\p{N}_.]+))!(\\$?[A-Z]{1,3}\\$?\\d+)");

  /** A cell of another sheet. */
  public record Cell(String sheet, CellAddress at) {}

  private OurSheetCell() {}

  /**
   * The cell of a bid sheet that a cell refers to; where it refers to none, the first cell of the
   * one row that its row refers to. Empty when its row takes from no row, or from several.
   *
   * @param bidSheets sheets that hold lines
   */
  public static Optional<Cell> follow(
      Path file, Passwords passwords, String sheet, CellAddress asked, Set<String> bidSheets) {
    List<RawCell> row = row(file, passwords, sheet, asked.row());
    Set<Cell> all = new LinkedHashSet<>();
    Set<Cell> own = new LinkedHashSet<>();
    for (RawCell cell : row) {
      List<Cell> found = references(cell, bidSheets);
      all.addAll(found);
      if (cell.column() == asked.column()) {
        own.addAll(found);
      }
    }
    long rows = all.stream().map(each -> each.sheet() + "!" + each.at().row()).distinct().count();
    if (rows != 1) {
      return Optional.empty();
    }
    return own.size() == 1 ? own.stream().findFirst() : all.stream().findFirst();
  }

  private static List<RawCell> row(Path file, Passwords passwords, String sheet, int row) {
    List<RawCell> cells = new ArrayList<>();
    try (PackageReader workbook = PackageReader.open(file, passwords)) {
      for (SheetPart part : workbook.sheets()) {
        if (part.name().equals(sheet)) {
          workbook.rows(
              part,
              each -> {
                if (each.row() == row) {
                  cells.addAll(each.cells());
                }
                return each.row() < row;
              });
        }
      }
    }
    return cells;
  }

  private static List<Cell> references(RawCell cell, Set<String> bidSheets) {
    List<Cell> found = new ArrayList<>();
    Matcher matcher = REFERENCE.matcher(cell.formula() == null ? "" : cell.formula());
    while (matcher.find()) {
      String name =
          matcher.group(1) == null ? matcher.group(2) : matcher.group(1).replace("''", "'");
      Optional<CellAddress> at = CellAddress.find(matcher.group(3).replace("$", ""));
      if (bidSheets.contains(name) && at.isPresent()) {
        found.add(new Cell(name, at.get()));
      }
    }
    return found;
  }
}
