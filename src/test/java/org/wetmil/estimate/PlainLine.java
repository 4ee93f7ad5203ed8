package org.wetmil.estimate;

import static org.wetmil.estimate.InputColumn.AREA;
import static org.wetmil.estimate.InputColumn.COUNT;
import static org.wetmil.estimate.InputColumn.GIRTH;
import static org.wetmil.estimate.InputColumn.HEIGHT;
import static org.wetmil.estimate.InputColumn.LENGTH;
import static org.wetmil.estimate.InputColumn.MASK_EDGE;
import static org.wetmil.estimate.InputColumn.MASK_OPENINGS;
import static org.wetmil.estimate.InputColumn.OPENINGS;
import static org.wetmil.estimate.InputColumn.PRESSURE;
import static org.wetmil.estimate.InputColumn.SPECIFIED_FILM;
import static org.wetmil.estimate.InputColumn.THINNER;
import static org.wetmil.estimate.InputColumn.WIDTH;

import java.util.EnumMap;
import java.util.Map;
import org.wetmil.catalogue.BucketTest;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Coating;
import org.wetmil.catalogue.Condition;
import org.wetmil.catalogue.Setting;
import org.wetmil.catalogue.Sprayer;
import org.wetmil.catalogue.Surface;
import org.wetmil.catalogue.Task;
import org.wetmil.catalogue.Texture;
import org.wetmil.trade.Film;
import org.wetmil.trade.Flow;
import org.wetmil.trade.Hose;
import org.wetmil.trade.Spread;
import org.wetmil.trade.TipCode;

/**
 * A line computed a second time for tests: the rules written down plainly with the functions of the
 * trade, in US units, for a tip that is given. It shares no code with the estimator's formulas.
 */
final class PlainLine {
  final Catalogue tables;
  final BidLine line;
  final Coating coating;
  final Surface surface;
  final Sprayer sprayer;
  final double thinner;
  final boolean joinery;

  PlainLine(Catalogue tables, BidLine line) {
    this.tables = tables;
    this.line = line;
    this.coating = tables.coating(line.text(InputColumn.COATING)).orNull();
    this.surface = tables.surface(line.text(InputColumn.SURFACE)).orNull();
    this.sprayer = tables.sprayer(line.text(InputColumn.SPRAYER)).orNull();
    this.thinner = or(line.number(THINNER), 0);
    this.joinery = surface.joinery();
  }

  static double or(double value, double otherwise) {
    return Double.isNaN(value) ? otherwise : value;
  }

  double setting(Setting setting) {
    return tables.number(setting);
  }

  /** NaN when the line does not make an area. */
  double grossFt2() {
    if (line.has(AREA)) {
      return line.number(AREA);
    }
    double length = line.number(LENGTH);
    double width = line.number(WIDTH);
    double height = line.number(HEIGHT);
    double girthFt = girthIn() / 12;
    double count = line.number(COUNT);
    double times = or(count, 1) * surface.faces() * surface.factor();
    return switch (surface.measuredBy()) {
      case PERIMETER_X_HEIGHT ->
          (Double.isNaN(width) ? length : 2 * (length + width)) * height * times;
      case LENGTH_X_WIDTH -> length * width * times;
      case LENGTH_X_HEIGHT -> length * height * times;
      case TRIANGLE -> or(width, length) * height / 2 * times;
      case LENGTH_X_GIRTH -> length * girthFt * times;
      case COUNT_X_LENGTH_X_GIRTH ->
          Double.isNaN(surface.unitLengthFt())
              ? length * girthFt * times
              : count * or(length, surface.unitLengthFt()) * girthFt * times / or(count, 1);
      case COUNT_X_UNIT -> count * surface.unitFt2() * times / or(count, 1);
      case COUNT_X_SIZE -> count * or(width * height, surface.unitFt2()) * times / or(count, 1);
    };
  }

  double netFt2() {
    boolean deducted = line.has(OPENINGS) && tables.text(Setting.MEASURING_RULE).equals("Net");
    return deducted ? Math.max(0, grossFt2() - line.number(OPENINGS)) : grossFt2();
  }

  double girthIn() {
    return or(line.number(GIRTH), surface.girthIn());
  }

  /** Narrowest dimension in inches; NaN when not known. */
  double widthIn() {
    String says = surface.row().text("Narrowest dimension");
    return switch (says) {
      case "height" -> 12 * line.number(HEIGHT);
      case "width" -> 12 * line.number(WIDTH);
      case "lesser" -> 12 * Math.min(line.number(LENGTH), line.number(WIDTH));
      case "girth" -> girthIn();
      case "half girth" -> girthIn() / 2;
      default -> Double.parseDouble(says);
    };
  }

