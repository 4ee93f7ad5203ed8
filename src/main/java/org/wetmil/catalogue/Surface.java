package org.wetmil.catalogue;

/**
 * A surface as the area, the tip and the hours need it. Sizes that a surface has no use for are
 * NaN; a factor or faces not stated count as 1.
 *
 * @param stickRow where the share that stays on is stated: the surface's row or one of Losses
 */
public record Surface(
    Row row,
    String name,
    MeasuredBy measuredBy,
    Narrowest narrowest,
    int widestFanDigit,
    Row stickRow,
    double stick,
    double hit,
    boolean joinery,
    double triggerShare,
    double unitFt2,
    double unitLengthFt,
    double girthIn,
    double faces,
    double factor,
    boolean suggestsTexture,
    boolean rollsByDefault,
    boolean trim,
    boolean hardware,
    boolean outdoors,
    boolean walls,
    boolean ceiling,
    boolean floor) {

  static Surface of(Row row) {
    return new Surface(
        row,
        row.name(),
        MeasuredBy.find(row.text("Measured by")).orElseThrow(),
        Narrowest.of(row.text("Narrowest dimension")),
        (int) Math.round(row.number("Widest fan")),
        row,
        row.number("Stick"),
        row.number("Hit"),
        row.text("Band").equalsIgnoreCase("joinery"),
        row.number("Trigger share"),
        row.number("Unit area"),
        row.number("Unit length"),
        row.number("Girth"),
        orOne(row.number("Faces")),
        orOne(row.number("Factor")),
        row.isYes("Suggests texture"),
        row.isYes("Roll by default"),
        row.isYes("Trim"),
        row.isYes("Hardware"),
        row.isYes("Outdoors"),
        row.text("Piece of").equals("walls"),
        row.text("Piece of").equals("ceiling"),
        row.text("Piece of").equals("floor"));
  }

  /** The same with the share that stays on taken from a row of the Losses table. */
  Surface with(Row loss) {
    return new Surface(
        row,
        name,
        measuredBy,
        narrowest,
        widestFanDigit,
        loss,
        loss.number("Stick"),
        hit,
        joinery,
        triggerShare,
        unitFt2,
        unitLengthFt,
        girthIn,
        faces,
        factor,
        suggestsTexture,
        rollsByDefault,
        trim,
        hardware,
        outdoors,
        walls,
        ceiling,
        floor);
  }

  private static double orOne(double value) {
    return Double.isNaN(value) ? 1 : value;
  }
}
