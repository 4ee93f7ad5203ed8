package org.wetmil.trade;

import static org.wetmil.trade.Constant.Kind.DERIVED;
import static org.wetmil.trade.Constant.Kind.EXACT;
import static org.wetmil.trade.Constant.Kind.HOUSE;
import static org.wetmil.trade.Constant.Kind.PRACTICE;
import static org.wetmil.trade.Constant.Kind.PUBLISHED;

import java.util.List;

/** The constants of the formulas, each declared once; {@link #ALL} is what a basis sheet prints. */
public final class Constants {
  public static final Constant GALLON_IN3 =
      new Constant("US gallon", 231, "in3", EXACT, "NIST Handbook 44, Appendix C");
  public static final Constant GRAVITY_M_PER_S2 =
      new Constant("Standard gravity", 9.80665, "m/s2", EXACT, "3rd CGPM, 1901");

  public static final Constant SPREAD_FT2_MIL_PER_GAL =
      new Constant(
          "Spread of one gallon at one mil",
          231_000.0 / 144,
          "ft2 mil/gal",
          DERIVED,
          "231 in3 in a gallon, 144 in2 in a ft2; handbooks print 1604");
  public static final Constant LAMINAR_LIMIT =
      new Constant(
          "Reynolds number up to which a hose runs laminar",
          2000,
          "ratio",
          PUBLISHED,
          "textbook pipe flow, from memory");

  public static final Constant FAN_IN_PER_DIGIT =
      new Constant(
          "Fan width per fan digit at the standard distance", 2, "in", PRACTICE, "tip code");
  public static final Constant STANDARD_DISTANCE_IN =
      new Constant(
          "Gun distance at which a tip code states its fan",
          12,
          "in",
          PRACTICE,
          "from memory; MIL-HDBK-1110 gives 12 to 15 in for airless spraying");
  public static final Constant REPLACE_FLOW_RISE =
      new Constant(
          "Flow above the mark at which a tip is replaced", 0.25, "share", HOUSE, "our own");
  public static final Constant MAGNUS_A =
      new Constant(
          "Magnus formula over water, factor", 17.62, "ratio", PUBLISHED, "attributed to the WMO");
  public static final Constant MAGNUS_B_C =
      new Constant(
          "Magnus formula over water, offset", 243.12, "C", PUBLISHED, "attributed to the WMO");

  /** Every constant above, in the order in which a reader would look for them. */
  public static final List<Constant> ALL =
      List.of(
          GALLON_IN3,
          GRAVITY_M_PER_S2,
          SPREAD_FT2_MIL_PER_GAL,
          LAMINAR_LIMIT,
          FAN_IN_PER_DIGIT,
          STANDARD_DISTANCE_IN,
          REPLACE_FLOW_RISE,
          MAGNUS_A,
          MAGNUS_B_C);

  private Constants() {}
}
