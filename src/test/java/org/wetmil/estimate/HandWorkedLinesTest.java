package org.wetmil.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.wetmil.estimate.FilledColumn.COATS;
import static org.wetmil.estimate.FilledColumn.DRY_FILM;
import static org.wetmil.estimate.FilledColumn.FLOW;
import static org.wetmil.estimate.FilledColumn.LABOUR;
import static org.wetmil.estimate.FilledColumn.MASK;
import static org.wetmil.estimate.FilledColumn.NET_AREA;
import static org.wetmil.estimate.FilledColumn.PAINT;
import static org.wetmil.estimate.FilledColumn.PREPARE;
import static org.wetmil.estimate.FilledColumn.PRESSURE;
import static org.wetmil.estimate.FilledColumn.ROLL;
import static org.wetmil.estimate.FilledColumn.SPEED;
import static org.wetmil.estimate.FilledColumn.SPRAY;
import static org.wetmil.estimate.FilledColumn.SPREAD;
import static org.wetmil.estimate.FilledColumn.WET_FILM;
import static org.wetmil.quantity.UnitSystem.METRIC;

import org.junit.jupiter.api.Test;
import org.wetmil.catalogue.Catalogue;

/**
 * Five lines worked by hand, from the built-in tables and the rules alone, by a calculator outside
 * this program. The figures beside each step are those of the calculator; the constants are exact
 * (231 in3 in a gallon, 144 in2 in a ft2, 0.0254 m in an inch, 6894.757293168 Pa in a psi).
 */
class HandWorkedLinesTest {

  private static void assertFigures(FilledLine filled, String tip, Object... pairs) {
    assertThat(filled.recommended().tip().code()).isEqualTo(tip);
    for (int i = 0; i < pairs.length; i += 2) {
      FilledColumn column = (FilledColumn) pairs[i];
      assertThat(filled.figures().get(column).number())
          .as("%s", column)
          .isCloseTo(((Number) pairs[i + 1]).doubleValue(), withinPercentage(1e-7));
    }
  }

  /**
   * New drywall walls in latex: a room 20 x 15 ft, 9 ft high, 40 ft2 of openings.
   *
   * <ul>
   *   <li>Area 2 (20 + 15) x 9 - 40 = 590 ft2; two coats, the usual of latex; target 4.5 mil.
   *   <li>Fans up to 10 in (digit 5) fit a wall 108 in high. 0.017 in at 2000 psi and 1.30 kg/L
   *       passes 0.80 x pi/4 x (0.0004318 m)2 x sqrt(2 x 13,789,515 / 1300) = 0.2704587746 gpm.
   *   <li>Pace for 4.5 mil, half overlapped: 0.27046 x 231/60 x 0.70 / (0.0045 x 10 x 0.5) =
   *       32.394951 in/s. 515 would want 25.22 and 519 40.47, held to 36; in steps of half a
   *       percent from the easy 30, 517 is 15 off and 515 35, so 517.
   *   <li>Dry film 4.5 x 0.36 x 2 = 3.24 mil.
   *   <li>Spread 1604.1667 / 4.5 x 0.70 x 1.0 x 0.95 = 237.0601852 ft2/gal; paint 590 x 2 / 237.06
   *       = 4.977638902 gal.
   *   <li>Spray 1180 / (32.394951 x 10 x 0.5 x 25 x 0.20) = 1.457017175 h; 9 ft is up to 10 ft.
   *   <li>Bare walls are rolled after the first coat: 590 / 450 = 1.311111111 h.
   *   <li>Floor 20 x 15 / 500 = 0.6 h, taken up again 25 %: 0.75 h. Dusted 590 / 2000 = 0.295 h.
   * </ul>
   */
  @Test
  void drywallWallsInLatex() {
    FilledLine filled = Bids.fill(WorkedLines.DRYWALL);

    assertFigures(
        filled,
        "517",
        NET_AREA,
        590,
        PRESSURE,
        2000,
        FLOW,
        0.2704587746,
        SPEED,
        32.394951,
        COATS,
        2,
        WET_FILM,
        4.5,
        DRY_FILM,
        3.24,
        SPREAD,
        237.0601852,
        PAINT,
        4.977638902,
        SPRAY,
        1.457017175,
        ROLL,
        1.311111111,
        MASK,
        0.75,
        PREPARE,
        0.295,
        LABOUR,
        3.813128286);
  }

