package org.wetmil.workbook.recalc;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.wetmil.ledger.Ledgers;
import org.wetmil.quantity.UnitSystem;
import org.wetmil.reconcile.ReconcileSettings;
import org.wetmil.reconcile.Reconciler;
import org.wetmil.reconcile.SettingsTaken;
import org.wetmil.reconcile.bid.BidJob;
import org.wetmil.reconcile.bid.BidUse;
import org.wetmil.workbook.reconcile.ReconcileStamp;
import org.wetmil.workbook.reconcile.ReconcileWriter;

/** Jobs and coatings whose names mean something else in a formula's criteria. */
final class HostileBooks {
  static final List<String> JOBS =
      List.of(
          "5",
          "=6+1",
          "Loft*",
          "Loft * north",
          "~Barn?",
          "<>Shed",
          "1e3",
          "May 2026",
          "\"Quoted\" mill",
          "It's a mill",
          "long " + "name ".repeat(60) + "end");

  static final List<String> COATINGS = List.of("100", "lat?x", "lat*x", ">=2", "~", "TRUE");

  private HostileBooks() {}

  static void write(Path output) {
    List<BidJob> jobs = new ArrayList<>();
    List<String> lines = new ArrayList<>(List.of("Date;Job;Item;Qty;Unit;Amount"));
    int count = 0;
    for (String job : JOBS) {
      jobs.add(
          new BidJob(
              job, COATINGS.stream().map(HostileBooks::use).toList(), "", Map.of(), List.of()));
      for (String coating : COATINGS) {
        count++;
        lines.add(
            Stream.of("2026-04-02", job, coating, count + ".3", "gal", count + ".5")
                .map(cell -> "\"" + cell.replace("\"", "\"\"") + "\"")
                .reduce((row, cell) -> row + ";" + cell)
                .orElseThrow());
      }
    }
    new ReconcileWriter(
            Reconciler.reconcile(
                jobs,
                List.of(Ledgers.book(lines.toArray(String[]::new))),
                List.of(),
                ReconcileSettings.DEFAULT),
            List.of(),
            UnitSystem.METRIC,
            new ReconcileStamp(LocalDate.of(2026, 5, 4), "test", List.of(), SettingsTaken.BUILT_IN))
        .write(List.of(), output, false);
  }

  private static BidUse use(String coating) {
    return new BidUse(coating, "latex", 900, 1800, 1.5, 6.65, 10, 0.7, 0.05, 1, BigDecimal.TEN, 1);
  }
}
