package org.wetmil.checks;

import org.wetmil.estimate.CoatPlan;
import org.wetmil.estimate.InputColumn;
import org.wetmil.quantity.Count;
import org.wetmil.quantity.Quantity;

/** What a line is computed with where a cell that it can do without cannot be read. */
final class Instead {
  private Instead() {}

  /** As in ", so 2 coats are taken"; empty where nothing is taken in its place. */
  static String of(Line line, InputColumn column) {
    if (!line.isSetUp()) {
      return "";
    }
    String taken =
        switch (column) {
          case COATS -> coats(line) + " taken";
          case SPECIFIED_FILM -> "no film is specified and " + coats(line) + " taken";
          case PRESSURE ->
              line.say(Quantity.PRESSURE, line.filled().setPsi()) + " is set at the pump";
          case THINNER -> "no thinner is counted";
          case OPENINGS -> "no opening is taken off";
          case MASK_EDGE, MASK_OPENINGS -> "no masking is counted from it";
          case LENGTH, WIDTH, COUNT, GIRTH ->
              line.has(InputColumn.AREA)
                  ? "the area that is stated counts"
                  : "the usual size counts";
          case HEIGHT -> "the hours count no height";
          case CONDITION -> "no preparation is counted";
          case TEXTURE -> "the surface counts as smooth";
          case SHAPE -> "no shape is counted";
          case SPRAYER -> "no limit of a pump is kept";
          case INCLUDE -> "the line counts";
          default -> "";
        };
    return taken.isEmpty() ? "" : ", so " + taken;
  }

  private static String coats(Line line) {
    CoatPlan plan = line.filled().coats();
    String why =
        switch (plan.basis()) {
          case STATED -> "as stated";
          case SPECIFIED_FILM -> "which the specified film wants";
          case USUAL -> "the usual of " + line.coating().name();
        };
    return "%s, %s, %s"
        .formatted(Count.of(plan.coats(), "coat"), why, plan.coats() == 1 ? "is" : "are");
  }
}