  /**
   * Peeling trim in latex on a metric sheet: 30 m of 100 mm.
   *
   * <ul>
   *   <li>Area 30 x 0.1 = 3 m2 (32.29173125 ft2); two coats at 4.5 mil = 114.3 um.
   *   <li>100 mm is 3.937 in: narrow work, one stroke. The narrowest fan of at least 0.8 x 3.937 =
   *       3.15 in is 4 in (digit 2). Joinery takes latex from 0.011 in; 0.012 in passes
   *       0.1347614655 gpm = 0.5101276396 L/min, and 4.5 mil wants 20.17678609 in/s = 51.24903667
   *       cm/s without overlap: 2 steps from the easy 20. 211 (16.95) is 33 off, so 212.
   *   <li>Hit 0.90 x 3.937 / 4 = 0.8858267717. Spread 1604.1667 / 4.5 x 0.70 x 0.88583 x 0.95 =
   *       210.0 ft2/gal = 5.153760308 m2/L; paint 3 x 2 / 5.15376 = 1.164198496 L.
   *   <li>Spray 2 x 32.29173 / (20.17679 x 4 x 0.88583 x 25 x 0.05) = 0.7226874776 h.
   *   <li>Peeling: scraped 32.29 / 80, wiped 32.29 / 800, and 98.425 ft caulked at 100 ft/h:
   *       1.428263273 h. Trim is not rolled, and nothing says what to mask.
   * </ul>
   */
  @Test
  void peelingTrimOnAMetricSheet() {
    FilledLine filled =
        Bids.fill(
            Bids.line(
                METRIC,
                InputColumn.SURFACE,
                "baseboard",
                InputColumn.COATING,
                "latex",
                InputColumn.CONDITION,
                "peeling",
                InputColumn.LENGTH,
                30,
                InputColumn.GIRTH,
                100));

    assertFigures(
        filled,
        "212",
        NET_AREA,
        3,
        FLOW,
        0.5101276396,
        SPEED,
        51.24903667,
        COATS,
        2,
        WET_FILM,
        114.3,
        DRY_FILM,
        82.296,
        SPREAD,
        5.153760308,
        PAINT,
        1.164198496,
        SPRAY,
        0.7226874776,
        ROLL,
        0,
        MASK,
        0,
        PREPARE,
        1.428263273,
        LABOUR,
        2.150950751);
  }

  /**
   * Six painted flush doors in oil-based paint, thinned by 10 %.
   *
   * <ul>
   *   <li>Area 6 x 21 x 2 x 1.0 = 252 ft2. Density (1.15 + 0.1 x 0.80) / 1.1 = 1.118181818 kg/L.
   *   <li>Target 3.5 mil, the widest fan of doors 8 in. 0.010 in at 1800 psi passes 0.0957282128
   *       gpm: 18.42768096 in/s, 16 steps from 20; 409 (14.93) is 59 off, 411 (22.30) 22: so 410.
   *   <li>Dry film 3.5 x 0.52 / 1.1 x 2 = 3.309090909 mil.
   *   <li>Spread of the unthinned gallon 1604.1667 x 1.1 / 3.5 x 0.70 x 0.85 x 0.95 = 284.9802083;
   *       paint 252 x 2 / 284.98 = 1.768543868 gal.
   *   <li>Spray 504 / (18.42768 x 8 x 0.5 x 0.85 x 25 x 0.12) = 2.681388114 h.
   *   <li>Hardware 6 x 0.10 x 1.25 = 0.75 h. Wiped 252 / 800 and sanded 252 / 400: 0.945 h.
   * </ul>
   */
  @Test
  void paintedDoorsInThinnedOil() {
    FilledLine filled =
        Bids.fill(
            Bids.line(
                InputColumn.SURFACE, "flush doors",
                InputColumn.COATING, "alkyd",
                InputColumn.CONDITION, "repaint",
                InputColumn.COUNT, 6,
                InputColumn.THINNER, 0.1));

    assertFigures(
        filled,
        "410",
        NET_AREA,
        252,
        PRESSURE,
        1800,
        FLOW,
        0.0957282128,
        SPEED,
        18.42768096,
        COATS,
        2,
        WET_FILM,
        3.5,
        DRY_FILM,
        3.309090909,
        SPREAD,
        284.9802083,
        PAINT,
        1.768543868,
        SPRAY,
        2.681388114,
        ROLL,
        0,
        MASK,
        0.75,
        PREPARE,
        0.945,
        LABOUR,
        4.376388114);
  }

