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
  /** The orifice of a tip code has two digits. */
  private static final int ORIFICES = 100;

  private final Catalogue catalogue;
  private final Work work;
  private final Pressure pressure;
  private final Hose hose;
  private final At[] known = new At[ORIFICES];

  /**
   * What the tip gets.
   *
   * @param pumpPsi pressure to set at the pump
   * @param gunPsi pressure at the tip
   * @param flowGpm flow of one gun
   * @param lossPsi loss in the hose
   * @param laminar whether the loss is that of a laminar flow, rather than a lower bound
   * @param test the bucket test that the flow rests on; null when the coefficient served
   */
  public record At(
      double pumpPsi,
      double gunPsi,
      double flowGpm,
      double lossPsi,
      boolean laminar,
      BucketTest test) {}

  GunFlow(Catalogue catalogue, Work work, Pressure pressure) {
    this.catalogue = catalogue;
    this.work = work;
    this.pressure = pressure;
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

  /** The pressure to set where there is no tip whose hose loss could be added. */
  double wantedPsi() {
    return pressure.psi();
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
    double psi = pressure.psi();
    if (hose == null) {
      return new At(psi, psi, tip.applyAsDouble(psi), 0, true, test);
    }
    double greatestPsi = Pressure.greatestPsi(work.sprayer());
    if (pressure.atGun()) {
      double flow = tip.applyAsDouble(psi);
      double pumpPsi = psi + hose.lossPsi(flow) + hose.headPsi();
      if (pumpPsi <= greatestPsi) {
        boolean laminar = hose.reynolds(flow) <= Constants.LAMINAR_LIMIT.value();
        return new At(pumpPsi, psi, flow, hose.lossPsi(flow), laminar, test);
      }
    }
    // a gun pressure that the pump cannot give becomes what its rating leaves at the gun
    double pumpPsi = pressure.atGun() ? greatestPsi : psi;
    Hose.State state = hose.solve(pumpPsi, tip);
    return new At(pumpPsi, state.gunPsi(), state.flowGpm(), state.lossPsi(), state.laminar(), test);
  }
}
