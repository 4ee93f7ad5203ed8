package org.wetmil.workbook.read;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Setting;
import org.wetmil.catalogue.StatedRow;
import org.wetmil.catalogue.TableProblem;
import org.wetmil.catalogue.Tables;
import org.wetmil.estimate.Bid;
import org.wetmil.estimate.BidSheet;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.estimate.InputColumn;
import org.wetmil.estimate.Remark;
import org.wetmil.quantity.Count;
import org.wetmil.quantity.UnitSystem;
import org.wetmil.workbook.WorkbookException;
import org.wetmil.workbook.opc.FileName;
import org.wetmil.workbook.opc.Passwords;
import org.wetmil.workbook.read.earlier.EarlierBasis;
import org.wetmil.workbook.read.earlier.EarlierColumns;
import org.wetmil.workbook.read.earlier.EarlierFill;
import org.wetmil.workbook.read.earlier.EarlierSheets;
import org.wetmil.workbook.read.earlier.MarkedColumn;
import org.wetmil.workbook.read.earlier.OurFormulas;
import org.wetmil.workbook.read.grid.Grid;
import org.wetmil.workbook.read.grid.GridReader;
import org.wetmil.workbook.read.grid.MissingResults;
import org.wetmil.workbook.read.grid.OwnMarks;
import org.wetmil.workbook.read.heading.HeadingFinder;
import org.wetmil.workbook.read.heading.HeadingWords;
import org.wetmil.workbook.read.stated.EstimatorTables;
import org.wetmil.workbook.read.stated.OwnWords;
import org.wetmil.workbook.read.stated.TableSheets;
import org.wetmil.workbook.read.table.BidTable;
import org.wetmil.workbook.read.table.RowKind;
import org.wetmil.workbook.read.table.TableFinder;
import org.wetmil.workbook.stream.PackageReader;
import org.wetmil.workbook.stream.SheetPart;

/** Reads an estimator's workbook as a bid. The file is only ever read. */
public final class BidReader {
  /** Rows read of a sheet to see whether it is a bid; headings may be stacked at the last. */
  private static final int ROWS_TO_TELL = HeadingFinder.FIRST_ROWS + 5;

  private final Path file;
  private final PackageReader workbook;
  private final OwnMarks marks;
  private final GridReader grids;
  private final List<Remark> remarks = new ArrayList<>();
  private final EstimatorTables tables;
  private final List<SheetPart> candidates = new ArrayList<>();
  private final HeadingsSeen seen = new HeadingsSeen();
  private final ReadOptions options;
  private HeadingWords words;
  private List<EarlierFill> fills = List.of();
  private List<EarlierBasis.Yours> onBasis = List.of();
  private Set<FilledColumn> notTold = Set.of();

  /** Null where no earlier fill left a Basis, and so no formula of ours can have been replaced. */
  private OurFormulas formulas;

  private BidReader(
      Path file,
      PackageReader workbook,
      MissingResults missing,
      EstimatorTables tables,
      ReadOptions options) {
    this.tables = tables;
    this.file = file;
    this.options = options;
    this.workbook = workbook;
    this.marks = OwnMarks.of(workbook);
    this.grids = new GridReader(workbook, marks, missing);
  }

  /** Reads a workbook in the usual way. */
  public static ReadWorkbook read(Path file) {
    return read(file, ReadOptions.USUAL);
  }

  /**
   * Reads a workbook.
   *
   * @throws WorkbookException when the file cannot be read, or holds no bid line
   */
  public static ReadWorkbook read(Path file, ReadOptions options) {
    return read(ReadableCopy.itself(file, options.passwords()), options);
  }

  /**
   * Reads a workbook in the usual way, also one of Excel 97-2003.
   *
   * @throws WorkbookException when the file cannot be read, or holds no bid line
   */
  public static ReadWorkbook read(ReadableCopy copy) {
    return read(copy, ReadOptions.USUAL);
  }

