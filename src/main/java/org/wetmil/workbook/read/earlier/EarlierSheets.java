package org.wetmil.workbook.read.earlier;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.wetmil.catalogue.Quoted;
import org.wetmil.checks.Check;
import org.wetmil.checks.Checks;
import org.wetmil.estimate.Remark;
import org.wetmil.workbook.read.grid.Grid;
import org.wetmil.workbook.read.grid.GridRow;
import org.wetmil.workbook.read.grid.OwnMarks;
import org.wetmil.workbook.stream.CellAddress;
import org.wetmil.workbook.stream.CellRange;
import org.wetmil.workbook.stream.PackageReader;
import org.wetmil.workbook.stream.RawCell;
import org.wetmil.workbook.stream.SheetPart;

/**
 * What somebody wrote on a sheet that an earlier fill added: beside or below what the fill wrote,
 * in a note on a cell, or over a text of the list of findings that the check alone decides. Other
 * texts that were changed are not told from ours.
 */
public final class EarlierSheets {
  private static final String CHECK = "Check";
  private static final String WHY = "Why";
  private static final String WHAT_TO_DO = "What to do";

  private final PackageReader workbook;
  private final List<Remark> remarks = new ArrayList<>();

  public EarlierSheets(PackageReader workbook) {
    this.workbook = workbook;
  }

  /** What was written on a sheet of ours. */
  public List<Remark> written(SheetPart sheet, Grid grid) {
    remarks.clear();
    OwnMarks.span(workbook, sheet.name()).ifPresent(span -> outside(grid, span));
    changed(grid);
    workbook
        .notes(sheet)
        .forEach((address, text) -> remark(sheet.name(), address, text, "in a note on "));
    return List.copyOf(remarks);
  }

  private void outside(Grid grid, CellRange span) {
    for (GridRow row : grid.rows()) {
      for (RawCell cell : row.cells()) {
        if (!span.contains(cell.row(), cell.column())) {
          remark(grid, cell);
        }
      }
    }
  }

  /** On the list of findings, why and what to do stand as the check of the row has them. */
  private void changed(Grid grid) {
    Map<String, Integer> headings = new HashMap<>();
    for (GridRow row : grid.rows(0, 0)) {
      row.cells()
          .forEach(cell -> headings.put(grid.text(cell.row(), cell.column()), cell.column()));
    }
    if (!headings.keySet().containsAll(List.of(CHECK, WHY, WHAT_TO_DO))) {
      return;
    }
    for (GridRow row : grid.rows(1, grid.lastRow())) {
      Checks.find(grid.text(row.row(), headings.get(CHECK)))
          .ifPresent(check -> changed(grid, row.row(), headings, check));
    }
  }

  private void changed(Grid grid, int row, Map<String, Integer> headings, Check check) {
    Map.of(WHY, check.why(), WHAT_TO_DO, check.advice())
        .forEach(
            (heading, text) -> {
              RawCell cell = grid.at(row, headings.get(heading));
              String found = grid.texts().shown(cell).strip();
              if (!found.equals(text)) {
                remark(grid, cell);
              }
            });
  }

  private void remark(Grid grid, RawCell cell) {
    String address = new CellAddress(cell.row(), cell.column()).toString();
    remark(grid.sheet(), address, grid.texts().shown(cell), "in ");
  }

  private void remark(String sheet, String address, String text, String where) {
    String plain = text.strip().replaceAll("[\\s\\p{Cntrl}]+", " ");
    if (!plain.isEmpty()) {
      remarks.add(
          new Remark(
              "typed-on-our-sheet",
              sheet,
              "",
              plain,
              "%s was written %s%s of a sheet that is made anew."
                  .formatted(Quoted.of(plain), where, address)));
    }
  }
}
