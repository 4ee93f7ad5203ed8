package org.wetmil.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.wetmil.audit.model.Proof;
import org.wetmil.audit.past.Measure;
import org.wetmil.audit.past.PastBid;
import org.wetmil.audit.past.UnitCosts;
import org.wetmil.quantity.UnitSystem;

class LastBidsTest {
  private static final UnitCosts DOLLARS =
      new UnitCosts(new BigDecimal("40"), new BigDecimal("50"), "USD");

  @Test
  void whatTheChangeWouldHaveDoneIsSaidInTheDifferenceOfThePrintedFigures() {
    assertThat(sentence(UnitCosts.NONE, UnitCosts.NONE))
        .isEqualTo(
            "The last 2 bids planned 20 gal and took 24 gal: 4 gal short."
                + " With the change they would have planned 25 gal: 1 gal to spare.");
  }

  @Test
  void whereEveryBidSaysItsPricesTheMoneyIsSaidToo() {
    assertThat(sentence(DOLLARS, DOLLARS))
        .endsWith("1 gal to spare; in their own prices 20 USD to spare instead of 172 USD short.");
    assertThat(sentence(DOLLARS, UnitCosts.NONE)).doesNotContain("prices");
    UnitCosts other = new UnitCosts(BigDecimal.TEN, BigDecimal.TEN, "EUR");
    assertThat(sentence(DOLLARS, other)).doesNotContain("prices");
  }

  private static String sentence(UnitCosts first, UnitCosts second) {
    return new LastBids(
            Measure.PAINT,
            List.of(
                new Proof.Forecast(bid(first), 10.2, 12.5, 12.1),
                new Proof.Forecast(bid(second), 9.6, 12.1, 12.0)),
            UnitSystem.US)
        .sentence();
  }

  private static PastBid bid(UnitCosts costs) {
    return new PastBid("job", null, "", "", List.of(), List.of(), costs, Map.of());
  }
}
