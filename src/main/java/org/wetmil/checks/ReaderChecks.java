package org.wetmil.checks;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Kind;
import org.wetmil.catalogue.Quoted;
import org.wetmil.catalogue.TableProblem;
import org.wetmil.catalogue.Tables;
import org.wetmil.estimate.FilledBid;
import org.wetmil.estimate.FilledLine;
import org.wetmil.estimate.Remark;

/** What was seen while the workbook was read. */
final class ReaderChecks {
  static final List<Check> ALL =
      List.of(
          new Check(
              "table-value",
              Severity.WARNING,
              "A cell of your tables cannot be used",
              "The built-in figure stays in its place.",
              Kind.HOUSE,
              "the ranges of the tables",
              "Type it as the message says.",
              Rule.ofBid(bid -> bid.bid().problems().stream().map(each -> problem(bid, each)))),
          remark(
              "heading-twice",
              Severity.WARNING,
              "Two columns have one heading",
              "Only one of them is read.",
              "Rename one of them."),
          remark(
              "heading-ambiguous",
              Severity.WARNING,
              "A heading can mean several columns",
              "A column that is not understood is not read.",
              "Name the column with one of the words offered."),
          remark(
              "heading-read-as",
              Severity.NOTE,
              "A heading is understood from what stands under it",
              "Its word alone could mean several columns.",
              "Rename the column if it is meant otherwise."),
          remark(
              "heading-not-read",
              Severity.NOTE,
              "Columns are not read",
              "What stands under a heading that is not known is in no figure.",
              "Name the columns by the headings of a bid, if figures are to follow them."),
          remark(
              "unit-from-text",
              Severity.NOTE,
              "The units are taken from a line of text",
              "No heading says them, and the text is the best there is.",
              "Write the unit in a heading if it is another."),
          remark(
              "units-mixed",
              Severity.WARNING,
              "Sizes are typed in two families of units, some without any",
              "Metres taken for feet, or feet for metres, make the area ten times wrong.",
              "Write the unit in the heading, as in Length (ft), or in each cell."),
          remark(
              "table-left-out",
              Severity.WARNING,
              "A table of a sheet is not read",
              "What stands in it is in no figure.",
              "Move its lines into the table that is read, if they are part of the bid."),
          remark(
              "row-left-out",
              Severity.WARNING,
              "Rows below a table are not read",
              "What stands in them is in no figure.",
              "Move them up to the lines of the table, if they are part of the bid."),
          remark(
              "section-titles",
              Severity.NOTE,
              "Titles above the lines are read as rooms or floors",
              "No line names its own, and a title may be something else.",
              "Fill in a column Room or Floor if the titles are something else."),
          remark(
              "rows-hidden",
              Severity.NOTE,
              "Hidden rows are counted",
              "A row that is out of sight is still in the totals.",
              "Delete the rows, or write no under Include, if they are not part of the bid."),
          remark(
              "sheet-left-out",
              Severity.NOTE,
              "A hidden sheet is not read",
              "What stands on it is in no figure.",
              "Show the sheet, if it is part of the bid."),
          remark(
              "columns-moved",
              Severity.NOTE,
              "The filled columns stand farther to the right",
              "Something of yours stands beside the table and is not written over.",
              "Move it elsewhere to have the columns beside the table."),
          remark(
              "formula-not-computed",
              Severity.WARNING,
              "A formula has no stored value",
              "A workbook that was never calculated holds formulas without values.",
              "Open the workbook in the spreadsheet program and save it once."));

  private ReaderChecks() {}

  /** A check that reports what the reader saw. */
  static Check remark(String id, Severity severity, String title, String why, String advice) {
    return new Check(
        id,
        severity,
        title,
        why,
        Kind.HOUSE,
        "seen while reading",
        advice,
        Rule.ofBid(bid -> remarks(bid, id)));
  }

  private static Stream<Fault> remarks(FilledBid bid, String id) {
    List<Remark> own =
        bid.bid().remarks().stream().filter(remark -> remark.check().equals(id)).toList();
    if (own.isEmpty()) {
      return Stream.empty();
    }
    Set<Object> lines = new HashSet<>();
    bid.lines().map(FilledLine::line).forEach(line -> lines.add(List.of(line.sheet(), line.row())));
    return own.stream().map(remark -> fault(remark, lines));
  }

  /** A remark about a cell of a bid line stands in its row. */
  private static Fault fault(Remark remark, Set<Object> lines) {
    String digits = remark.address().replaceAll("\\D", "");
    int row = digits.isEmpty() ? 0 : Integer.parseInt(digits);
    boolean isLine = lines.contains(List.of(remark.sheet(), row));
    return Fault.at(
        new Spot(remark.sheet(), isLine ? row : 0, null, remark.address()),
        remark.raw().isEmpty() ? "" : Quoted.of(remark.raw()),
        "",
        remark.message());
  }

  private static Fault problem(FilledBid bid, TableProblem problem) {
    String raw = Quoted.of(problem.raw());
    String expected = problem.expected().replaceAll("\\.$", "");
    return Fault.at(
        new Spot(problem.sheet(), 0, null, problem.address()),
        raw,
        expected,
        "%s%s on %s cannot be used%s; expected %s."
            .formatted(
                raw,
                problem.name().isEmpty() ? "" : " for " + problem.name(),
                problem.table(),
                stays(bid, problem),
                expected));
  }

  /** What counts in the place of a setting or a rate that cannot be used. */
  private static String stays(FilledBid bid, TableProblem problem) {
    Catalogue catalogue = bid.bid().catalogue();
    return Tables.find(problem.table())
        .filter(table -> table == Tables.SETTINGS || table == Tables.LABOUR_RATES)
        .flatMap(table -> catalogue.table(table).find(problem.name()))
        .map(row -> row.get(row.spec().name().equals(Tables.SETTINGS.title()) ? "Value" : "Rate"))
        .map(
            entry ->
                !entry.isStated()
                    ? ", so none is stated"
                    : ", so "
                        + (Double.isNaN(entry.number())
                            ? entry.text()
                            : Say.of(entry.quantity(), entry.number(), bid.bid().system()))
                        + " stays")
        .orElse("");
  }
}
