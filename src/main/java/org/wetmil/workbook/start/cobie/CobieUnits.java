package org.wetmil.workbook.start.cobie;

import java.util.ArrayList;
import java.util.List;
import org.wetmil.quantity.Dimension;
import org.wetmil.quantity.Unit;
import org.wetmil.quantity.UnitSystem;
import org.wetmil.workbook.read.words.UnitWords;
import org.wetmil.workbook.start.rooms.Sizes;

/**
 * The units that the Facility sheet states: lengths and areas apart, since many files have
 * millimetres beside square metres.
 *
 * @param remarks what was not stated, or not in a unit that is known
 */
record CobieUnits(Unit length, Unit area, UnitSystem system, List<String> remarks) {

  static CobieUnits of(CobieSheet facility) {
    List<String> remarks = new ArrayList<>();
    String lengths = first(facility, "LinearUnits");
    String areas = first(facility, "AreaUnits");
    Unit area = Sizes.unit(areas, Dimension.AREA).orElse(null);
    Unit length = Sizes.unit(lengths, Dimension.LENGTH).orElse(null);
    if (length == null) {
      boolean us = area != null && !UnitWords.isMetric(area);
      length = us ? Unit.FOOT : Unit.METRE;
      remarks.add(said("LinearUnits", lengths, length));
    }
    if (area == null) {
      area = UnitWords.isMetric(length) ? Unit.SQUARE_METRE : Unit.SQUARE_FOOT;
      remarks.add(said("AreaUnits", areas, area));
    }
    UnitSystem system = UnitWords.isMetric(length) ? UnitSystem.METRIC : UnitSystem.US;
    return new CobieUnits(length, area, system, remarks);
  }

  private static String first(CobieSheet facility, String heading) {
    return facility.records().stream().findFirst().map(row -> row.text(heading)).orElse("");
  }

  private static String said(String heading, String text, Unit taken) {
    String what =
        text.isEmpty()
            ? "the sheet Facility states no " + heading
            : "%s \"%s\" on the sheet Facility is not known".formatted(heading, text);
    return "%s; %s is taken. Look at a size or two.".formatted(what, taken.symbol());
  }
}
