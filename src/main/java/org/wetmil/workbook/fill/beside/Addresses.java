package org.wetmil.workbook.fill.beside;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.wetmil.checks.Finding;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.workbook.stream.CellAddress;

/** The cells that findings are about. */
public final class Addresses {
  private final Map<String, SheetPlan> plans = new HashMap<>();

  public Addresses(List<SheetPlan> plans) {
    plans.forEach(plan -> this.plans.put(plan.sheet(), plan));
  }

  /** An input cell, else the Findings cell of the line; empty when it is about no cell. */
  public String of(Finding finding) {
    if (!finding.spot().address().isEmpty()) {
      return finding.spot().address();
    }
    SheetPlan plan = plans.get(finding.spot().sheet());
    if (plan == null) {
      return "";
    }
    return plan.of(finding)
        .map(placed -> CellAddress.letters(column(placed, finding)))
        .map(letters -> letters + finding.spot().row())
        .orElse("");
  }

  private static int column(SheetPlan.Placed placed, Finding finding) {
    Integer input =
        finding.spot().column() == null
            ? null
            : placed.block().table().columns().get(finding.spot().column());
    return input == null ? placed.block().column(FilledColumn.FINDINGS) : input;
  }
}
