package org.wetmil.workbook.compare;

import java.nio.file.Path;
import java.util.List;
import org.wetmil.estimate.Bid;
import org.wetmil.estimate.BidLine;
import org.wetmil.estimate.InputColumn;
import org.wetmil.workbook.opc.FileName;
import org.wetmil.workbook.read.SheetLayout;

/**
 * One of the two workbooks.
 *
 * @param bid what was read of it
 * @param layouts where its tables were found
 * @param filled whether it was filled before
 * @param locked whether it is protected with a password
 */
public record Version(
    Path file, Bid bid, List<SheetLayout> layouts, boolean filled, boolean locked) {
  public Version {
    layouts = List.copyOf(layouts);
  }

  public String name() {
    return FileName.of(file);
  }

  /** The cell of a line, with its sheet, as in Bid!C4. */
  public String address(BidLine line, InputColumn column) {
    return layouts.stream()
        .filter(layout -> layout.sheet().equals(line.sheet()))
        .map(layout -> line.sheet() + "!" + address(layout, line, column))
        .findFirst()
        .orElse(line.sheet());
  }

  private String address(SheetLayout layout, BidLine line, InputColumn column) {
    int before = layout.tables().size() > 1 ? before(line) : 0;
    return layout.address(line.row(), before, column);
  }

  /** Lines to the left in the row, of tables side by side. */
  private int before(BidLine line) {
    List<BidLine> inRow =
        bid.sheets().stream()
            .flatMap(sheet -> sheet.lines().stream())
            .filter(each -> each.sheet().equals(line.sheet()) && each.row() == line.row())
            .toList();
    for (int i = 0; i < inRow.size(); i++) {
      if (inRow.get(i) == line) {
        return i;
      }
    }
    return 0;
  }
}