  boolean narrow() {
    return widthIn() <= setting(Setting.NARROW_WORK);
  }

  double overlap() {
    return narrow() ? 0 : setting(Setting.OVERLAP);
  }

  int coats() {
    double stated = line.number(InputColumn.COATS);
    double dry = line.number(SPECIFIED_FILM);
    if (!Double.isNaN(stated)) {
      return (int) stated;
    }
    if (Double.isNaN(dry)) {
      return coating.usualCoats();
    }
    double most = Math.min(coating.wetMaxMil(), 1.25 * coating.wetTargetMil());
    return (int) Math.ceil(dry / (coating.volumeSolids() * most / (1 + thinner)) - 1e-9);
  }

  double targetMil() {
    double dry = line.number(SPECIFIED_FILM);
    if (Double.isNaN(dry)) {
      return coating.wetTargetMil();
    }
    double wet = dry * (1 + thinner) / (coating.volumeSolids() * coats());
    return Math.max(coating.wetMinMil(), Math.min(coating.wetMaxMil(), wet));
  }

  boolean ownPressure() {
    return line.number(PRESSURE) >= 1000 && line.number(PRESSURE) <= 3000;
  }

  double psi() {
    double wanted = ownPressure() ? line.number(PRESSURE) : coating.usualPsi();
    double rated = sprayer == null ? Double.NaN : sprayer.greatestPsi();
    return rated < wanted ? rated : wanted;
  }

  double density() {
    return Flow.thinnedKgPerL(coating.densityKgL(), thinner, coating.thinnerDensityKgL());
  }

  private double tipGpm(int orificeThou, double gunPsi) {
    BucketTest test = tables.bucketTest(coating, orificeThou).orElse(null);
    return test == null
        ? Flow.gpm(setting(Setting.DISCHARGE), orificeThou, gunPsi, density())
        : Flow.bucketTestGpm(test.flowGpm(), test.gunPsi(), gunPsi);
  }

  Hose hose() {
    return sprayer == null || !sprayer.hasHose()
        ? null
        : new Hose(
            sprayer.hoseBoreIn(),
            sprayer.hoseLengthFt(),
            or(sprayer.riseFt(), 0),
            density(),
            coating.viscosityPaS());
  }

  double gpm(int orificeThou) {
    Hose hose = hose();
    double psi = psi();
    if (hose == null) {
      return tipGpm(orificeThou, psi);
    }
    if (ownPressure() && line.pressureAtGun()) {
      double flow = tipGpm(orificeThou, psi);
      if (psi + hose.lossPsi(flow) + hose.headPsi() <= or(sprayer.greatestPsi(), 1e9)) {
        return flow;
      }
      psi = sprayer.greatestPsi();
    }
    return hose.solve(psi, gun -> tipGpm(orificeThou, gun)).flowGpm();
  }

  double fanIn(TipCode tip) {
    return 2 * tip.fanDigit() * setting(Setting.DISTANCE) / 12;
  }

  double easyInPerS() {
    return setting(joinery ? Setting.JOINERY_EASY : Setting.BROAD_EASY);
  }

  double speedInPerS(TipCode tip) {
    return Film.heldInPerS(
        Film.speedInPerS(
            gpm(tip.orificeThou()), surface.stick(), targetMil(), fanIn(tip), overlap()),
        setting(joinery ? Setting.JOINERY_SLOWEST : Setting.BROAD_SLOWEST),
        setting(joinery ? Setting.JOINERY_FASTEST : Setting.BROAD_FASTEST));
  }

  double wetMil(TipCode tip) {
    return Film.laidWetMil(
        gpm(tip.orificeThou()), surface.stick(), speedInPerS(tip), fanIn(tip), overlap());
  }

  double heightFactor() {
    double height = line.number(HEIGHT);
    if (Double.isNaN(height)) {
      return 1;
    }
    if (height <= setting(Setting.HEIGHT_STEP_1)) {
      return tables.rate(Task.HEIGHT_1);
    }
    if (height <= setting(Setting.HEIGHT_STEP_2)) {
      return tables.rate(Task.HEIGHT_2);
    }
    return tables.rate(height <= setting(Setting.HEIGHT_STEP_3) ? Task.HEIGHT_3 : Task.HEIGHT_OVER);
  }

  Texture texture() {
    String word = line.text(InputColumn.TEXTURE);
    return tables.texture(word.isEmpty() ? "smooth" : word).orNull();
  }

