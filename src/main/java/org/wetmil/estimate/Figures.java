package org.wetmil.estimate;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.wetmil.catalogue.BucketTest;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Row;
import org.wetmil.catalogue.Setting;
import org.wetmil.catalogue.Texture;
import org.wetmil.estimate.likely.Ends;
import org.wetmil.estimate.likely.Ratios;
import org.wetmil.estimate.price.Containers;
import org.wetmil.formula.Expr;
import org.wetmil.formula.Written;
import org.wetmil.quantity.Quantity;
import org.wetmil.trade.TipCode;

/**
 * The filled cells of one line. Each closed form is declared here once, as an expression whose
 * value is stored beside it; {@link org.wetmil.trade} holds the same laws as plain functions, and a
 * test keeps the two together.
 */
final class Figures {
  /** Numbers that differ by less are the same after a change of units. */
  private static final double SAME = 1e-9;

  /** Others are divided by these: over a 0 that is typed there, no figure could be computed. */
  private static final Set<FilledColumn> DIVISORS =
      Set.of(FilledColumn.FLOW, FilledColumn.SPEED, FilledColumn.WET_FILM, FilledColumn.SPREAD);

  private final Catalogue catalogue;
  private final Work work;
  private final Terms terms;
  private final Ratios ratios;
  private final Map<FilledColumn, Figure> cells = new EnumMap<>(FilledColumn.class);
  private final Map<FilledColumn, Expr> leaves = new EnumMap<>(FilledColumn.class);

  Figures(Catalogue catalogue, Work work, Terms terms, Ratios ratios) {
    this.catalogue = catalogue;
    this.work = work;
    this.terms = terms;
    this.ratios = ratios;
  }

  /** What a line that cannot be set up still shows. */
  Map<FilledColumn, Figure> incomplete(Area area) {
    if (area != null && area.isKnown()) {
      area(area);
    }
    cells.put(FilledColumn.COUNTED, new Figure.Choice(0));
    return withTyped();
  }

  /** All cells; those that need an area are left out when there is none. */
  Map<FilledColumn, Figure> of(
      Area area,
      Stroke stroke,
      CoatPlan coats,
      GunFlow flow,
      Setup recommended,
      Setup followed,
      Rooms.Room room) {
    choices(coats, recommended, followed);
    Row surface = work.surface().row();
    boolean own = followed == recommended;
    Expr fan =
        own && recommended.isTip()
            ? cell(FilledColumn.FAN)
            : terms.given(Given.FAN, followed.fanIn());
    Expr stick = terms.entry(work.surface().stickRow(), "Stick");
    Expr swept = stroke.narrow() ? fan : fan.times(apart());

    flow(flow, followed, own);
    Expr laid = Expr.times(terms.factor(UnitFactor.FILM), cell(FilledColumn.FLOW), stick);
    Expr target = coats.target(work, terms, cell(FilledColumn.COATS));
    Expr wanted = laid.over(target.times(swept));
    live(FilledColumn.SPEED, speed(followed, wanted));
    live(FilledColumn.WET_FILM, laid.over(cell(FilledColumn.SPEED).times(swept)));

    Expr solids = terms.entry(work.coating().row(), "Volume solids");
    Expr dry = Expr.times(cell(FilledColumn.WET_FILM), solids, cell(FilledColumn.COATS));
    live(FilledColumn.DRY_FILM, work.thinnerShare() > 0 ? dry.over(unthinned()) : dry);

    Expr hit = hit(stroke, fan);
    Expr kept =
        Expr.times(
            CoatPlan.thinned(work, terms, terms.factor(UnitFactor.SPREAD)),
            stick,
            hit,
            Expr.num(1).minus(terms.setting(work.waste())));
    Texture texture = work.texture();
    boolean rough = texture != null && !work.coating().fillsVoids() && texture.roughness() != 1;
    Expr film = cell(FilledColumn.WET_FILM);
    live(
        FilledColumn.SPREAD,
        kept.over(rough ? film.times(terms.entry(texture.row(), "Roughness")) : film));

    if (area.isKnown()) {
      area(area);
      Expr painted = cell(FilledColumn.NET_AREA).times(cell(FilledColumn.COATS));
      live(FilledColumn.PAINT, painted.over(cell(FilledColumn.SPREAD)));
      Expr sprayed = rough ? painted.times(terms.entry(texture.row(), "Roughness")) : painted;
      Expr pace =
          Expr.times(
              terms.factor(UnitFactor.PACE),
              cell(FilledColumn.SPEED),
              swept,
              hit,
              terms.entry(surface, "Trigger share"));
      Hours hours = new Hours(catalogue, work, terms);
      live(FilledColumn.SPRAY, hours.atHeight(sprayed.over(pace)));
      live(FilledColumn.ROLL, hours.roll(cell(FilledColumn.NET_AREA), cell(FilledColumn.COATS)));
      live(FilledColumn.MASK, hours.mask(room));
      live(FilledColumn.PREPARE, hours.prepare(cell(FilledColumn.NET_AREA)));
      live(
          FilledColumn.LABOUR,
          Expr.sum(
              cell(FilledColumn.SPRAY),
              cell(FilledColumn.ROLL),
              cell(FilledColumn.MASK),
              cell(FilledColumn.PREPARE)));
      costs();
      ranges(ratios.of(work.surface().stick() * hit(stroke, fan).value()));
    }
    counted(area.isKnown());
    return withTyped();
  }

