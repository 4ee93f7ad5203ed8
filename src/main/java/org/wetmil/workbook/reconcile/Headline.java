package org.wetmil.workbook.reconcile;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.wetmil.quantity.Count;
import org.wetmil.reconcile.ReconcileSettings;
import org.wetmil.reconcile.Reconciliation;
import org.wetmil.reconcile.use.CoatingUse;

/** The answer in one line. */
final class Headline {
  private Headline() {}

  /** What was compared. */
  static String period(Reconciliation result) {
    ReconcileSettings settings = result.settings();
    String from = settings.from() == null ? "" : " from " + settings.from();
    String to = settings.to() == null ? "" : " to " + settings.to();
    String days = from.isEmpty() && to.isEmpty() ? ", all days" : "," + from + to;
    return "%s, %s%s"
        .formatted(
            Count.of(result.byJob().size(), "job"),
            Count.of(result.read().lines(), "ledger line"),
            days);
  }

  static String of(Books books) {
    List<CoatingUse> uses = books.result().uses();
    List<CoatingUse> bought = uses.stream().filter(use -> use.ledger().lines() > 0).toList();
    long over = bought.stream().filter(CoatingUse::isOver).count();
    long under = bought.stream().filter(CoatingUse::isUnder).count();
    String most =
        bought.stream()
            .filter(CoatingUse::isOver)
            .max(Comparator.comparingDouble(CoatingUse::varianceGal))
            .map(
                use ->
                    String.format(
                        Locale.ROOT,
                        "; most over: %s of %s, %.1f %s",
                        use.coating(),
                        use.job(),
                        books.volume(use.varianceGal()),
                        books.volumeUnit()))
            .orElse("");
    return String.format(
        Locale.ROOT,
        "Of %s bought, %d used more than bid and %d less, beyond the tolerance%s",
        Count.of(bought.size(), "coating"),
        over,
        under,
        most);
  }
}