  Condition condition() {
    return tables.condition(line.text(InputColumn.CONDITION)).orNull();
  }

  private double rollHours(double area, int coats) {
    boolean rough = !texture().name().equals("smooth");
    String word = line.text(InputColumn.BACK_ROLL);
    if (word.isEmpty()) {
      word = tables.text(Setting.BACK_ROLL);
    }
    boolean bare = condition() != null && condition().state() == Condition.State.BARE;
    double rolled =
        switch (word) {
          case "never" -> 0;
          case "all" -> area * coats;
          case "first coat" -> area;
          default -> surface.rollsByDefault() && (bare || rough) ? area : 0;
        };
    return rolled
        / tables.rate(rough ? Task.BACK_ROLL_ROUGH : Task.BACK_ROLL_SMOOTH)
        * heightFactor();
  }

  private double maskHours() {
    double hours =
        or(line.number(MASK_EDGE), 0) / tables.rate(Task.TAPE_EDGE)
            + or(line.number(MASK_OPENINGS), 0) * tables.rate(Task.MASK_OPENING);
    boolean worn =
        condition() != null
            && condition().state() != Condition.State.NEW
            && condition().state() != Condition.State.PRIMED;
    if (surface.hardware() && worn) {
      hours += or(line.number(COUNT), 0) * tables.rate(Task.MASK_HARDWARE);
    }
    hours *= heightFactor();
    if (surface.walls() || surface.ceiling()) {
      double floor = line.number(LENGTH) * line.number(WIDTH) * or(line.number(COUNT), 1);
      hours += or(floor, 0) / tables.rate(Task.COVER_FLOOR);
    }
    return hours * (1 + tables.rate(Task.UNMASK));
  }

  private double prepareHours(double area) {
    if (condition() == null) {
      return 0;
    }
    double hours = 0;
    for (Task task : condition().preparation()) {
      hours += area / tables.rate(task);
    }
    boolean worn =
        condition().state() == Condition.State.BARE
            || condition().state() == Condition.State.PEELING;
    if (surface.trim() && worn) {
      hours += or(line.number(LENGTH), 0) * or(line.number(COUNT), 1) / tables.rate(Task.CAULK);
    }
    return hours * heightFactor();
  }

  /** Every figure that rests on the tip; a null tip takes the assumptions of the setup. */
  Map<FilledColumn, Double> figures(Setup followed) {
    TipCode tip = followed.tip();
    double fan = tip == null ? followed.fanIn() : fanIn(tip);
    double speed = tip == null ? easyInPerS() : speedInPerS(tip);
    double wet = tip == null ? targetMil() : wetMil(tip);
    double flow = tip == null ? followed.gun().flowGpm() : gpm(tip.orificeThou());
    double hit = narrow() ? Film.narrowHit(surface.hit(), widthIn(), fan) : surface.hit();
    double dry = Film.dryMil(wet, coating.volumeSolids(), thinner);
    double roughness = coating.fillsVoids() ? 1 : texture().roughness();
    double waste = setting(hose() == null ? Setting.WASTE : Setting.PAIL_WASTE);
    double spread =
        Spread.practicalFt2PerGal(
            Spread.theoreticalFt2PerGal(coating.volumeSolids(), dry),
            surface.stick() * hit,
            waste,
            roughness);
    Map<FilledColumn, Double> figures = new EnumMap<>(FilledColumn.class);
    figures.put(FilledColumn.COATS, (double) coats());
    figures.put(FilledColumn.FLOW, flow);
    figures.put(FilledColumn.SPEED, speed);
    figures.put(FilledColumn.WET_FILM, wet);
    figures.put(FilledColumn.DRY_FILM, dry * coats());
    figures.put(FilledColumn.SPREAD, spread);
    double area = netFt2();
    if (!Double.isNaN(area)) {
      double spray =
          area
              * coats()
              * roughness
              / (Film.areaFt2PerMin(speed, fan, overlap(), hit) * 60 * surface.triggerShare())
              * heightFactor();
      figures.put(FilledColumn.NET_AREA, area);
      figures.put(FilledColumn.PAINT, Spread.gallons(area, coats(), spread));
      figures.put(FilledColumn.SPRAY, spray);
      figures.put(FilledColumn.ROLL, rollHours(area, coats()));
      figures.put(FilledColumn.MASK, maskHours());
      figures.put(FilledColumn.PREPARE, prepareHours(area));
      figures.put(
          FilledColumn.LABOUR, spray + rollHours(area, coats()) + maskHours() + prepareHours(area));
    }
    return figures;
  }
}
