package org.wetmil.checks;

import static org.wetmil.estimate.InputColumn.COATING;
import static org.wetmil.estimate.InputColumn.CONDITION;
import static org.wetmil.estimate.InputColumn.ROOM;
import static org.wetmil.estimate.InputColumn.TEXTURE;
import static org.wetmil.estimate.InputColumn.THINNER;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Coating;
import org.wetmil.catalogue.Condition;
import org.wetmil.catalogue.Kind;
import org.wetmil.catalogue.Names;
import org.wetmil.catalogue.Quoted;
import org.wetmil.catalogue.Setting;
import org.wetmil.catalogue.Surface;
import org.wetmil.catalogue.Texture;
import org.wetmil.estimate.FilledBid;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.quantity.Quantity;
import org.wetmil.trade.Film;
import org.wetmil.trade.Spread;

/** What makes the paint of a line come out wrong: thinner, spread, texture, primer. */
final class PaintChecks {
  static final List<Check> ALL =
      List.of(
          new Check(
              "class-values",
              Severity.NOTE,
              "A coating rests on the figures of its class",
              "Solids and films differ from product to product, and paint follows them.",
              Kind.HOUSE,
              "the built-in classes are starting points; said once for each coating",
              "Give the product a row on a Coatings sheet with the figures of its data sheet.",
              Rule.ofBid(PaintChecks::classValues)),
          new Check(
              "share-out-of-range",
              Severity.WARNING,
              "A share is more than a whole",
              "More thinner than paint is a slip of the keys or of the unit.",
              Kind.HOUSE,
              "a share may be typed 5 %, 5 or 0.05",
              "Type the share as a percentage.",
              Rule.ofLine(PaintChecks::shareOutOfRange)),
          new Check(
              "thinner-past-limit",
              Severity.WARNING,
              "More thinner than the coating takes",
              "Too much thinner takes the film under its least and may break air-quality rules.",
              Kind.HOUSE,
              "the coating's greatest thinner; its data sheet wins",
              "Thin less, or take a larger orifice.",
              Rule.ofLine(PaintChecks::thinner)),
          new Check(
              "spread-implausible",
              Severity.WARNING,
              "The spread is not that of such a coating",
              "A film or a loss typed in the wrong unit shows in the spread.",
              Kind.HOUSE,
              "settings Spread low and Spread high, against the built-in class and surface",
              "Check the films on the Coatings sheet and the shares on the Surfaces sheet.",
              Rule.ofLine(PaintChecks::spread)),
          new Check(
              "texture-not-stated",
              Severity.NOTE,
              "The texture is not stated where it is often rough",
              "A rough surface takes up to half as much paint again; blank counts as smooth.",
              Kind.PRACTICE,
              "common practice: siding, fences, block, brick and concrete are seldom smooth",
              "State the texture, even if it is smooth.",
              Rule.ofLine(PaintChecks::textureNotStated)),
          new Check(
              "shape-and-roughness",
              Severity.NOTE,
              "A shape factor and a roughness on one line",
              "One changes the area and the other the paint; together they may count one thing twice.",
              Kind.HOUSE,
              "the Surfaces and Textures tables",
              "Keep both only if the surface is both shaped and rough.",
              Rule.ofLine(PaintChecks::shapeAndRoughness)),
          new Check(
              "filler-texture",
              Severity.NOTE,
              "A filler's own film includes the voids",
              "The roughness of a surface is not counted again for a coating that fills it.",
              Kind.PRACTICE,
              "common practice for block filler",
              "Nothing, unless the filler's film was stated without the voids.",
              Rule.ofLine(PaintChecks::fillerTexture)),
          new Check(
              "primer-missing",
              Severity.WARNING,
              "A bare surface without a primer line",
              "A finish on a bare surface holds and covers badly.",
              Kind.PRACTICE,
              "common practice; stain needs none, and block filler counts as one",
              "Add a primer line for the same room and surface, or change the condition.",
              Rule.ofBid(PaintChecks::primerMissing)));

  private static final double ROUNDING = 1e-9;

  private PaintChecks() {}

  private static Stream<Fault> classValues(FilledBid bid) {
    return Line.all(bid)
        .filter(line -> line.filled().isFilled() && !line.coating().named())
        .filter(Line.firstOf(line -> line.coating().name()))
        .map(
            line -> {
              Coating coating = line.coating();
              String solids = Say.percent(coating.volumeSolids());
              return line.fault(
                  COATING,
                  solids,
                  "",
                  ("The figures of %s are those of a class, %s solids and %s wet; put those of the"
                          + " data sheet on a Coatings sheet.")
                      .formatted(
                          coating.name(), solids, line.say(Quantity.FILM, coating.wetTargetMil())));
            });
  }

  private static Optional<Fault> shareOutOfRange(Line line) {
    double share = line.number(THINNER);
    return share > 1
        ? line.found(
            THINNER,
            Say.percent(share),
            "0 to 100 %",
            "%s of thinner is more than the paint itself; type it as a percentage, as in 5 %%."
                .formatted(Say.percent(share)))
        : Optional.empty();
  }

  private static Optional<Fault> thinner(Line line) {
    double share = line.number(THINNER);
    if (line.coating() == null || share > 1) {
      return Optional.empty();
    }
    double most = line.coating().greatestThinner();
    return share > most + ROUNDING
        ? line.found(
            THINNER,
            Say.percent(share),
            Say.percent(most),
            "%s of thinner is over the %s that %s takes; thin less."
                .formatted(Say.percent(share), Say.percent(most), line.coating().name()))
        : Optional.empty();
  }