  /** Where the parts of an area have cells of their own, the net area follows those. */
  private void area(Area area) {
    if (!catalogue.entry(Setting.SHOW_MEASURING).isYes()) {
      live(FilledColumn.NET_AREA, area.net());
      return;
    }
    live(FilledColumn.GROSS, area.gross());
    live(FilledColumn.DEDUCTED, area.deducted());
    live(FilledColumn.ADDED, area.added());
    Expr left = cell(FilledColumn.GROSS).minus(cell(FilledColumn.DEDUCTED));
    live(FilledColumn.NET_AREA, Expr.max(Expr.num(0), left.plus(cell(FilledColumn.ADDED))));
    if (area.running() != null) {
      live(FilledColumn.RUNNING, area.running());
    }
  }

  /** Costs where prices are stated: the same figures, not yet in whole containers. */
  private void costs() {
    Containers containers = terms.containers(work.coating());
    if (containers.isPriced()) {
      double cheapest = containers.cheapest(Quantity.VOLUME.unit(terms.system()));
      Expr price = Expr.told(Given.PRICE, cheapest);
      live(FilledColumn.PAINT_COST, cell(FilledColumn.PAINT).times(price));
    }
    if (catalogue.entry(Setting.LABOUR_RATE).isStated()) {
      live(FilledColumn.LABOUR_COST, cell(FilledColumn.LABOUR).times(burdened()));
    }
  }

  /** Cost of one person-hour. */
  private Expr burdened() {
    return terms
        .setting(Setting.LABOUR_RATE)
        .times(Expr.num(1).plus(terms.setting(Setting.BURDEN)));
  }

