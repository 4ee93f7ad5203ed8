package org.wetmil.checks;

import static org.wetmil.estimate.InputColumn.BACK_ROLL;
import static org.wetmil.estimate.InputColumn.COATING;
import static org.wetmil.estimate.InputColumn.CONDITION;
import static org.wetmil.estimate.InputColumn.INCLUDE;
import static org.wetmil.estimate.InputColumn.SHAPE;
import static org.wetmil.estimate.InputColumn.SPRAYER;
import static org.wetmil.estimate.InputColumn.SURFACE;
import static org.wetmil.estimate.InputColumn.TEXTURE;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.wetmil.catalogue.Coating;
import org.wetmil.catalogue.Kind;
import org.wetmil.catalogue.Lookup;
import org.wetmil.catalogue.Names;
import org.wetmil.catalogue.Quoted;
import org.wetmil.catalogue.Tables;
import org.wetmil.estimate.FilledBid;
import org.wetmil.estimate.InputColumn;

/** Words that stand in none of the tables, or in more than one place of them. */
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
                  line -> unknown(line, COATING, line.work().coatingFound(), "Coatings", ""))),
          new Check(
              "ambiguous-coating",
              Severity.NOTE,
              "The word for the coating has more than one meaning",
              "Water- and solvent-borne coatings share names, and their tips and films differ.",
              Kind.PRACTICE,
              "common practice: enamel, acrylic and varnish name several coatings",
              "Write the class, or the product and a row for it on a Coatings sheet.",
              Rule.ofBid(NameChecks::ambiguous)),
          new Check(
              "unknown-condition",
              Severity.NOTE,
              "The condition is not known",
              "A condition that is not known asks for no preparation, and costs none.",
              Kind.HOUSE,
              "the Conditions table",
              "Write one of the names offered, or add a row to a Conditions sheet.",
              Rule.ofLine(
                  line ->
                      unknown(
                          line,
                          CONDITION,
                          line.work().conditionFound(),
                          "Conditions",
                          ", so no preparation is counted"))),
          new Check(
              "unknown-texture",
              Severity.WARNING,
              "The texture is not known",
              "A rough surface takes up to half as much paint again.",
              Kind.HOUSE,
              "the Textures table",
              "Write one of the names offered, or add a row to a Textures sheet.",
              Rule.ofLine(
                  line ->
                      unknown(
                          line,
                          TEXTURE,
                          line.work().textureFound(),
                          "Textures",
                          ", so the surface counts as smooth"))),
          new Check(
              "unknown-shape",
              Severity.WARNING,
              "The shape is not known",
              "A shape changes the area that is painted, up to twice the flat one.",
              Kind.HOUSE,
              "the Shapes table",
              "Write one of the names offered, or add a row to a Shapes sheet.",
              Rule.ofLine(
                  line ->
                      unknown(
                          line,
                          SHAPE,
                          line.work().shapeFound(),
                          "Shapes",
                          ", so the surface keeps its own factor"))),
          new Check(
              "unknown-sprayer",
              Severity.WARNING,
              "The sprayer is not known",
              "Without its figures no limit of pump, pressure and orifice is kept.",
              Kind.HOUSE,
              "the Sprayers sheet; said once for each name where there is none",
              "Describe the machine on a Sprayers sheet.",
              Rule.ofBid(NameChecks::sprayers)),
          new Check(
              "unknown-back-roll",
              Severity.NOTE,
              "The word under Back-roll is not known",
              "Rolling behind the gun takes hours that a line can only count when it is told.",
              Kind.HOUSE,
              "never, first coat or all",
              "Write never, first coat or all.",
              Rule.ofLine(
                  line ->
                      word(
                          line,
                          BACK_ROLL,
                          line.work().isRollingKnown(),
                          "never, first coat or all",
                          "the usual is taken"))),
          new Check(
              "unknown-include",
              Severity.WARNING,
              "The word under Include is not known",
              "A line that is not left out counts in the totals.",
              Kind.HOUSE,
              "no leaves a line out; blank and yes count it",
              "Write yes or no.",
              Rule.ofLine(
                  line ->
                      word(
                          line,
                          INCLUDE,
                          line.work().isIncludeKnown(),
                          "yes or no",
                          "the line counts"))));

  private NameChecks() {}

  /**
   * @param meanwhile what is done without the name, as in ", so no limit is taken"
   */
  static Optional<Fault> unknown(
      Line line, InputColumn column, Lookup<?> found, String table, String meanwhile) {
    if (!(found instanceof Lookup.Unknown<?> unknown) || line.cell(column).isFault()) {
      return Optional.empty();
    }
    String name = Quoted.of(unknown.name());
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

  private static Optional<Fault> word(
      Line line, InputColumn column, boolean known, String expected, String meanwhile) {
    if (known || line.cell(column).isFault()) {
      return Optional.empty();
    }
    String raw = Quoted.of(line.text(column));
    return line.found(
        column,
        raw,
        expected,
        "%s is none of the words known, so %s; write %s.".formatted(raw, meanwhile, expected));
  }

  private static Stream<Fault> ambiguous(FilledBid bid) {
    return Line.all(bid)
        .filter(
            line ->
                line.work().coatingFound() instanceof Lookup.Found<Coating> found
                    && found.ambiguous())
        .filter(Line.firstOf(line -> Names.key(line.text(COATING))))
        .map(
            line -> {
              String raw = Quoted.of(line.text(COATING));
              String taken = line.coating().name();
              return line.fault(
                  COATING,
                  raw,
                  taken,
                  "%s can mean several coatings and is taken as %s; write the class or the product."
                      .formatted(raw, taken));
            });
  }

  private static Stream<Fault> sprayers(FilledBid bid) {
    boolean described = !bid.bid().catalogue().rows(Tables.SPRAYERS).isEmpty();
    Predicate<Line> once = Line.firstOf(line -> Names.key(line.text(SPRAYER)));
    return Line.all(bid)
        .flatMap(
            line ->
                unknown(
                    line,
                    SPRAYER,
                    line.work().sprayerFound(),
                    "Sprayers",
                    ", so no limit of its pump is kept")
                    .filter(fault -> described || once.test(line))
                    .stream());
  }

  /** One spelling of each name offered: not wall beside walls. */
  private static List<String> distinct(List<String> names) {
    Map<String, String> byKey = new LinkedHashMap<>();
    names.forEach(name -> byKey.putIfAbsent(Names.key(name), name));
    return List.copyOf(byKey.values());
  }
}
