package org.wetmil.checks;

import static org.wetmil.estimate.InputColumn.COATS;

import java.util.List;
import java.util.Optional;
import org.wetmil.catalogue.Kind;

/** Coats and the film that they build. */
final class CoatChecks {
  static final List<Check> ALL =
      List.of(
          new Check(
              "coats-not-whole",
              Severity.WARNING,
              "The coats are no whole number",
              "A part of a coat is painted as a whole one.",
              Kind.HOUSE,
              "coats are whole, from 1 to 99",
              "Type whole coats, or empty the cell to have them taken from the film.",
              Rule.ofLine(CoatChecks::notWhole)));

  private CoatChecks() {}

  private static Optional<Fault> notWhole(Line line) {
    double stated = line.number(COATS);
    boolean whole = stated == Math.rint(stated) && stated >= 1 && stated <= 99;
    if (Double.isNaN(stated) || whole) {
      return Optional.empty();
    }
    String measured = Say.number(stated, 2);
    String taken = line.isSetUp() ? ", so " + line.filled().coats().coats() + " are counted" : "";
    return line.found(
        COATS,
        measured,
        "whole, 1 to 99",
        "%s coats is not a whole number from 1 to 99%s; type whole coats."
            .formatted(measured, taken));
  }
}