  /** Both ends of the likely range; the ratios to the stated figures are choices. */
  private void ranges(Ratios.Of known) {
    Expr paint = cell(FilledColumn.PAINT);
    live(FilledColumn.PAINT_LOW, paint.times(Expr.told(Given.PAINT_RATIO, known.paint().low())));
    live(FilledColumn.PAINT_HIGH, paint.times(Expr.told(Given.PAINT_RATIO, known.paint().high())));
    Expr labour = cell(FilledColumn.LABOUR);
    Expr spray = cell(FilledColumn.SPRAY);
    live(FilledColumn.LABOUR_LOW, moved(labour, spray, Given.SPRAY_RATIO, known.spray().low()));
    live(FilledColumn.LABOUR_HIGH, moved(labour, spray, Given.SPRAY_RATIO, known.spray().high()));
    List<Expr> cost = new ArrayList<>();
    List<Expr> moving = new ArrayList<>();
    if (cells.containsKey(FilledColumn.PAINT_COST)) {
      cost.add(cell(FilledColumn.PAINT_COST));
      moving.add(cell(FilledColumn.PAINT_COST));
    }
    double sprayed = 0;
    if (cells.containsKey(FilledColumn.LABOUR_COST)) {
      cost.add(cell(FilledColumn.LABOUR_COST));
      moving.add(spray.times(burdened()));
      sprayed = moving.get(moving.size() - 1).value();
    }
    Expr both = moving.isEmpty() ? Expr.num(0) : Expr.sum(moving.toArray(Expr[]::new));
    if (both.value() > 0) {
      Ends ends = known.amount(sprayed / both.value());
      Expr whole = Expr.sum(cost.toArray(Expr[]::new));
      live(FilledColumn.COST_LOW, moved(whole, both, Given.COST_RATIO, ends.low()));
      live(FilledColumn.COST_HIGH, moved(whole, both, Given.COST_RATIO, ends.high()));
    }
  }

  /** A figure of which a part is so many times more. */
  private static Expr moved(Expr whole, Expr part, Given lessOne, double ratio) {
    return whole.plus(part.times(Expr.told(lessOne, ratio - 1)));
  }

  private void choices(CoatPlan coats, Setup recommended, Setup followed) {
    if (recommended.isTip()) {
      cells.put(FilledColumn.ORIFICE, shown(recommended.tip().orificeThou(), Quantity.ORIFICE));
      cells.put(FilledColumn.FAN, shown(recommended.fanIn(), Quantity.FAN_WIDTH));
      TipCode tip = recommended.tip();
      cells.put(FilledColumn.TIP_CODE, new Figure.Choice(100 * tip.fanDigit() + tip.orificeThou()));
    } else {
      cells.put(FilledColumn.TIP_CODE, new Figure.Word("none"));
    }
    cells.put(FilledColumn.PRESSURE, shown(followed.gun().pumpPsi(), Quantity.PRESSURE));
    cells.put(FilledColumn.COATS, new Figure.Choice(coats.coats()));
    cells.put(FilledColumn.COATING_USED, new Figure.Word(work.coating().name()));
  }

  /** With a hose, or without a tip, the flow is a number; else it follows pressure and orifice. */
  private void flow(GunFlow flow, Setup followed, boolean own) {
    if (!followed.isTip() || flow.hasHose()) {
      cells.put(FilledColumn.FLOW, shown(followed.gun().flowGpm(), Quantity.FLOW));
      return;
    }
    Expr orifice =
        own ? cell(FilledColumn.ORIFICE) : terms.given(Given.ORIFICE, followed.tip().orificeThou());
    Expr pressure = cell(FilledColumn.PRESSURE);
    live(FilledColumn.FLOW, flow(work, terms, followed.gun().test(), orifice, pressure));
  }

  /** The flow of a tip at a pressure: by its bucket test, else by the orifice equation. */
  static Expr flow(Work work, Terms terms, BucketTest test, Expr orifice, Expr pressure) {
    if (test != null) {
      Expr share = pressure.over(terms.entry(test.row(), "Pressure"));
      return terms.entry(test.row(), "Flow").times(Expr.sqrt(share));
    }
    return Expr.times(
        terms.factor(UnitFactor.FLOW),
        terms.setting(Setting.DISCHARGE),
        orifice,
        orifice,
        Expr.sqrt(pressure.over(density(work, terms))));
  }

  /** Density as sprayed. */
  static Expr density(Work work, Terms terms) {
    Expr density = terms.entry(work.coating().row(), "Density");
    if (work.thinnerShare() > 0) {
      Expr thinner = terms.input(InputColumn.THINNER);
      Expr added = thinner.times(terms.entry(work.coating().row(), "Thinner density"));
      return density.plus(added).over(Expr.num(1).plus(thinner));
    }
    return density;
  }

