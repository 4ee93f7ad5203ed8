package org.wetmil.workbook.read.items;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.StatedRow;
import org.wetmil.catalogue.TableProblem;
import org.wetmil.catalogue.Tables;
import org.wetmil.ledger.ItemName;
import org.wetmil.quantity.UnitSystem;
import org.wetmil.workbook.WorkbookException;
import org.wetmil.workbook.opc.FileName;
import org.wetmil.workbook.read.ReadOptions;
import org.wetmil.workbook.read.ReadableCopy;
import org.wetmil.workbook.read.grid.Grid;
import org.wetmil.workbook.read.grid.GridReader;
import org.wetmil.workbook.read.grid.GridRow;
import org.wetmil.workbook.read.grid.MissingResults;
import org.wetmil.workbook.read.grid.OwnMarks;
import org.wetmil.workbook.read.stated.EstimatorTables;
import org.wetmil.workbook.read.stated.TableSheets;
import org.wetmil.workbook.read.words.Words;
import org.wetmil.workbook.stream.CellAddress;
import org.wetmil.workbook.stream.PackageReader;
import org.wetmil.workbook.stream.RawCell;
import org.wetmil.workbook.stream.SheetPart;

/** Reads which coating an item is from sheets of a workbook. The file is only ever read. */
public final class ItemSheets {
  /** What two spellings of the sheet's name have in common. */
  private static final String NAME = "item";

  /** A table of two columns is not looked for further to the right. */
  private static final int LAST_COLUMN = 255;

  private final String file;
  private final PackageReader workbook;
  private final GridReader grids;

  private ItemSheets(Path file, PackageReader workbook, MissingResults missing) {
    this.file = FileName.of(file);
    this.workbook = workbook;
    this.grids = new GridReader(workbook, OwnMarks.of(workbook), missing);
  }

  /**
   * The bookkeeper's own workbook.
   *
   * @param settings the built-in tables with its Settings sheet laid over them
   * @param problems cells of that sheet that cannot be used
   */
  public record OwnBook(List<ItemName> items, Catalogue settings, List<TableProblem> problems) {
    public OwnBook {
      items = List.copyOf(items);
      problems = List.copyOf(problems);
    }
  }

  /** The rows of a bid's sheet Items; none when it has no such sheet. */
  public static List<ItemName> of(ReadableCopy bid) {
    try (PackageReader workbook = bid.open()) {
      List<SheetPart> sheets =
          workbook.sheets().stream().filter(sheet -> Words.key(sheet.name()).equals(NAME)).toList();
      if (sheets.isEmpty()) {
        return List.of();
      }
      try (MissingResults missing = results(workbook)) {
        ItemSheets reader = new ItemSheets(bid.file(), workbook, missing);
        return sheets.stream()
            .flatMap(sheet -> reader.items(sheet).stream())
            .flatMap(List::stream)
            .toList();
      }
    }
  }

  /**
   * The bookkeeper's own workbook: every sheet with the headings Item and Coating, and Settings.
   *
   * @throws WorkbookException when the file cannot be read, or holds neither
   */
  public static OwnBook own(Path file) {
    try (PackageReader workbook = ReadableCopy.of(file).open();
        MissingResults missing = results(workbook)) {
      return new ItemSheets(file, workbook, missing).own();
    }
  }

  private static MissingResults results(PackageReader workbook) {
    return new MissingResults(workbook.zip()::whole, ReadOptions.USUAL.mostRowsComputed());
  }

  private OwnBook own() {
    EstimatorTables tables = new EstimatorTables(Map.of());
    List<ItemName> items = new ArrayList<>();
    Set<String> seen = new LinkedHashSet<>();
    boolean found = false;
    for (SheetPart sheet : workbook.sheets()) {
      seen.add(sheet.name());
      if (TableSheets.find(sheet.name()).equals(Optional.of(Tables.SETTINGS))) {
        tables.add(Tables.SETTINGS, grids.whole(sheet));
        found = true;
      } else {
        Optional<List<ItemName>> rows = items(sheet);
        found |= rows.isPresent();
        rows.ifPresent(items::addAll);
      }
    }
    if (!found) {
      throw new WorkbookException.NoItems(workbook.zip().file(), seen);
    }
    Map<Tables, List<StatedRow>> rows = tables.elsewhere(file);
    List<TableProblem> problems = new ArrayList<>();
    Catalogue settings = Catalogue.builtIn().with(rows, UnitSystem.US, problems);
    return new OwnBook(items, settings, problems);
  }

  private Optional<List<ItemName>> items(SheetPart sheet) {
    Grid grid = grids.whole(sheet);
    List<ItemName.TextRow> rows = new ArrayList<>();
    for (GridRow row : grid.rows()) {
      List<String> texts = new ArrayList<>();
      for (RawCell cell : row.cells()) {
        if (cell.column() > LAST_COLUMN) {
          break;
        }
        while (texts.size() < cell.column()) {
          texts.add("");
        }
        texts.add(grid.text(row.row(), cell.column()));
      }
      String at = sheet.name() + "!" + new CellAddress(row.row(), 0);
      rows.add(new ItemName.TextRow(file + ", " + at, texts));
    }
    return ItemName.under(rows);
  }
}
