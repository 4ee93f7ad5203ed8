package org.wetmil.checks;

import static org.wetmil.trade.Constant.Kind.HOUSE;
import static org.wetmil.trade.Constant.Kind.PUBLISHED;

import java.util.List;
import org.wetmil.estimate.GreatestSizes;
import org.wetmil.estimate.limits.OldPaint;
import org.wetmil.trade.Constant;
import org.wetmil.trade.FilmAcceptance;

/** Limits of checks that are no settings; {@link #ALL} is what the Basis sheet prints of them. */
public final class CheckLimits {
  static final Constant LEAST_LIKELY_HEIGHT =
      house("Least likely height of a wall, to guess its unit", 5, "ft");
  static final Constant GREATEST_LIKELY_HEIGHT =
      house("Greatest likely height of a wall, to guess its unit", 40, "ft");
  static final Constant LEAST_LIKELY_CEILING =
      house("Least likely height of a ceiling, to guess its unit", 6.5, "ft");
  static final Constant LEAST_LIKELY_FENCE =
      house("Least likely height of a railing or fence, to guess its unit", 1.5, "ft");
  static final Constant GREATEST_LIKELY_FENCE =
      house("Height of a railing or fence past which a smaller unit is suspected", 20, "ft");
  static final Constant LEAST_LIKELY_LENGTH =
      house("Least likely length, to guess its unit", 0.5, "m");
  static final Constant GREATEST_LIKELY_LENGTH =
      house("Greatest likely length, to guess its unit", 60, "m");
  static final Constant LONG_IN_METRES =
      house("Length in metres past which a smaller unit is suspected", 100, "m");
  static final Constant LARGE_PIECE =
      house("Usual pieces that one piece may be as large as", 20, "times");
  static final Constant LONG_PIECE =
      house(
          "Usual pieces that each of several far longer than high may be as large as", 6, "times");
  static final Constant LONG_PIECE_SIDES =
      house(
          "Longer side of a piece over its shorter past which two units are suspected", 3, "times");
  static final Constant SMALL_PIECE =
      house("Share of one piece under which a stated area is taken for a count", 1.0 / 3, "share");
  static final Constant LEAST_GIRTH = house("Least girth of any work", 0.75, "in");
  static final Constant WIDE_SOFFIT =
      house("Width of a soffit past which a smaller unit is suspected", 12, "ft");
  static final Constant NARROW_SOFFIT =
      house("Least likely width of a soffit, to guess its unit", 0.4, "ft");
  static final Constant MANY_COATS = house("Greatest usual number of coats", 5, "coats");
  static final Constant NEAR_NARROW =
      house("Share of the setting Narrow work within which its step is told", 0.1, "share");
  static final Constant GAUGE_STEP_PSI = house("Step of a pressure that is advised", 50, "psi");
  static final Constant GAUGE_STEP_BAR = house("Step of a pressure that is advised", 5, "bar");

  static final Constant LEAST_FILM =
      new Constant(
          "Least accepted share of a single dry film",
          FilmAcceptance.LEAST_SHARE,
          "share",
          PUBLISHED,
          "coating practice standard of 2012 as quoted by others");
  static final Constant GREATEST_FILM =
      new Constant(
          "Greatest accepted share of a single dry film",
          FilmAcceptance.MOST_SHARE,
          "share",
          PUBLISHED,
          "coating practice standard of 2012 as quoted by others");
  static final Constant LATCH =
      new Constant(
          "Pressure from which an airless gun is to have a safety",
          1000,
          "psi",
          PUBLISHED,
          "29 CFR 1926.302(b)");
  static final Constant LEAD_YEAR =
      new Constant(
          "Year from which a building is outside the lead rule",
          OldPaint.YEAR,
          "year",
          PUBLISHED,
          "40 CFR 745.83");
  static final Constant LEAD_ROOM =
      new Constant(
          "Disturbed area of a room up to which work is minor",
          OldPaint.ROOM_FT2,
          "ft2",
          PUBLISHED,
          "40 CFR 745.83");
  static final Constant LEAD_OUTSIDE =
      new Constant(
          "Disturbed area outside up to which work is minor",
          OldPaint.OUTSIDE_FT2,
          "ft2",
          PUBLISHED,
          "40 CFR 745.83");
  static final Constant LEAD_DAYS =
      new Constant(
          "Days within which disturbed paint of one place counts together",
          OldPaint.DAYS,
          "days",
          PUBLISHED,
          "40 CFR 745.83");

  /** Every limit above, and the greatest sizes that a line is taken with. */
  public static final List<Constant> ALL =
      List.of(
          LEAST_LIKELY_HEIGHT,
          GREATEST_LIKELY_HEIGHT,
          LEAST_LIKELY_CEILING,
          LEAST_LIKELY_FENCE,
          GREATEST_LIKELY_FENCE,
          LEAST_LIKELY_LENGTH,
          GREATEST_LIKELY_LENGTH,
          LONG_IN_METRES,
          GreatestSizes.AREA,
          LARGE_PIECE,
          LONG_PIECE,
          LONG_PIECE_SIDES,
          SMALL_PIECE,
          LEAST_GIRTH,
          WIDE_SOFFIT,
          NARROW_SOFFIT,
          MANY_COATS,
          NEAR_NARROW,
          GAUGE_STEP_PSI,
          GAUGE_STEP_BAR,
          LEAST_FILM,
          GREATEST_FILM,
          LATCH,
          LEAD_YEAR,
          LEAD_ROOM,
          LEAD_OUTSIDE,
          LEAD_DAYS);

  private CheckLimits() {}

  private static Constant house(String name, double value, String unit) {
    return new Constant(name, value, unit, HOUSE, "judgement");
  }
}
