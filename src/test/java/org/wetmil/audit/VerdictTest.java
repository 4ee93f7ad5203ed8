package org.wetmil.audit;

import org.junit.jupiter.api.Test;
import org.wetmil.audit.change.PaintTable;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.quantity.UnitSystem;

class VerdictTest {
  @Test
  void look() {
    for (double[] c : new double[][] {{1.3, 1.35}, {1, 1}, {1.3, 1}, {1.15, 1.15}}) {
      for (int n : new int[] {4, 24}) {
        var audit =
            Audit.of(
                new InventedContractor(c[0], c[1], 7).bids(n),
                Catalogue.builtIn(),
                PaintTable.LOSS,
                UnitSystem.US);
        System.out.println("PAGE " + c[0] + " " + c[1]);
        InventedContractor.page(audit.verdict()).forEach(s -> System.out.println("PAGE  " + s));
      }
    }
  }
}
