package org.wetmil.workbook.read;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.wetmil.catalogue.Quoted;
import org.wetmil.workbook.read.grid.Grid;
import org.wetmil.workbook.read.heading.Heading;
import org.wetmil.workbook.read.heading.HeadingFinder;
import org.wetmil.workbook.read.heading.HeadingWords;
import org.wetmil.workbook.read.table.BidTable;

/** What was seen of headings, to be told when no bid is found. */
final class HeadingsSeen {
  private static final String LOOKED_FOR =
      "Looked for: Room or Surface; one of Length, Width, Height, Area or Count; and Surface or"
          + " Coating (or other words for them), in one row among the first "
          + HeadingFinder.FIRST_ROWS
          + ". Your own words for columns can stand beside these on a sheet named Headings.";

  /** More of them would make a sentence that nobody reads. */
  private static final int MOST_NAMED = 8;

  private String bestSheet = "";
  private BidTable best;

  /** Whether a sheet has the beginnings of a bid's headings. */
  boolean mayHoldBid(Grid top, HeadingWords words) {
    return new HeadingFinder(top, words).mayHold();
  }

  void add(String sheet, List<BidTable> tables) {
    Optional<BidTable> most =
        tables.stream().max(Comparator.comparingInt(table -> table.columns().size()));
    if (most.isPresent() && (best == null || most.get().columns().size() > best.columns().size())) {
      best = most.get();
      bestSheet = sheet;
    }
  }

  String noTable() {
    if (best == null) {
      return "no table with the headings of a bid was found. " + LOOKED_FOR;
    }
    String found =
        best.columns().entrySet().stream()
            .map(each -> told(each.getKey().heading(), each.getValue()))
            .collect(Collectors.joining(", "));
    return "no table with the headings of a bid was found. The nearest is in row %s of sheet \"%s\": %s%s. "
            .formatted(best.block().headingRow() + 1, bestSheet, found, unknown())
        + LOOKED_FOR;
  }

  private String unknown() {
    List<String> unknown =
        best.block().headings().stream()
            .filter(heading -> !best.columns().containsValue(heading))
            .map(heading -> Quoted.of(heading.text()))
            .toList();
    if (unknown.isEmpty()) {
      return "";
    }
    int more = unknown.size() - MOST_NAMED;
    return "; not known: "
        + unknown.stream().limit(MOST_NAMED).collect(Collectors.joining(", "))
        + (more > 0 ? " and " + more + " more" : "");
  }

  String noRow(String sheet) {
    return ("no bid line was found under the headings on sheet \"%s\". A line names a surface or a"
            + " coating, or states a size.")
        .formatted(sheet);
  }

  private static String told(String column, Heading heading) {
    return heading.text().equalsIgnoreCase(column)
        ? column
        : column + " (" + Quoted.of(heading.text()) + ")";
  }
}
