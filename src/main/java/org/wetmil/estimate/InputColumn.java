package org.wetmil.estimate;

import java.util.List;
import java.util.Optional;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Setting;
import org.wetmil.catalogue.Tables;
import org.wetmil.formula.Place;
import org.wetmil.quantity.Quantity;

/** The columns that an estimator fills; other names for them stand in headings.csv. */
public enum InputColumn implements Place {
  ROOM("Room", Quantity.TEXT, "the room, or the part of the building outside"),
  FLOOR("Floor", Quantity.TEXT, "the floor, for subtotals"),
  SURFACE(
      "Surface", Quantity.TEXT, "walls, ceiling, trim, doors, ...: a name of the Surfaces table"),
  CONDITION("Condition", Quantity.TEXT, "new, primed, bare, previously painted, peeling, ..."),
  LENGTH("Length", Quantity.LENGTH, "length of the room, wall or trim"),
  WIDTH("Width", Quantity.LENGTH, "width of the room; with it, walls are taken all round"),
  HEIGHT("Height", Quantity.LENGTH, "height of the wall; on a ceiling line the working height"),
  COUNT("Count", Quantity.NUMBER, "pieces, or how often the line occurs; blank is one"),
  AREA("Area", Quantity.AREA, "gross area; wins over the dimensions"),
  OPENINGS("Openings", Quantity.AREA, "area of doors and windows in all, to be deducted"),
  GIRTH("Girth", Quantity.GIRTH, "girth of trim, columns and pipes"),
  COATING("Coating", Quantity.TEXT, "a class of coating, or a product of your Coatings sheet"),
  COLOUR("Colour", Quantity.TEXT, "colour, for the order"),
  SHEEN("Sheen", Quantity.TEXT, "sheen, for the order"),
  COATS("Coats", Quantity.NUMBER, "coats; blank: from the specified film, else the usual"),
  SPECIFIED_FILM("Specified dry film", Quantity.FILM, "total dry film of all coats, or a range"),
  TIP("Tip", Quantity.TEXT, "the tip planned, as in 517"),
  PRESSURE(
      "Pressure", Quantity.PRESSURE, "pressure at the pump; at the gun if the heading says so"),
  SPRAYER("Sprayer", Quantity.TEXT, "a machine of your Sprayers sheet"),
  TEXTURE(
      "Texture", Quantity.TEXT, "smooth (blank), textured, stucco, rough-sawn, open block, ..."),
  SHAPE(
      "Shape", Quantity.TEXT, "flush, louvred, corrugated steel, ...: a name of the Shapes table"),
  BACK_ROLL("Back-roll", Quantity.TEXT, "never, first coat or all"),
  THINNER("Thinner", Quantity.SHARE, "thinner by volume of paint"),
  MASK_EDGE("Mask edge", Quantity.LENGTH, "length of edge to tape and paper"),
  MASK_OPENINGS("Mask openings", Quantity.NUMBER, "openings to mask"),
  INCLUDE("Include", Quantity.TEXT, "no: filled, but left out of the totals"),
  ACTUAL_PAINT(
      "Actual paint", Quantity.VOLUME, "paint that the line took, once known: for the audit"),
  ACTUAL_HOURS(
      "Actual hours", Quantity.TIME, "person-hours that the line took, once known: for the audit"),
  NOTES("Notes", Quantity.TEXT, "yours; kept as it is");

  private final String heading;
  private final Quantity quantity;
  private final String meaning;

  InputColumn(String heading, Quantity quantity, String meaning) {
    this.heading = heading;
    this.quantity = quantity;
    this.meaning = meaning;
  }

  public String heading() {
    return heading;
  }

  public Quantity quantity() {
    return quantity;
  }

  public String meaning() {
    return meaning;
  }

  /** The table whose names stand in the column; empty when none lists them. */
  public Optional<Tables> table() {
    return Optional.ofNullable(
        switch (this) {
          case SURFACE -> Tables.SURFACES;
          case CONDITION -> Tables.CONDITIONS;
          case COATING -> Tables.COATINGS;
          case SPRAYER -> Tables.SPRAYERS;
          case TEXTURE -> Tables.TEXTURES;
          case SHAPE -> Tables.SHAPES;
          default -> null;
        });
  }

  /** The words that stand in the column where no table lists them; none when any may. */
  public List<String> words() {
    return switch (this) {
      case BACK_ROLL -> Catalogue.builtIn().range(Setting.BACK_ROLL).words();
      case INCLUDE -> List.of("yes", "no");
      default -> List.of();
    };
  }

  /**
   * Whether a number can stand in the column: a size is above 0, an amount at least 0. What it does
   * not take counts as not stated, and a finding says so.
   */
  public boolean takes(double number) {
    return switch (this) {
      case LENGTH, WIDTH, HEIGHT, COUNT, AREA, GIRTH, SPECIFIED_FILM -> number > 0;
      case OPENINGS, THINNER, MASK_EDGE, MASK_OPENINGS, ACTUAL_PAINT, ACTUAL_HOURS -> number >= 0;
      default -> true;
    };
  }
}
