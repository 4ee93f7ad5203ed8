package org.wetmil.jobs.explain;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.wetmil.checks.Checks;
import org.wetmil.checks.Finding;
import org.wetmil.estimate.Estimator;
import org.wetmil.estimate.FilledBid;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.estimate.explain.Explanation;
import org.wetmil.workbook.WorkbookException;
import org.wetmil.workbook.fill.beside.FilledCells;
import org.wetmil.workbook.opc.Passwords;
import org.wetmil.workbook.read.BidReader;
import org.wetmil.workbook.read.OurSheetCell;
import org.wetmil.workbook.read.ReadOptions;
import org.wetmil.workbook.read.ReadWorkbook;
import org.wetmil.workbook.read.SheetLayout;
import org.wetmil.workbook.stream.CellAddress;

/** Explains one line of a workbook, filled or not: read, compute, find the line, tell. */
public final class ExplainJob {
  /** Filled columns of words: for them the whole line is told. */
  private static final Set<FilledColumn> IN_WORDS =
      Set.of(FilledColumn.COATING_USED, FilledColumn.FINDINGS);

  private final ReadOptions options;

  public ExplainJob(Passwords passwords) {
    this(ReadOptions.USUAL.with(passwords));
  }

  private ExplainJob(ReadOptions options) {
    this.options = options;
  }

  /** The same with the tables of another workbook laid under those of the bid. */
  public ExplainJob over(Path tables) {
    return new ExplainJob(options.over(BidReader.tables(tables, options.passwords())));
  }

  /**
   * Explains the line of a cell.
   *
   * @return lines for the user
   * @throws WorkbookException when the workbook cannot be used, or the cell belongs to no bid line
   */
  public List<String> explain(Path file, Asked asked) {
    ReadWorkbook read = BidReader.read(file, options);
    FilledBid filled = Estimator.fill(read.bid());
    FilledCells cells = new FilledCells(read, filled);
    Asked meant = meant(file, asked, read);
    FilledCells.Place place = place(file, meant, read, cells);
    Optional<FilledColumn> figure =
        meant.column().flatMap(place::filledAt).filter(column -> !IN_WORDS.contains(column));
    Explanation explanation =
        figure
            .map(column -> Explanation.of(read.bid(), place.line(), column))
            .orElseGet(() -> Explanation.of(read.bid(), place.line()));
    List<Finding> findings =
        Checks.run(filled).stream().filter(finding -> isAbout(finding, meant, place)).toList();
    return new ExplainText(file, read.bid(), place, explanation, findings, read.filledBefore())
        .lines(meant, figure);
  }

  private static boolean isAbout(Finding finding, Asked meant, FilledCells.Place place) {
    return finding.spot().sheet().equals(meant.sheet())
        && finding.spot().row() == meant.row()
        && finding.room().equals(place.room())
        && finding.surface().equals(place.surface());
  }

  /** The cell on a bid sheet that is meant, the sheet spelt as in the workbook. */
  private Asked meant(Path file, Asked asked, ReadWorkbook read) {
    List<String> bidSheets = read.layouts().stream().map(SheetLayout::sheet).toList();
    if (asked.sheet().isEmpty()) {
      if (bidSheets.size() == 1) {
        return new Asked(bidSheets.get(0), asked.row(), asked.column());
      }
      throw new WorkbookException.NoLine(
          file,
          "lines stand on the sheets %s; name one of them, as in %s."
              .formatted(Reply.names(bidSheets), Reply.reference(bidSheets.get(0), asked)));
    }
    Optional<String> bidSheet = Reply.find(bidSheets, asked.sheet());
    if (bidSheet.isPresent()) {
      return new Asked(bidSheet.get(), asked.row(), asked.column());
    }
    String own =
        Reply.find(read.ourSheets(), asked.sheet())
            .orElseThrow(() -> new WorkbookException.NoLine(file, Reply.noSheet(asked, bidSheets)));
    CellAddress at = new CellAddress(asked.row() - 1, asked.column().orElse(0));
    return OurSheetCell.follow(file, options.passwords(), own, at, Set.copyOf(bidSheets))
        .map(cell -> new Asked(cell.sheet(), cell.at().row() + 1, followed(asked, cell)))
        .orElseThrow(() -> new WorkbookException.NoLine(file, Reply.ownSheet(asked, own)));
  }

  private static Optional<Integer> followed(Asked asked, OurSheetCell.Cell cell) {
    return asked.column().map(any -> cell.at().column());
  }

  private static FilledCells.Place place(
      Path file, Asked meant, ReadWorkbook read, FilledCells cells) {
    List<FilledCells.Place> lines = cells.at(meant.sheet(), meant.row());
    if (lines.isEmpty()) {
      throw new WorkbookException.NoLine(file, Reply.noLine(meant, read));
    }
    if (lines.size() == 1) {
      return lines.get(0);
    }
    return meant
        .column()
        .flatMap(column -> lines.stream().filter(line -> line.has(column)).findFirst())
        .orElseThrow(
            () ->
                new WorkbookException.NoLine(
                    file,
                    "row %d of sheet %s holds %d lines side by side; name a cell of one, as in %s."
                        .formatted(
                            meant.row(),
                            meant.sheet(),
                            lines.size(),
                            lines.stream()
                                .map(line -> line.firstCell())
                                .collect(Collectors.joining(" or ")))));
  }
}
