package org.wetmil.estimate;

import java.util.function.DoubleUnaryOperator;
import org.wetmil.catalogue.BucketTest;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Setting;
import org.wetmil.catalogue.Sprayer;
import org.wetmil.trade.Constants;
import org.wetmil.trade.Flow;
import org.wetmil.trade.Hose;

/** Pressure and flow at the tip for one coating, pressure setting and hose; kept by orifice. */
public final class GunFlow {
  private static final int ORIFICES = 100;

  private final Catalogue catalogue;
  private final Work work;
  private final double setPsi;
  private final Hose hose;
  private final At[] known = new At[ORIFICES];

  /**
   * What the tip gets.
   *
   * @param gunPsi pressure at the tip
   * @param flowGpm flow of one gun
   * @param lossPsi loss in the hose
   * @param laminar whether the loss is that of a laminar flow, rather than a lower bound
   * @param test the bucket test that the flow rests on; null when the coefficient served
   */
  public record At(
      double gunPsi, double flowGpm, double lossPsi, boolean laminar, BucketTest test) {}

  GunFlow(Catalogue catalogue, Work work, double setPsi) {
    this.catalogue = catalogue;
    this.work = work;
    this.setPsi = setPsi;
    Sprayer sprayer = work.sprayer();
    this.hose =
        sprayer != null && sprayer.hasHose()
            ? new Hose(
                sprayer.hoseBoreIn(),
                sprayer.hoseLengthFt(),
                Double.isNaN(sprayer.riseFt()) ? 0 : sprayer.riseFt(),
                work.sprayedKgPerL(),
                work.coating().viscosityPaS())
            : null;
  }

  boolean hasHose() {
    return hose != null;
  }

  At at(int orificeThou) {
    if (known[orificeThou] == null) {
      known[orificeThou] = find(orificeThou);
    }
    return known[orificeThou];
  }

  private At find(int orificeThou) {
    BucketTest test = catalogue.bucketTest(work.coating(), orificeThou).orElse(null);
    double discharge = catalogue.number(Setting.DISCHARGE);
    double density = work.sprayedKgPerL();
    DoubleUnaryOperator tip =
        test == null
            ? psi -> Flow.gpm(discharge, orificeThou, psi, density)
            : psi -> Flow.bucketTestGpm(test.flowGpm(), test.gunPsi(), psi);
    if (hose == null) {
      return new At(setPsi, tip.applyAsDouble(setPsi), 0, true, test);
    }
    if (work.line().pressureAtGun() && work.line().has(InputColumn.PRESSURE)) {
      double flow = tip.applyAsDouble(setPsi);
      return new At(
          setPsi,
          flow,
          hose.lossPsi(flow),
          hose.reynolds(flow) <= Constants.LAMINAR_LIMIT.value(),
          test);
    }
    Hose.State state = hose.solve(setPsi, tip);
    return new At(state.gunPsi(), state.flowGpm(), state.lossPsi(), state.laminar(), test);
  }
}