  private static ReadWorkbook read(ReadableCopy copy, ReadOptions options) {
    try (PackageReader workbook = copy.open();
        MissingResults missing =
            new MissingResults(workbook.zip()::whole, options.mostRowsComputed())) {
      EstimatorTables tables = new EstimatorTables(options.under());
      return new BidReader(copy.file(), workbook, missing, tables, options).read(missing);
    }
  }

  /**
   * The rows that a workbook states for the tables, to be laid under those of a bid.
   *
   * @throws WorkbookException when the file cannot be read, or has no such sheet
   */
  public static Map<Tables, List<StatedRow>> tables(Path file, Passwords passwords) {
    ReadOptions options = ReadOptions.USUAL;
    try (PackageReader workbook = PackageReader.open(file, passwords);
        MissingResults missing =
            new MissingResults(workbook.zip()::whole, options.mostRowsComputed())) {
      EstimatorTables tables = new EstimatorTables(Map.of());
      new BidReader(file, workbook, missing, tables, options).sortSheets();
      Map<Tables, List<StatedRow>> rows = tables.elsewhere(FileName.of(file));
      if (rows.values().stream().allMatch(List::isEmpty)) {
        throw new WorkbookException.NoBid(
            file, "no sheet states tables; name one Coatings, Surfaces, Losses or the like.");
      }
      return rows;
    }
  }

  private ReadWorkbook read(MissingResults missing) {
    sortSheets();
    readOurSheets();
    Catalogue names = tables.over(UnitSystem.US, new ArrayList<>());
    List<BidSheetReader.Result> results = new ArrayList<>();
    candidates.forEach(sheet -> bidOn(sheet, names).ifPresent(results::add));
    if (results.isEmpty()) {
      throw new WorkbookException.NoBid(file, seen.noTable());
    }
    List<BidSheet> sheets =
        results.stream().map(BidSheetReader.Result::sheet).map(this::withEarlier).toList();
    if (sheets.stream().allMatch(sheet -> sheet.lines().isEmpty())) {
      throw new WorkbookException.NoBid(file, seen.noRow(sheets.get(0).name()));
    }
    remarkNotComputed(missing);
    UnitSystem system = tables.units().orElse(sheets.get(0).system());
    List<TableProblem> problems = new ArrayList<>();
    Catalogue catalogue = tables.over(system, problems);
    Bid bid = new Bid(job(), system, catalogue, sheets, problems, remarks);
    Map<RowKind, Integer> rows = new EnumMap<>(RowKind.class);
    results.forEach(
        result -> result.rows().forEach((kind, count) -> rows.merge(kind, count, Integer::sum)));
    return new ReadWorkbook(
        bid,
        results.stream().map(BidSheetReader.Result::layout).toList(),
        marks.filledBefore(),
        sheets.stream()
            .flatMap(sheet -> MarkedColumn.of(marks.filled(), sheet.name()).stream())
            .toList(),
        marks.sheets(),
        grids.ours(),
        rows,
        fills,
        EstimatorTables.asFilled(onBasis, catalogue));
  }

  /** Takes up what is on the sheets of an earlier fill. */
  private void readOurSheets() {
    Optional<String> name = OwnMarks.sheet(workbook, "basis");
    EarlierSheets earlier = new EarlierSheets(workbook);
    for (SheetPart sheet : workbook.sheets()) {
      if (!marks.sheets().contains(sheet.name())) {
        continue;
      }
      Grid grid = grids.whole(sheet);
      remarks.addAll(earlier.written(sheet, grid));
      if (!name.equals(Optional.of(sheet.name()))) {
        continue;
      }
      EarlierBasis basis = new EarlierBasis(grid);
      fills = basis.fills();
      onBasis = basis.all();
      notTold = basis.hasHose() ? Set.of(FilledColumn.FLOW) : Set.of();
      formulas = new OurFormulas(marks, basis, sheet.name());
      grids.tellFormulas(formulas::theirsOn);
      Catalogue known = tables.over(UnitSystem.US, new ArrayList<>());
      basis.yours().forEach(yours -> remarks.add(tables.addOnBasis(yours, known)));
    }
  }

