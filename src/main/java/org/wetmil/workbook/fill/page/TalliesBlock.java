package org.wetmil.workbook.fill.page;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.wetmil.checks.Finding;
import org.wetmil.checks.Severity;
import org.wetmil.estimate.FilledBid;
import org.wetmil.estimate.FilledLine;
import org.wetmil.workbook.look.Canvas;
import org.wetmil.workbook.look.FindingsList;
import org.wetmil.workbook.look.Look;
import org.wetmil.workbook.look.Texts;
import org.wetmil.workbook.stream.SheetReference;

/** How many lines count, and how many findings there are. */
final class TalliesBlock {
  private final Canvas page;
  private final Look look;
  private final FilledBid filled;

  TalliesBlock(Canvas page, Look look, FilledBid filled) {
    this.page = page;
    this.look = look;
    this.filled = filled;
  }

  /** Returns the row after it, as the next does. */
  int lines(int row) {
    long all = filled.lines().count();
    long counted = filled.lines().filter(FilledLine::isCounted).count();
    long leftOut = filled.lines().filter(FilledLine::isLeftOut).count();
    heading(row, "Lines of the bid, when filled");
    int at = row + 1;
    at = count(at, "Counted in these totals", counted);
    at = count(at, "Left out by Include", leftOut);
    return count(at, "Not filled, so in no total", all - counted - leftOut);
  }

  int findings(int row, List<Finding> findings, String sheet) {
    heading(row, "Findings");
    int at = row + 1;
    for (Severity severity : List.of(Severity.STOP, Severity.WARNING, Severity.NOTE)) {
      long count = findings.stream().filter(each -> each.severity() == severity).count();
      String word = severity.name().toLowerCase(Locale.ROOT);
      page.text(at, 0, label(severity), look.text(false));
      String formula =
          findings.size() > FindingsList.MOST
              ? null
              : "COUNTIF(" + SheetReference.quoted(sheet) + "!$A:$A," + Texts.quoted(word) + ")";
      page.formula(at++, PlacesBlock.HOURS, formula, count, look.number(0));
    }
    Optional<String> leftOut = FindingsList.leftOut(findings.size());
    if (leftOut.isPresent()) {
      page.text(at++, 0, leftOut.get(), look.text(false));
    }
    return at;
  }

  private static String label(Severity severity) {
    return switch (severity) {
      case STOP -> "Stops: the line could not be filled";
      case WARNING -> "Warnings: out of range, look before bidding";
      case NOTE -> "Notes";
    };
  }

  private int count(int row, String label, long count) {
    page.text(row, 0, label, look.text(false));
    page.number(row, PlacesBlock.HOURS, count, look.number(0));
    return row + 1;
  }

  private void heading(int row, String text) {
    page.text(row, 0, text, look.band(false)).across(row, 0, PlacesBlock.HOURS, look.band(false));
  }
}
