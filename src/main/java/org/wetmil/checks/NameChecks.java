package org.wetmil.checks;

import static org.wetmil.estimate.InputColumn.COATING;
import static org.wetmil.estimate.InputColumn.SURFACE;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.wetmil.catalogue.Kind;
import org.wetmil.catalogue.Lookup;
import org.wetmil.catalogue.Names;
import org.wetmil.estimate.InputColumn;

/** Words that stand in none of the tables. */
final class NameChecks {
  static final List<Check> ALL =
      List.of(
          new Check(
              "unknown-surface",
              Severity.STOP,
              "The surface is not known",
              "A surface says how the line is measured and how the hand moves.",
              Kind.HOUSE,
              "names match whole, in any case, singular or plural",
              "Write one of the names offered, or add a row to a Surfaces sheet.",
              Rule.ofLine(
                  line -> unknown(line, SURFACE, line.work().surfaceFound(), "Surfaces", ""))),
          new Check(
              "unknown-coating",
              Severity.STOP,
              "The coating is not known",
              "A coating says which orifice and film to take; a guess would be paid for in paint.",
              Kind.HOUSE,
              "names match whole, in any case, singular or plural",
              "Write one of the names offered, or add a row to a Coatings sheet.",
              Rule.ofLine(
                  line -> unknown(line, COATING, line.work().coatingFound(), "Coatings", ""))));

  private NameChecks() {}

  /**
   * @param meanwhile what is done without the name, as in ", so no limit is taken"
   */
  static Optional<Fault> unknown(
      Line line, InputColumn column, Lookup<?> found, String table, String meanwhile) {
    if (!(found instanceof Lookup.Unknown<?> unknown) || line.cell(column).isFault()) {
      return Optional.empty();
    }
    String name = Say.quoted(unknown.name());
    String nearest = Say.or(distinct(unknown.nearest()));
    String row = "add a row to a " + table + " sheet";
    return line.found(
        column,
        name,
        nearest,
        "%s is not a known %s%s; %s."
            .formatted(
                name,
                column.heading().toLowerCase(Locale.ROOT),
                meanwhile,
                nearest.isEmpty() ? row : "write " + nearest + ", or " + row));
  }

  /** One spelling of each name offered: not wall beside walls. */
  private static List<String> distinct(List<String> names) {
    Map<String, String> byKey = new LinkedHashMap<>();
    names.forEach(name -> byKey.putIfAbsent(Names.key(name), name));
    return List.copyOf(byKey.values());
  }
}
