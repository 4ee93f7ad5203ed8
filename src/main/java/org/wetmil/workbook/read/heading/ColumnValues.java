package org.wetmil.workbook.read.heading;

import java.util.List;
import java.util.function.Predicate;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Lookup;
import org.wetmil.estimate.InputColumn;
import org.wetmil.measure.DecimalMark;
import org.wetmil.measure.LengthText;
import org.wetmil.measure.NumberText;
import org.wetmil.measure.Typed;
import org.wetmil.workbook.read.grid.CellText;
import org.wetmil.workbook.read.grid.Grid;
import org.wetmil.workbook.read.grid.GridRow;
import org.wetmil.workbook.read.words.SizeText;
import org.wetmil.workbook.read.words.UnitWords;
import org.wetmil.workbook.stream.CellKind;
import org.wetmil.workbook.stream.RawCell;

/** What the cells under a heading are, where the heading does not tell. */
final class ColumnValues {
  /** Rows looked at; enough to tell, and no more to read on a long sheet. */
  private static final int ROWS = 400;

  private static final int FEWEST = 2;

  private final List<RawCell> cells;
  private final CellText texts;
  private final Catalogue catalogue;

  ColumnValues(Grid grid, int column, int firstRow, int lastRow, Catalogue catalogue) {
    this.texts = grid.texts();
    this.catalogue = catalogue;
    this.cells =
        grid.rows(firstRow, Math.min(lastRow, firstRow + ROWS)).stream()
            .map(GridRow::row)
            .map(row -> grid.at(row, column))
            .filter(cell -> !texts.shown(cell).isBlank())
            .toList();
  }

  boolean isEmpty() {
    return cells.isEmpty();
  }

  /** Whether most of the cells are names that the table of a column has. */
  boolean areNamesOf(InputColumn column) {
    Predicate<String> isName =
        switch (column) {
          case SURFACE -> text -> catalogue.surface(text) instanceof Lookup.Found;
          case COATING -> text -> catalogue.coating(text) instanceof Lookup.Found;
          case CONDITION -> text -> catalogue.condition(text) instanceof Lookup.Found;
          case TEXTURE -> text -> catalogue.texture(text) instanceof Lookup.Found;
          case SHAPE -> text -> catalogue.shape(text) instanceof Lookup.Found;
          default -> text -> false;
        };
    return cells.size() >= FEWEST && isMost(cell -> isName.test(texts.shown(cell).strip()));
  }

  /** Whether a column has a table of names. */
  static boolean hasNames(InputColumn column) {
    return switch (column) {
      case SURFACE, COATING, CONDITION, TEXTURE, SHAPE -> true;
      default -> false;
    };
  }

  /** Whether most of the cells are numbers, lengths, or sizes such as 3 x 4 m. */
  boolean areNumbers() {
    return isMost(
        cell ->
            cell.kind() == CellKind.NUMBER
                || LengthText.read(cell.text(), DecimalMark.UNKNOWN) instanceof Typed.Value
                || NumberText.read(cell.text(), DecimalMark.UNKNOWN) instanceof Typed.Value);
  }

  /** Whether most of the cells are words that are neither numbers nor sizes nor left open. */
  boolean areWords() {
    return isMost(
        cell ->
            cell.kind() == CellKind.TEXT
                && NumberText.read(cell.text(), DecimalMark.UNKNOWN) instanceof Typed.Refused
                && cell.text().chars().noneMatch(Character::isDigit));
  }

  /** Whether most of the cells are sizes such as 3 x 4 m. */
  boolean areSizes() {
    return isMost(cell -> SizeText.isSize(cell.text()));
  }

  /** Whether most of the cells are units. */
  boolean areUnits() {
    return isMost(cell -> UnitWords.find(texts.shown(cell)).isPresent());
  }

  private boolean isMost(Predicate<RawCell> test) {
    return !cells.isEmpty() && 2 * cells.stream().filter(test).count() > cells.size();
  }
}
