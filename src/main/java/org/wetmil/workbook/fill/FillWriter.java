package org.wetmil.workbook.fill;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.wetmil.checks.Finding;
import org.wetmil.estimate.FilledBid;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.estimate.job.FilledJob;
import org.wetmil.workbook.WorkbookException;
import org.wetmil.workbook.copy.LeanWorkbook;
import org.wetmil.workbook.copy.LightCopy;
import org.wetmil.workbook.copy.Shaper;
import org.wetmil.workbook.copy.SheetEdit;
import org.wetmil.workbook.fill.beside.Addresses;
import org.wetmil.workbook.fill.beside.BasisBook;
import org.wetmil.workbook.fill.beside.BidSheetShape;
import org.wetmil.workbook.fill.beside.BidTables;
import org.wetmil.workbook.fill.beside.ColumnHeadings;
import org.wetmil.workbook.fill.beside.FillStamp;
import org.wetmil.workbook.fill.beside.Highlights;
import org.wetmil.workbook.fill.beside.Marks;
import org.wetmil.workbook.fill.beside.Notes;
import org.wetmil.workbook.fill.beside.RowCells;
import org.wetmil.workbook.fill.beside.SheetPlan;
import org.wetmil.workbook.fill.page.BasisSheet;
import org.wetmil.workbook.fill.page.FindingsSheet;
import org.wetmil.workbook.fill.page.OwnSheets;
import org.wetmil.workbook.look.Look;
import org.wetmil.workbook.read.ReadWorkbook;
import org.wetmil.workbook.stream.CellAddress;
import org.wetmil.workbook.stream.CellRange;

/** Writes a filled workbook: a copy of the estimator's, with filled columns and sheets of ours. */
public final class FillWriter {
  private static final Comparator<Finding> WORST_FIRST =
      Comparator.comparing(Finding::severity).reversed();

  private final ReadWorkbook read;
  private final FilledJob job;
  private final FilledBid filled;
  private final List<Finding> worstFirst;
  private final Map<String, Map<Integer, List<Finding>>> byRow;
  private final FillStamp stamp;
  private final List<SheetPlan> plans;
  private final Addresses addresses;

  /**
   * @param findings in the order of the bid
   */
  public FillWriter(ReadWorkbook read, FilledJob job, List<Finding> findings, FillStamp stamp) {
    this.read = read;
    this.job = job;
    this.filled = job.filled();
    this.stamp = stamp;
    this.worstFirst = findings.stream().sorted(WORST_FIRST).toList();
    this.byRow =
        findings.stream()
            .filter(finding -> finding.spot().row() > 0)
            .collect(
                Collectors.groupingBy(
                    finding -> finding.spot().sheet(),
                    Collectors.groupingBy(finding -> finding.spot().row())));
    this.plans = plans();
    this.addresses = new Addresses(plans);
  }

  /**
   * Writes the workbook; the input stays as it is, and the output is whole or absent.
   *
   * @param copy begun of the workbook that was read
   * @param lastLook asked before the output is put in place; what it throws keeps it away
   */
  public void write(LightCopy copy, Runnable lastLook) {
    requireRoom(copy.input());
    copy.write(new FillShaper(lastLook));
  }

  private void requireRoom(Path input) {
    for (SheetPlan plan : plans) {
      for (int first : plan.firstColumns()) {
        if (first + plan.columns().size() > CellAddress.MAX_COLUMNS) {
          throw new WorkbookException.Unwritable(
              input,
              "the filled columns find no room on sheet \"%s\", since something stands as far right"
                      .formatted(plan.sheet())
                  + " as column %s; move it nearer to the table."
                      .formatted(CellAddress.letters(first - 1)),
              null);
        }
      }
    }
  }

  private final class FillShaper implements Shaper {
    private final Runnable lastLook;

    private FillShaper(Runnable lastLook) {
      this.lastLook = lastLook;
    }

    @Override
    public List<SheetEdit> shape(LeanWorkbook workbook) {
      return FillWriter.this.shape(workbook);
    }

    @Override
    public boolean hides(String name) {
      return Marks.isHidden(name);
    }

    @Override
    public void beforeItIsPublished() {
      lastLook.run();
    }
  }

  /** The cell that a finding is about, as in F12; empty when it is about none. */
  public String address(Finding finding) {
    return addresses.of(finding);
  }

  private List<SheetPlan> plans() {
    Map<String, FilledBid.FilledSheet> sheets = new HashMap<>();
    filled.sheets().forEach(sheet -> sheets.put(sheet.sheet().name(), sheet));
    return read.layouts().stream()
        .map(
            layout ->
                new SheetPlan(
                    layout,
                    sheets.get(layout.sheet()),
                    FilledColumn.shown(filled.bid().catalogue())))
        .toList();
  }

  private List<SheetEdit> shape(LeanWorkbook workbook) {
    clear(workbook);
    // to parse each takes a fifth of the time; tests compute every formula of every sample
    workbook.setCellFormulaValidation(false);
    Look look = new Look(workbook);

    BasisBook book = new BasisBook(filled);
    OwnSheets sheets = OwnSheets.create(workbook, job);
    // Basis first: formulas elsewhere use the names that it defines
    new BasisSheet(sheets.basis(), look, filled, plans, book)
        .write(stamp, read.fills(), sheets.renamed());
    new FindingsSheet(sheets.findings(), look, addresses).write(workbook, worstFirst);
    sheets.write(workbook, look, book, plans, worstFirst, stamp);
    Marks.spans(workbook);
    Marks.stamp(workbook, stamp);

    List<SheetEdit> edits = new ArrayList<>();
    Set<String> notPlanned = new TreeSet<>(read.ourCells().keySet());
    for (SheetPlan plan : plans) {
      XSSFSheet sheet = workbook.getSheet(plan.sheet());
      BidSheetShape.shape(sheet, plan, worst(plan));
      ColumnHeadings headings = new ColumnHeadings(plan.system());
      BidTables.grow(sheet, plan, headings, book);
      RowCells cells =
          new RowCells(plan, headings, book, byRow.getOrDefault(plan.sheet(), Map.of()), look);
      edits.add(new SheetEdit(plan.sheet(), cells, earlier(plan.sheet())));
    }
    plans.forEach(plan -> notPlanned.remove(plan.sheet()));
    notPlanned.forEach(sheet -> edits.add(SheetEdit.dropping(sheet, earlier(sheet))));
    return edits;
  }

  /** The cells that an earlier fill wrote. */
  private SheetEdit.CellTest earlier(String sheet) {
    List<CellRange> ranges = read.ourCells().getOrDefault(sheet, List.of());
    return (row, column) -> {
      for (CellRange range : ranges) {
        if (range.contains(row, column)) {
          return true;
        }
      }
      return false;
    };
  }

  private List<Finding> worst(SheetPlan plan) {
    return worstFirst.stream()
        .filter(finding -> finding.spot().sheet().equals(plan.sheet()))
        .toList();
  }

  /** Takes away what an earlier fill left. */
  private void clear(XSSFWorkbook workbook) {
    Marks.clear(workbook, read.ourSheets());
    if (read.filledBefore()) {
      for (Sheet each : workbook) {
        XSSFSheet sheet = (XSSFSheet) each;
        Highlights.clear(sheet);
        Notes.clear(sheet);
        read.ourCells()
            .getOrDefault(sheet.getSheetName(), List.of())
            .forEach(range -> BidSheetShape.clear(sheet, range.firstColumn(), range.lastColumn()));
      }
    }
  }
}
