package org.wetmil.workbook.read.earlier;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.formula.Written;
import org.wetmil.workbook.read.grid.OwnMarks;
import org.wetmil.workbook.stream.RawCell;

/**
 * Tells the formulas of an earlier fill from those that somebody put in their place, by the codes
 * on Basis. A formula of ours that was copied there from another row counts as ours.
 */
public final class OurFormulas {
  private final OwnMarks marks;
  private final EarlierBasis basis;
  private final String basisName;
  private final Map<FilledColumn, Set<String>> codes;

  public OurFormulas(OwnMarks marks, EarlierBasis basis, String basisName) {
    this.marks = marks;
    this.basis = basis;
    this.basisName = basisName;
    this.codes = basis.formulaCodes();
  }

  /**
   * Looks through the filled cells of one sheet that hold formulas, from the top down, and gives
   * back those that are not ours.
   */
  public Function<RawCell, Optional<RawCell>> theirsOn(String sheet) {
    return codes.isEmpty() ? cell -> Optional.empty() : new Sheet(sheet)::theirs;
  }

  /** A formula in a filled cell, so that the next fill can write it where the cell then is. */
  Written written(RawCell cell, MarkedColumn column) {
    return new Sheet(column.sheet()).written(cell, column);
  }

  private final class Sheet {
    private final List<MarkedColumn> columns;
    private final Map<String, RawCell> shared = new HashMap<>();

    private Sheet(String name) {
      this.columns = MarkedColumn.of(marks.filled(), name);
    }

    private Optional<RawCell> theirs(RawCell found) {
      RawCell cell = unshared(found);
      Optional<MarkedColumn> column = MarkedColumn.above(columns, cell);
      if (column.isEmpty() || cell.formula().isEmpty()) {
        return Optional.empty();
      }
      Set<String> known = codes.getOrDefault(column.get().column(), Set.of());
      boolean ours =
          known.contains(FormulaShapes.TOO_MANY)
              || known.contains(
                  FormulaShapes.code(
                      FormulaText.of(cell.formula()), ref -> role(ref, cell, column.get())));
      return ours ? Optional.empty() : Optional.of(cell);
    }

    /** Of formulas that share one text, only the first holds it. */
    private RawCell unshared(RawCell cell) {
      if (cell.shared() == null) {
        return cell;
      }
      RawCell first = shared.putIfAbsent(cell.shared(), cell);
      if (first == null || !cell.formula().isEmpty()) {
        return cell;
      }
      return cell.with(
          FormulaText.of(first.formula())
              .movedBy(cell.row() - first.row(), cell.column() - first.column()));
    }

    private String role(FormulaText.Ref ref, RawCell cell, MarkedColumn column) {
      if (ref.sheet().equalsIgnoreCase(basisName)) {
        return basis
            .figure(ref.at())
            .map(figure -> FormulaShapes.role(figure.table(), figure.heading()))
            .orElse(ref.text());
      }
      if (!ref.sheet().isEmpty()) {
        return ref.text();
      }
      // a cell of the estimator's may be that of another row, which is merged with this row's
      return ours(ref, column)
          .map(own -> ref.at().row() == cell.row() ? FormulaShapes.role(own) : ref.text())
          .orElse(FormulaShapes.CELL);
    }

    /** The filled column of the same table that a reference is to. */
    private Optional<FilledColumn> ours(FormulaText.Ref ref, MarkedColumn column) {
      return columns.stream()
          .filter(each -> each.slot() == column.slot())
          .filter(each -> each.range().firstColumn() == ref.at().column())
          .map(MarkedColumn::column)
          .findFirst();
    }

    private Written written(RawCell cell, MarkedColumn column) {
      List<Written.Part> parts = new ArrayList<>();
      for (FormulaText.Piece piece : FormulaText.of(cell.formula()).pieces()) {
        Optional<Written.Part> part =
            piece instanceof FormulaText.Ref ref
                ? part(ref, cell, column)
                : Optional.of(new Written.Text(piece.text()));
        if (part.isEmpty()) {
          return new Written(cell.formula(), List.of());
        }
        parts.add(part.get());
      }
      return new Written(cell.formula(), parts);
    }

    /** Empty for what the next fill makes anew elsewhere. */
    private Optional<Written.Part> part(FormulaText.Ref ref, RawCell cell, MarkedColumn column) {
      if (ref.sheet().equalsIgnoreCase(basisName)) {
        return basis.figure(ref.at()).map(figure -> new Written.At(figure, ""));
      }
      if (marks.sheets().stream().anyMatch(ref.sheet()::equalsIgnoreCase)) {
        return Optional.empty();
      }
      Optional<FilledColumn> ours = ref.sheet().isEmpty() ? ours(ref, column) : Optional.empty();
      if (ours.isEmpty()) {
        return Optional.of(new Written.Text(ref.text()));
      }
      boolean ownRow = ref.at().row() == cell.row();
      String row = ownRow ? "" : Integer.toString(ref.at().row() + 1);
      return Optional.of(new Written.At(ours.get(), row));
    }
  }
}
