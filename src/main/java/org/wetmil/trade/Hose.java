package org.wetmil.trade;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.wetmil.quantity.Require;
import org.wetmil.quantity.Unit;

/**
 * A hose between pump and gun, and the coating in it.
 *
 * <p>The loss is laminar (published, Hagen-Poiseuille). Assumes a smooth round bore, a steady flow
 * and one viscosity, that at the shear in the hose, not that of the can: a coating at rest is many
 * times thicker. Where {@link State#laminar} is false the real loss is higher than computed.
 *
 * @param boreIn inner diameter in inches, above 0
 * @param lengthFt length in feet, at least 0
 * @param riseFt height of the gun above the pump in feet; below the pump is negative
 * @param densityKgPerL density of the coating as sprayed in kg/L, above 0
 * @param viscosityPaS viscosity at the shear in the hose in Pa s, above 0
 */
public record Hose(
    double boreIn, double lengthFt, double riseFt, double densityKgPerL, double viscosityPaS) {

  private static final double PRESSURE_TOLERANCE_PSI = 1e-9;
  private static final double RELATIVE_TOLERANCE = 1e-14;
  private static final int MOST_STEPS = 200;
  private static final double IN_PER_FT = 12;

  public Hose {
    Require.positive("boreIn", boreIn);
    Require.notNegative("lengthFt", lengthFt);
    Require.finite("riseFt", riseFt);
    Require.positive("densityKgPerL", densityKgPerL);
    Require.positive("viscosityPaS", viscosityPaS);
  }

  /**
   * What the gun gets.
   *
   * @param gunPsi pressure at the tip in psi; 0 when the pump cannot lift the coating to the gun
   * @param flowGpm flow through hose and tip in US gallons per minute
   * @param lossPsi friction loss of the hose in psi
   * @param headPsi pressure spent on height in psi, negative when the gun is below the pump
   * @param reynolds Reynolds number of the flow in the hose
   * @param shearPerS representative shear rate in the hose, 8 V / D, in 1/s
   */
  public record State(
      double gunPsi,
      double flowGpm,
      double lossPsi,
      double headPsi,
      double reynolds,
      double shearPerS) {

    /** Whether the loss is that of a laminar flow; if not, it is only a lower bound. */
    public boolean laminar() {
      return reynolds <= Constants.LAMINAR_LIMIT.value();
    }
  }

  /**
   * Pressure and flow at the gun. The flow depends on the pressure at the gun and the loss on the
   * flow, so both are found together by a bracketing root finder.
   *
   * @param pumpPsi pressure at the pump in psi, at least 0
   * @param tipGpm flow of the tip in US gallons per minute for a pressure at it in psi; must not
   *     fall as the pressure rises, and must give 0 at 0
   * @return the state in which pump = gun + loss + head; flow 0 when the head alone takes the
   *     pump's pressure
   */
  public State solve(double pumpPsi, DoubleUnaryOperator tipGpm) {
    Require.notNegative("pumpPsi", pumpPsi);
    double availablePsi = pumpPsi - headPsi();
    if (availablePsi <= 0) {
      return state(0, 0);
    }
    double gunPsi =
        lengthFt == 0
            ? availablePsi
            : new BrentSolver(RELATIVE_TOLERANCE, PRESSURE_TOLERANCE_PSI)
                .solve(
                    MOST_STEPS,
                    psi -> availablePsi - psi - lossPsi(tipGpm.applyAsDouble(psi)),
                    0,
                    availablePsi);
    return state(gunPsi, tipGpm.applyAsDouble(gunPsi));
  }

  /**
   * Friction loss: 128 mu L Q / (pi D⁴), Hagen-Poiseuille (published).
   *
   * @param flowGpm flow in US gallons per minute, at least 0
   * @return loss in psi
   */
  public double lossPsi(double flowGpm) {
    Require.notNegative("flowGpm", flowGpm);
    double pascal =
        128
            * viscosityPaS
            * (lengthFt * Unit.FOOT.si())
            * m3PerS(flowGpm)
            / (Math.PI * Math.pow(boreM(), 4));
    return pascal / Unit.PSI.si();
  }

  /**
   * Pressure that the height takes: rho g h.
   *
   * @return head in psi, negative when the gun is below the pump
   */
  public double headPsi() {
    return kgPerM3()
        * Constants.GRAVITY_M_PER_S2.value()
        * (riseFt * Unit.FOOT.si())
        / Unit.PSI.si();
  }

  /**
   * Reynolds number: rho V D / mu.
   *
   * @param flowGpm flow in US gallons per minute, at least 0
   * @return a ratio; a pipe runs laminar up to about 2000
   */
  public double reynolds(double flowGpm) {
    return kgPerM3() * speedMPerS(flowGpm) * boreM() / viscosityPaS;
  }

  /**
   * Representative shear rate: 8 V / D, the rate at the wall of a laminar flow.
   *
   * @param flowGpm flow in US gallons per minute, at least 0
   * @return shear rate in 1/s
   */
  public double shearPerS(double flowGpm) {
    return 8 * speedMPerS(flowGpm) / boreM();
  }

  /**
   * What the hose holds, and what is lost in it when it is flushed.
   *
   * @return US gallons
   */
  public double volumeGal() {
    return Math.PI / 4 * boreIn * boreIn * (lengthFt * IN_PER_FT) / Constants.GALLON_IN3.value();
  }

  private State state(double gunPsi, double flowGpm) {
    return new State(
        gunPsi, flowGpm, lossPsi(flowGpm), headPsi(), reynolds(flowGpm), shearPerS(flowGpm));
  }

  private double speedMPerS(double flowGpm) {
    Require.notNegative("flowGpm", flowGpm);
    return m3PerS(flowGpm) / (Math.PI / 4 * boreM() * boreM());
  }

  private double kgPerM3() {
    return densityKgPerL * Unit.KILOGRAM_PER_LITRE.si();
  }

  private double boreM() {
    return boreIn * Unit.INCH.si();
  }

  private static double m3PerS(double flowGpm) {
    return flowGpm * Unit.GALLON_PER_MINUTE.si();
  }
}
