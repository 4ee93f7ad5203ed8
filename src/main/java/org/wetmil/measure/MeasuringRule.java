package org.wetmil.measure;

import java.util.Arrays;
import java.util.Optional;

/**
 * How openings come off a painted area.
 *
 * <p>Limits are in m and m², as the rules state them; what is exactly at a limit is measured over,
 * as both published rules say ("up to").
 */
public enum MeasuringRule {
  /** Every opening comes off and every reveal that is stated counts (common practice). */
  NET("Net", 0, 0, 0, 0, 0, 0, 0, "common practice", "every opening off, stated reveals added"),

  /** Nothing comes off and nothing is added (common practice; older painters' handbooks). */
  SOLID(
      "Solid",
      Limit.NEVER,
      0,
      Limit.NEVER,
      Limit.NEVER,
      Limit.NEVER,
      Limit.NEVER,
      Limit.NEVER,
      "common practice; Cyclopedia of Painting (1908) measures walls so",
      "no opening off, no reveal added"),

  /** Indian standard for measuring painting of building surfaces, clauses 3.1 to 3.5. */
  IS_1200_13(
      "IS 1200-13",
      0.5,
      3,
      3,
      0.5,
      0,
      0,
      0,
      "IS 1200 (Part 13):1994, 3.1 to 3.5",
      "openings up to 0.5 m² measured over; up to 3 m² off one of two faces, no reveals;"
          + " over 3 m² off, reveals added"),

  /** German contract rules for painting (VOB/C), section 5. */
  DIN_18363(
      "DIN 18363",
      2.5,
      0,
      0,
      0.5,
      0.30,
      0.10,
      1,
      "DIN 18363 (VOB/C), section 5",
      "openings up to 2.5 m² (floors 0.5 m²), columns up to 30 cm, plinths up to 10 cm and gaps up"
          + " to 1 m measured over; reveals always added");

  /** A last bit of a double must not take an opening over a limit (house). */
  private static final double ROUNDING = 1e-9;

  private final String title;
  private final double deductedOverM2;
  private final double oneFaceUpToM2;
  private final double revealsOverM2;
  private final double floorDeductedOverM2;
  private final double memberOverM;
  private final double plinthOverM;
  private final double gapOverM;
  private final String source;
  private final String meaning;

  MeasuringRule(
      String title,
      double deductedOverM2,
      double oneFaceUpToM2,
      double revealsOverM2,
      double floorDeductedOverM2,
      double memberOverM,
      double plinthOverM,
      double gapOverM,
      String source,
      String meaning) {
    this.title = title;
    this.deductedOverM2 = deductedOverM2;
    this.oneFaceUpToM2 = oneFaceUpToM2;
    this.revealsOverM2 = revealsOverM2;
    this.floorDeductedOverM2 = floorDeductedOverM2;
    this.memberOverM = memberOverM;
    this.plinthOverM = plinthOverM;
    this.gapOverM = gapOverM;
    this.source = source;
    this.meaning = meaning;
  }

  /** The word written on a Settings sheet. */
  public String title() {
    return title;
  }

  public String source() {
    return source;
  }

  /** One sentence for the reader of the bid. */
  public String meaning() {
    return meaning;
  }

  public static Optional<MeasuringRule> find(String title) {
    String plain = title.strip();
    return Arrays.stream(values()).filter(rule -> rule.title.equalsIgnoreCase(plain)).findFirst();
  }

  /** Whether the rule asks for the size of an opening, so that a lump area cannot be tested. */
  public boolean goesBySize() {
    return deductedOverM2 > 0 && deductedOverM2 < Limit.NEVER;
  }

  /**
   * Area in m² up to which an opening is measured over; 0 where every one comes off.
   *
   * @param inFloor whether it is in a floor
   */
  public double measuredOverUpToM2(boolean inFloor) {
    return inFloor ? floorDeductedOverM2 : deductedOverM2;
  }

  /** Whether one of this size comes off its face at all. */
  public boolean isDeducted(Opening opening, boolean inFloor) {
    return switch (opening.role()) {
      case OPENING -> over(opening.areaM2(), measuredOverUpToM2(inFloor));
      case MEMBER -> over(Math.min(opening.widthM(), opening.heightM()), memberOverM);
      case PLINTH -> over(opening.heightM(), plinthOverM);
      case GAP -> over(opening.widthM(), gapOverM) && over(opening.areaM2(), gapAreaM2());
    };
  }

  /** Whether, of two faces that show the opening, only one is to lose it. */
  public boolean isOffOneFace(Opening opening) {
    return opening.role() == Opening.Role.OPENING
        && over(opening.areaM2(), deductedOverM2)
        && !over(opening.areaM2(), oneFaceUpToM2);
  }

  /** Whether its jambs, head and sill are added where they are painted. */
  public boolean isRevealAdded(Opening opening) {
    return opening.role() == Opening.Role.OPENING && over(opening.areaM2(), revealsOverM2);
  }

  /** The limit by area holds for gaps too where a rule names none by length. */
  private double gapAreaM2() {
    return gapOverM > 0 ? 0 : deductedOverM2;
  }

  private static boolean over(double value, double limit) {
    return value > limit + ROUNDING;
  }

  /** Nested because enum constants come first. */
  private static final class Limit {
    static final double NEVER = Double.POSITIVE_INFINITY;
  }
}