  private Expr speed(Setup followed, Expr wanted) {
    if (!followed.isTip()) {
      return terms.given(Given.EASY_PACE, followed.speedInPerS());
    }
    return Expr.max(
        terms.setting(Stroke.slowest(work.surface())),
        Expr.min(terms.setting(Stroke.fastest(work.surface())), wanted));
  }

  private Expr hit(Stroke stroke, Expr fan) {
    Expr hit = terms.entry(work.surface().row(), "Hit");
    if (!stroke.narrow()) {
      return hit;
    }
    Expr width = terms.given(Given.WORK_WIDTH, stroke.widthIn());
    return hit.times(Expr.min(Expr.num(1), width.over(fan)));
  }

  /** What is left of a stroke beside the overlap. */
  private Expr apart() {
    return Expr.num(1).minus(terms.setting(Setting.OVERLAP));
  }

  private Expr unthinned() {
    return Expr.num(1).plus(terms.input(InputColumn.THINNER));
  }

  /** Live where the sheet has an Include; over a cell in error the formula would be one, too. */
  private void counted(boolean filled) {
    InputValue include = work.line().values().get(InputColumn.INCLUDE);
    boolean live = filled && include != null && include.state() != InputValue.State.FORMULA_ERROR;
    if (live) {
      live(
          FilledColumn.COUNTED,
          Expr.ifWord(
              InputColumn.INCLUDE,
              work.line().text(InputColumn.INCLUDE),
              Work.LEFT_OUT,
              Expr.num(0),
              Expr.num(1)));
    } else {
      cells.put(FilledColumn.COUNTED, new Figure.Choice(filled ? 1 : 0));
    }
  }

  private Figure shown(double base, Quantity quantity) {
    return new Figure.Choice(quantity.shown(base, terms.system()));
  }

  /** A formula, or what the estimator typed over it; the cells after it follow either. */
  private void live(FilledColumn column, Expr formula) {
    double typed = typed(column);
    boolean differs =
        !Double.isNaN(typed)
            && !(Math.abs(typed - formula.value()) <= SAME * Math.abs(formula.value()));
    cells.put(
        column, differs ? new Figure.Typed(typed, formula, own(column)) : new Figure.Live(formula));
  }

  /** A number that the estimator typed in, in the unit of the sheet; NaN when none is kept. */
  private double typed(FilledColumn column) {
    EarlierCells earlier = work.line().earlier();
    double typed = earlier.typed(column);
    boolean usable = DIVISORS.contains(column) ? typed > 0 : typed >= 0;
    return earlier.kept() && usable && typed <= InputValue.MOST
        ? column.quantity().shown(typed, terms.system())
        : Double.NaN;
  }

  /** The estimator's own formula, where all that it rests on is still there. */
  private Optional<Written> own(FilledColumn column) {
    List<FilledColumn> shown = FilledColumn.shown(catalogue);
    return Optional.ofNullable(work.line().earlier().written().get(column))
        .filter(Written::canBeWrittenAgain)
        .filter(
            own ->
                own.places()
                    .allMatch(
                        place ->
                            place instanceof FilledColumn cell
                                ? shown.contains(cell)
                                : place instanceof EntryPlace entry
                                    && entry.row(catalogue).isPresent()));
  }

  /** What was typed into cells that nothing could be computed for stays there too. */
  private Map<FilledColumn, Figure> withTyped() {
    for (FilledColumn column : work.line().earlier().numbers().keySet()) {
      double typed = typed(column);
      if (!cells.containsKey(column) && !Double.isNaN(typed)) {
        cells.put(column, new Figure.Typed(typed, Expr.num(Double.NaN), own(column)));
      }
    }
    return cells;
  }

  /** Another filled cell of the line, with the value that it has; formulas share the leaf. */
  private Expr cell(FilledColumn column) {
    Expr known = leaves.get(column);
    if (known == null) {
      known = terms.filled(column, cells.get(column).number());
      leaves.put(column, known);
    }
    return known;
  }
}