  /**
   * A metal deck in dry fall from a sprayer with 50 ft of 3/8 in hose, 20 ft below: 60 x 40 ft, at
   * 22 ft, 5 mil dry specified, the pump rated 0.45 gpm.
   *
   * <ul>
   *   <li>Area 60 x 40 x 1.25 = 3000 ft2. Working maximum the lesser of 8 and 1.25 x 6 = 7.5 mil: 5
   *       / (0.40 x 7.5) = 1.67, so 2 coats of 5 / (0.40 x 2) = 6.25 mil.
   *   <li>Height takes 1350 x 9.80665 x 6.096 m = 11.70524261 psi. 0.019 in: 1943.180397 psi at the
   *       gun, 0.326780994 gpm, hose loss 128 x 0.20 x 15.24 m x Q / (pi x (9.525 mm)4) =
   *       45.11436076 psi; the three add up to the 2000 psi set.
   *   <li>0.021 in would want 1.25 x 0.39818 = 0.4977 gpm of the pump, over 0.45; 0.019 in wants
   *       0.408. Of 517 (19.38 in/s) and 519 (24.15565107) the latter is nearer to 30.
   *   <li>Spread 1604.1667 / 6.25 x 0.60 x 0.85 x 0.97 (3 % in pails, the hose apart) = 126.973;
   *       paint 3000 x 2 / 126.973 = 47.25414064 gal.
   *   <li>Spray 6000 / (24.15565 x 10 x 0.5 x 0.85 x 25 x 0.20) x 1.6 = 18.70223678 h. Floor 2400 /
   *       500 x 1.25 = 6 h, without the height.
   * </ul>
   */
  @Test
  void metalDeckThroughAHose() {
    Catalogue tables = WorkedLines.bigOne();
    FilledLine filled = Bids.fill(tables, WorkedLines.DECK);

    assertFigures(
        filled,
        "519",
        NET_AREA,
        3000,
        PRESSURE,
        2000,
        FLOW,
        0.326780994,
        SPEED,
        24.15565107,
        COATS,
        2,
        WET_FILM,
        6.25,
        DRY_FILM,
        5,
        SPREAD,
        126.973,
        PAINT,
        47.25414064,
        SPRAY,
        18.70223678,
        ROLL,
        0,
        MASK,
        6,
        PREPARE,
        0,
        LABOUR,
        24.70223678);
    assertThat(filled.recommended().gun().gunPsi()).isCloseTo(1943.180397, withinPercentage(1e-7));
    assertThat(filled.recommended().gun().lossPsi()).isCloseTo(45.11436076, withinPercentage(1e-7));
  }

  /**
   * Ten cabinet fronts in lacquer on a metric sheet, 80 um dry specified.
   *
   * <ul>
   *   <li>Area 10 x 5 x 2 = 100 ft2 = 9.290304 m2. 80 um is 3.149606299 mil; working maximum the
   *       lesser of 5 and 1.25 x 3.5 = 4.375 mil: 3.1496 / (0.25 x 4.375) = 2.88, so 3 coats of
   *       3.1496 / (0.25 x 3) = 4.199475066 mil = 106.6666667 um.
   *   <li>The widest fan of cabinets is 6 in. 0.010 in at 1400 psi and 0.95 kg/L passes
   *       0.0915929668 gpm = 0.3467170960 L/min: 19.59316675 in/s = 49.76664354 cm/s, 4 steps from
   *       20. 309 (15.87) is 46 off, 311 (23.71) 34: so 310.
   *   <li>Spread 1604.1667 / 4.1995 x 0.70 x 0.65 x 0.95 = 165.116123 ft2/gal = 4.05234375 m2/L;
   *       paint 9.290304 x 3 / 4.05234 = 6.877726501 L.
   *   <li>Spray 300 / (19.59317 x 6 x 0.5 x 0.65 x 25 x 0.08) = 3.926015530 h.
   * </ul>
   */
  @Test
  void cabinetsInLacquerByTheFilm() {
    FilledLine filled =
        Bids.fill(
            Bids.line(
                METRIC,
                InputColumn.SURFACE,
                "cabinets",
                InputColumn.COATING,
                "lacquer",
                InputColumn.COUNT,
                10,
                InputColumn.SPECIFIED_FILM,
                80));

    assertFigures(
        filled,
        "310",
        NET_AREA,
        9.290304,
        FLOW,
        0.3467170960,
        SPEED,
        49.76664354,
        COATS,
        3,
        WET_FILM,
        106.6666667,
        DRY_FILM,
        80,
        SPREAD,
        4.05234375,
        PAINT,
        6.877726501,
        SPRAY,
        3.926015530,
        ROLL,
        0,
        MASK,
        0,
        PREPARE,
        0,
        LABOUR,
        3.926015530);
  }
}
