package org.wetmil.workbook.compare;

import java.nio.file.Path;
import java.util.List;
import org.wetmil.estimate.BidLine;
import org.wetmil.estimate.InputColumn;
import org.wetmil.workbook.opc.FileName;
import org.wetmil.workbook.read.SheetLayout;

/**
 * One of the two workbooks.
 *
 * @param layouts where its tables were found
 * @param filled whether it was filled before
 * @param locked whether it is protected with a password
 */
public record Version(Path file, List<SheetLayout> layouts, boolean filled, boolean locked) {
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
        .map(layout -> line.sheet() + "!" + layout.address(line.row(), column))
        .findFirst()
        .orElse(line.sheet());
  }
}
