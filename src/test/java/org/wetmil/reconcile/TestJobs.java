package org.wetmil.reconcile;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.wetmil.reconcile.bid.BidJob;
import org.wetmil.reconcile.bid.BidUse;
import org.wetmil.trade.Yield;

/** Jobs made by hand for tests. */
final class TestJobs {
  static final Map<String, List<String>> OTHER_NAMES =
      Map.of(
          "latex", List.of("emulsion", "wall paint", "latex paint"),
          "primer", List.of("latex primer", "undercoat"),
          "oil based", List.of("alkyd"),
          "block filler", List.of("blockfill"),
          "lacquer", List.of(),
          "stain", List.of("wood stain"));

  private TestJobs() {}

  /**
   * A use of two coats of 2 mil dry with TE 0.7, waste 5 % and a smooth surface, so that the area
   * follows from the paint.
   */
  static BidUse use(String coating, String className, double paintGal, String pricePerGal) {
    double theoretical = paintGal * Yield.planned(0.7, 0.05, 1);
    double coatedFt2 = theoretical * 1604.1666666666667 * 0.36 / 2;
    return new BidUse(
        coating,
        className,
        coatedFt2 / 2,
        coatedFt2,
        2,
        theoretical,
        paintGal,
        0.7,
        0.05,
        1,
        pricePerGal == null ? null : new BigDecimal(pricePerGal),
        5);
  }

  static BidJob job(String name, BidUse... uses) {
    return new BidJob(name, List.of(uses), "", OTHER_NAMES, List.of());
  }

  static BidJob clinic() {
    return job(
        "1042 Clinic refit",
        use("latex", "latex", 40, "30.00"),
        use("primer", "primer", 20, "25.00"));
  }
}