  private static Optional<Fault> spread(Line line) {
    // a film outside the coating's range is said by the checks of the film
    if (!line.isSetUp() || !line.filled().followed().inside()) {
      return Optional.empty();
    }
    double expected = classSpread(line);
    double found = line.filled().base(FilledColumn.SPREAD);
    double low = line.setting(Setting.SPREAD_LOW) * expected;
    double high = line.setting(Setting.SPREAD_HIGH) * expected;
    if (Double.isNaN(expected)
        || (found >= low * (1 - ROUNDING) && found <= high * (1 + ROUNDING))) {
      return Optional.empty();
    }
    Say.Pair said = line.pair(Quantity.SPREAD, found, found < low ? low : high);
    String limit = line.range(Quantity.SPREAD, low, high);
    return line.found(
        COATING,
        said.measured(),
        limit,
        "A spread of %s is outside the %s usual for %s there; check films, losses and units."
            .formatted(said.measured(), limit, line.coating().className()));
  }

  /** Spread of the built-in class on the built-in surface, with the line's fan and thinner. */
  private static double classSpread(Line line) {
    Coating of = Catalogue.builtIn().coating(line.coating().className()).orNull();
    if (of == null) {
      return Double.NaN;
    }
    Surface builtIn = Catalogue.builtIn().surface(line.surface().name()).orNull();
    Surface on = builtIn == null ? line.surface() : builtIn;
    boolean narrow = line.filled().stroke().narrow();
    double hit =
        narrow
            ? Film.narrowHit(
                on.hit(), line.filled().stroke().widthIn(), line.filled().followed().fanIn())
            : on.hit();
    Texture texture = line.work().textureFound().orNull();
    double roughness = texture == null || line.coating().fillsVoids() ? 1 : texture.roughness();
    double waste = line.setting(line.work().waste());
    double dryMil = Film.dryMil(of.wetTargetMil(), of.volumeSolids(), line.work().thinnerShare());
    return Spread.practicalFt2PerGal(
        Spread.theoreticalFt2PerGal(of.volumeSolids(), dryMil), on.stick() * hit, waste, roughness);
  }

  private static Optional<Fault> textureNotStated(Line line) {
    if (!line.isSetUp() || line.coating().fillsVoids() || line.cell(TEXTURE).isFault()) {
      return Optional.empty();
    }
    Condition condition = line.work().condition();
    boolean rough = condition != null && condition.rough();
    if (!line.text(TEXTURE).isEmpty() || !(line.surface().suggestsTexture() || rough)) {
      return Optional.empty();
    }
    String of = line.surface().suggestsTexture() ? line.surface().name() : condition.name();
    return line.found(
        TEXTURE,
        "empty",
        "",
        "No texture is stated for %s, so it counts as smooth; %s."
            .formatted(of, line.hasColumn(TEXTURE) ? "state the texture" : "add a column Texture"));
  }

  private static Optional<Texture> rough(Line line) {
    return Optional.ofNullable(line.work().textureFound().orNull())
        .filter(texture -> texture.roughness() != 1);
  }

  private static Optional<Fault> shapeAndRoughness(Line line) {
    if (!line.isSetUp() || line.surface().factor() == 1 || line.coating().fillsVoids()) {
      return Optional.empty();
    }
    return rough(line)
        .map(
            texture -> {
              String measured = Say.number(texture.roughness(), 2);
              return line.fault(
                  TEXTURE,
                  measured,
                  "",
                  ("The area of %s already counts its shape, x %s, and %s counts x %s of paint on"
                          + " top; keep both only if it is both.")
                      .formatted(
                          line.surface().name(),
                          Say.number(line.surface().factor(), 2),
                          texture.name(),
                          measured));
            });
  }

  private static Optional<Fault> fillerTexture(Line line) {
    return line.isSetUp() && line.coating().fillsVoids()
        ? rough(line)
            .map(
                texture ->
                    line.fault(
                        TEXTURE,
                        Say.number(texture.roughness(), 2),
                        "1",
                        "The film of %s includes the voids, so %s counts x 1 and not x %s."
                            .formatted(
                                line.coating().name(),
                                texture.name(),
                                Say.number(texture.roughness(), 2))))
        : Optional.empty();
  }

  private static Stream<Fault> primerMissing(FilledBid bid) {
    Set<Object> primed = new HashSet<>();
    Line.all(bid)
        .filter(line -> line.isSetUp() && line.coating().isUndercoat())
        .forEach(line -> primed.add(place(line)));
    return Line.all(bid)
        .filter(line -> line.isSetUp() && isBare(line))
        .filter(line -> !line.coating().isOfClass("stain") && !primed.contains(place(line)))
        .filter(Line.firstOf(PaintChecks::place))
        .map(
            line ->
                line.fault(
                    CONDITION,
                    Quoted.of(line.text(CONDITION)),
                    "a primer line",
                    "No line of this room primes %s, whose condition is %s; add a primer line."
                        .formatted(line.surface().name(), Quoted.of(line.text(CONDITION)))));
  }

  private static boolean isBare(Line line) {
    Condition condition = line.work().condition();
    return condition != null && condition.state() == Condition.State.BARE;
  }

  private static Object place(Line line) {
    return List.of(line.filled().line().sheet(), Names.key(line.text(ROOM)), line.surface().name());
  }
}
