package org.wetmil.reconcile.bid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.wetmil.estimate.InputColumn.AREA;
import static org.wetmil.estimate.InputColumn.COATING;
import static org.wetmil.estimate.InputColumn.INCLUDE;
import static org.wetmil.estimate.InputColumn.SURFACE;
import static org.wetmil.estimate.InputColumn.TEXTURE;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Tables;
import org.wetmil.estimate.BidLine;
import org.wetmil.estimate.Bids;
import org.wetmil.estimate.Estimator;
import org.wetmil.estimate.FilledBid;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.quantity.UnitSystem;

class BidUsesTest {
  private static final BidLine WALLS = Bids.line(SURFACE, "walls", AREA, 1000, COATING, "latex");
  private static final BidLine ROUGH =
      Bids.line(SURFACE, "walls", AREA, 500, COATING, "latex", TEXTURE, "stucco");

  @Test
  void theLinesThatCountAreSummedByCoating() {
    BidLine left = Bids.line(SURFACE, "walls", AREA, 9000, COATING, "latex", INCLUDE, "no");
    BidLine primer = Bids.line(SURFACE, "ceiling", AREA, 200, COATING, "primer");
    FilledBid filled = Estimator.fill(Bids.bid(WALLS, primer, ROUGH, left));

    BidJob job = BidUses.of(filled, List.of());

    assertThat(job.name()).isEqualTo("test");
    assertThat(job.uses()).extracting(BidUse::coating).containsExactly("latex", "primer");
    assertThat(job.uses().get(0).areaFt2()).isEqualTo(1500);
    assertThat(job.uses().get(0).coatedFt2()).isEqualTo(3000);
    assertThat(job.uses().stream().mapToDouble(BidUse::paintGal).sum())
        .isCloseTo(filled.total(FilledColumn.PAINT), within(1e-9));
  }

  /** Walls: stick 0.70 and hit 1.0 of the surface table, so TE is 0.70 on every line. */
  @Test
  void thePartsOfTheLossAreThoseOfTheBid() {
    BidUse use = BidUses.of(Estimator.fill(Bids.bid(WALLS, ROUGH)), List.of()).uses().get(0);

    assertThat(use.transferEfficiency()).isCloseTo(0.70, within(1e-9));
    assertThat(use.waste()).isCloseTo(0.05, within(1e-9));
    assertThat(use.roughness()).isBetween(1.0, 1.4);
    assertThat(use.transferEfficiency() * (1 - use.waste()) / use.roughness())
        .isCloseTo(use.theoreticalGal() / use.paintGal(), within(1e-12));
  }

  @Test
  void thePriceIsThatOfTheCheapestContainer() {
    Catalogue catalogue =
        Bids.with(
            Tables.COATINGS,
            List.of(
                Bids.row(
                    1,
                    "Coating",
                    "Wall finish",
                    "Class",
                    "latex",
                    "Container sizes",
                    "1; 5",
                    "Price",
                    "42; 190")));
    BidLine line = Bids.line(SURFACE, "walls", AREA, 1000, COATING, "Wall finish");

    BidUse use =
        BidUses.of(Estimator.fill(Bids.bid(catalogue, UnitSystem.US, line)), List.of())
            .uses()
            .get(0);

    assertThat(use.className()).isEqualTo("latex");
    assertThat(use.pricePerGal()).isEqualByComparingTo("38");
    assertThat(use.containerGal()).isEqualTo(1);
  }

  @Test
  void otherTradeWordsComeWithTheJob() {
    BidJob job = BidUses.of(Estimator.fill(Bids.bid(WALLS)), List.of());

    assertThat(job.otherNames().get("latex")).contains("emulsion", "wall paint");
    assertThat(job.otherNames()).containsKey("block filler");
  }
}
