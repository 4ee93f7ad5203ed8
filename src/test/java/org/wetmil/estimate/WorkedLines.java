package org.wetmil.estimate;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.StatedRow;
import org.wetmil.catalogue.Tables;
import org.wetmil.quantity.UnitSystem;

/** Lines and tables that several tests work by hand. */
public final class WorkedLines {
  /** 590 ft2, 4.977638902 gal and 3.813128286 h in HandWorkedLinesTest. */
  public static final BidLine DRYWALL =
      Bids.line(
          InputColumn.SURFACE, "walls",
          InputColumn.COATING, "latex",
          InputColumn.CONDITION, "new drywall",
          InputColumn.LENGTH, 20,
          InputColumn.WIDTH, 15,
          InputColumn.HEIGHT, 9,
          InputColumn.OPENINGS, 40);

  /** 3000 ft2 in HandWorkedLinesTest, with the sprayer of {@link #bigOne}. */
  public static final BidLine DECK =
      Bids.line(
          InputColumn.SURFACE, "metal deck",
          InputColumn.COATING, "dry fog",
          InputColumn.LENGTH, 60,
          InputColumn.WIDTH, 40,
          InputColumn.HEIGHT, 22,
          InputColumn.SPECIFIED_FILM, 5,
          InputColumn.SPRAYER, "big one");

  /** Walls sprayed from that tower. */
  static final BidLine HIGH_WALLS =
      Bids.line(
          InputColumn.SURFACE, "walls",
          InputColumn.COATING, "lead",
          InputColumn.AREA, 500,
          InputColumn.SPRAYER, "tower",
          InputColumn.TIP, "517");

  private WorkedLines() {}

  /** A tower of 300 ft: a coating of 3 kg/L takes 390 psi of the 310 that the pump gives. */
  static Catalogue tower(StatedRow... settings) {
    return Catalogue.builtIn()
        .with(
            Map.of(
                Tables.SPRAYERS,
                List.of(
                    Bids.row(
                        0,
                        "Sprayer",
                        "Tower",
                        "Hose bore",
                        0.25,
                        "Hose length",
                        500,
                        "Rise",
                        300,
                        "Greatest pressure",
                        310)),
                Tables.COATINGS,
                List.of(Bids.row(0, "Coating", "Lead", "Class", "latex", "Density", 3)),
                Tables.SETTINGS,
                List.of(settings)),
            UnitSystem.US,
            new ArrayList<>());
  }

  /** The built-in tables with the sprayer Big One: a hose of 50 ft, 20 ft up. */
  public static Catalogue bigOne() {
    return Bids.with(
        Tables.SPRAYERS,
        List.of(
            Bids.row(
                0,
                "Sprayer",
                "Big One",
                "Greatest flow",
                0.45,
                "Hose bore",
                0.375,
                "Hose length",
                50,
                "Rise",
                20)));
  }

  /** A line of latex: a surface, and pairs of column and value. */
  static BidLine latex(String surface, Object... more) {
    List<Object> cells = new ArrayList<>();
    cells.addAll(List.of(InputColumn.SURFACE, surface, InputColumn.COATING, "latex"));
    cells.addAll(Arrays.asList(more));
    return Bids.line(cells.toArray());
  }
}
