package org.wetmil.workbook.read;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.wetmil.catalogue.Quoted;
import org.wetmil.estimate.Remark;
import org.wetmil.workbook.read.grid.Grid;
import org.wetmil.workbook.read.heading.ChosenColumns;
import org.wetmil.workbook.read.heading.Heading;
import org.wetmil.workbook.read.table.BidTable;
import org.wetmil.workbook.stream.CellAddress;

/** Columns of a table that hold something and that no input is taken from, told in one remark. */
record UnreadColumns(Grid grid, BidTable table, List<Integer> lineRows, Set<Integer> ourColumns) {
  private static final int NAMED = 8;

  Optional<Remark> remark() {
    List<Heading> unread = table.block().headings().stream().filter(this::isUnread).toList();
    if (unread.isEmpty()) {
      return Optional.empty();
    }
    Heading first = unread.get(0);
    String named =
        unread.stream()
            .limit(NAMED)
            .map(each -> Quoted.of(each.text()))
            .collect(Collectors.joining(", "));
    String more = unread.size() > NAMED ? " and %s more".formatted(unread.size() - NAMED) : "";
    return Optional.of(
        new Remark(
            "heading-not-read",
            grid.sheet(),
            address(first),
            first.text(),
            ("Nothing is taken from what stands under %s%s. If a figure is to follow it, use the"
                    + " heading of a column of the bid, such as Floor, Condition or Openings.")
                .formatted(named, more)));
  }

  /** A heading already told of as ambiguous or as a second one is not told again. */
  private boolean isUnread(Heading heading) {
    ChosenColumns chosen = table.chosen();
    Set<Heading> taken = new HashSet<>(chosen.columns().values());
    taken.addAll(chosen.inches().values());
    chosen.secondRoom().ifPresent(taken::add);
    chosen.units().ifPresent(taken::add);
    return !taken.contains(heading)
        && !heading.text().isBlank()
        && !ourColumns.contains(heading.column())
        && chosen.remarks().stream().noneMatch(each -> each.address().equals(address(heading)))
        && lineRows.stream().anyMatch(row -> !grid.text(row, heading.column()).isBlank());
  }

  private String address(Heading heading) {
    return new CellAddress(table.block().headingRow(), heading.column()).toString();
  }
}
