package org.wetmil.workbook.fill;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.util.CellReference;
import org.wetmil.checks.Finding;
import org.wetmil.estimate.FilledColumn;

/** The cells that findings are about. */
final class Addresses {
  private final Map<String, SheetPlan> plans = new HashMap<>();

  Addresses(List<SheetPlan> plans) {
    plans.forEach(plan -> this.plans.put(plan.sheet(), plan));
  }

  /** An input cell, else the Findings cell of the line; empty when it is about no cell. */
  String of(Finding finding) {
    if (!finding.spot().address().isEmpty()) {
      return finding.spot().address();
    }
    int row = finding.spot().row();
    SheetPlan plan = plans.get(finding.spot().sheet());
    if (row == 0 || plan == null || plan.lineAt(row - 1) == null) {
      return "";
    }
    SheetPlan.Block block = plan.blockOf(row - 1);
    Integer column =
        finding.spot().column() == null
            ? null
            : block.table().columns().get(finding.spot().column());
    int at = column == null ? block.column(FilledColumn.FINDINGS) : column;
    return CellReference.convertNumToColString(at) + row;
  }
}