  /** Gives the lines what the cells of an earlier fill hold. */
  private BidSheet withEarlier(BidSheet sheet) {
    EarlierColumns earlier =
        new EarlierColumns(
            sheet,
            marks.filled(),
            grids.values(sheet.name()),
            formulas,
            notTold,
            !options.refresh());
    remarks.addAll(earlier.written());
    return earlier.attached();
  }

  /** Reads the sheets of tables and words, and keeps those that may be bids. */
  private void sortSheets() {
    Map<String, InputColumn> own = new LinkedHashMap<>();
    for (SheetPart sheet : workbook.sheets()) {
      if (marks.sheets().contains(sheet.name())) {
        continue;
      }
      Optional<Tables> table = TableSheets.find(sheet.name());
      if (OwnWords.isSheet(sheet.name())) {
        own.putAll(OwnWords.read(grids.whole(sheet)));
      } else if (table.isPresent()) {
        tables.add(table.get(), grids.whole(sheet));
        candidates.add(sheet);
      } else {
        candidates.add(sheet);
      }
    }
    words = HeadingWords.builtIn(own);
  }

  private Optional<BidSheetReader.Result> bidOn(SheetPart sheet, Catalogue names) {
    Grid top = grids.top(sheet, ROWS_TO_TELL);
    if (!seen.mayHoldBid(top, words)) {
      return Optional.empty();
    }
    Grid grid = grids.whole(sheet);
    List<Remark> found = new ArrayList<>();
    TableFinder finder =
        new TableFinder(grid, marks.withoutOurs(sheet, workbook.tables(sheet)), names, found);
    List<BidTable> all = finder.find(words);
    List<BidTable> bids = finder.bids(all);
    if (TableSheets.find(sheet.name()).isPresent()) {
      bids = bids.stream().filter(BidReader::isSurelyBid).toList();
    } else {
      seen.add(sheet.name(), all);
    }
    if (bids.isEmpty()) {
      return Optional.empty();
    }
    if (sheet.visibility() != SheetPart.Visibility.VISIBLE) {
      remarks.add(
          new Remark(
              "sheet-left-out",
              sheet.name(),
              "",
              "",
              "This sheet is hidden and is not read. Show it if it is part of the bid."));
      return Optional.empty();
    }
    remarks.addAll(found);
    return Optional.of(
        new BidSheetReader(grid, names, remarks)
            .read(bids, tables.units(), marks.columnsOf(sheet.name())));
  }

  /** A sheet of figures has some of a bid's headings; a bid on it has all that it takes. */
  private static boolean isSurelyBid(BidTable table) {
    return table.columns().containsKey(InputColumn.ROOM)
        && table.columns().containsKey(InputColumn.SURFACE)
        && table.columns().containsKey(InputColumn.COATING);
  }

  private void remarkNotComputed(MissingResults missing) {
    missing
        .notComputed()
        .forEach(
            (sheet, addresses) ->
                remarks.add(
                    new Remark(
                        "formula-not-computed",
                        sheet,
                        addresses.iterator().next(),
                        "",
                        ("%s no stored result, from %s on. Open the workbook in"
                                + " the spreadsheet program, save it once and run this again.")
                            .formatted(
                                Count.of(addresses.size(), "formula has", "formulas have"),
                                addresses.iterator().next()))));
  }

  private String job() {
    String name = fills.isEmpty() ? FileName.of(file) : fills.get(0).input();
    int dot = name.lastIndexOf('.');
    String stem = dot > 0 ? name.substring(0, dot) : name;
    return tables.setting(Setting.JOB).orElse(stem);
  }
}
