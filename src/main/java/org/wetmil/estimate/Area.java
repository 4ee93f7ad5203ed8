package org.wetmil.estimate;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.MeasuredBy;
import org.wetmil.catalogue.Narrowest;
import org.wetmil.catalogue.Setting;
import org.wetmil.catalogue.Shape;
import org.wetmil.formula.Expr;
import org.wetmil.measure.MeasuringRule;
import org.wetmil.quantity.Quantity;
import org.wetmil.quantity.UnitSystem;

/**
 * The area of a line, as formulas in the units of its sheet.
 *
 * @param gross before openings; null when an input is missing
 * @param deducted what openings take off; null when there is no net area
 * @param added reveals and the like; null when there is no net area
 * @param net what is painted once, gross - deducted + added and at least 0; null when an input is
 *     missing or the area is larger than that of any job
 * @param byDimensions gross area from the dimensions alone, in the sheet's unit; NaN when they do
 *     not make one
 * @param missing inputs that would make an area; empty when there is one
 * @param narrowestIn narrowest dimension of the work in inches; NaN when not known
 * @param listed openings listed for this line, with what the rule made of each
 * @param lump whether the line states a lump area of openings that comes off as it stands, although
 *     the rule would want the size of each
 * @param shape the shape whose factor the area takes, by the line's word or by the rule; null when
 *     the surface's own factor holds
 * @param running length that the rule measures this narrow work by; null for all other work
 */
public record Area(
    Expr gross,
    Expr deducted,
    Expr added,
    Expr net,
    double byDimensions,
    List<InputColumn> missing,
    double narrowestIn,
    List<Openings.Placed> listed,
    boolean lump,
    Shape shape,
    Expr running) {

  /** A last bit of a double must not take a girth over a limit (house). */
  private static final double ROUNDING_IN = 1e-9;

  static Area of(Work work, Terms terms, Catalogue catalogue, Openings openings) {
    BidLine line = work.line();
    List<InputColumn> missing = new ArrayList<>();
    Shaped shaped = Shaped.of(work, terms, catalogue, openings.rule());
    Expr measured = measured(work, terms, shaped, missing);
    double byDimensions = missing.isEmpty() ? measured.value() : Double.NaN;
    boolean stated = line.has(InputColumn.AREA);
    if (!stated && !missing.isEmpty()) {
      return new Area(
          null,
          null,
          null,
          null,
          byDimensions,
          List.copyOf(missing),
          narrowest(work),
          openings.of(line),
          false,
          shaped.shape(),
          null);
    }
    MeasuringRule rule = openings.rule();
    boolean lumped = line.has(InputColumn.OPENINGS) && rule != MeasuringRule.SOLID;
    Expr gross = stated ? shaped.flat(terms.input(InputColumn.AREA)) : measured;
    List<Openings.Placed> listed = openings.of(line);
    double ft2 = Quantity.AREA.unit(terms.system()).to(Quantity.AREA.base(), gross.value());
    if (ft2 > GreatestSizes.AREA.value()) {
      return new Area(
          gross,
          null,
          null,
          null,
          byDimensions,
          List.of(),
          narrowest(work),
          listed,
          false,
          shaped.shape(),
          null);
    }
    List<Expr> off = new ArrayList<>();
    if (lumped) {
      off.add(terms.input(InputColumn.OPENINGS));
    }
    UnitSystem system = terms.system();
    double taken = sum(listed, each -> each.deducted(system));
    if (taken > 0) {
      off.add(shaped.sheet(Expr.told(Given.OPENINGS, taken), stated));
    }
    Expr added = Expr.told(Given.REVEALS, sum(listed, each -> each.added(system)));
    Expr net = gross;
    for (Expr each : off) {
      net = net.minus(each);
    }
    net = added.value() > 0 ? net.plus(added) : net;
    return new Area(
        gross,
        off.isEmpty() ? Expr.num(0) : off.size() == 1 ? off.get(0) : new Expr.Sum(off),
        added,
        off.isEmpty() ? net : Expr.max(Expr.num(0), net),
        byDimensions,
        List.of(),
        narrowest(work),
        listed,
        lumped && rule.goesBySize(),
        shaped.shape(),
        running(work, terms, catalogue, rule));
  }

  /** Most lines have no opening, and a stream is made for none. */
  private static double sum(List<Openings.Placed> listed, ToDoubleFunction<Openings.Placed> area) {
    return listed.isEmpty() ? 0 : listed.stream().mapToDouble(area).sum();
  }

  public boolean isKnown() {
    return net != null;
  }

  /** Whether nothing is missing and the area is larger than that of any job. */
  public boolean isTooLarge() {
    return net == null && missing.isEmpty();
  }

  /** Narrow work is measured in running length under the Indian standard (second hand). */
  private static Expr running(Work work, Terms terms, Catalogue catalogue, MeasuringRule rule) {
    boolean narrow =
        rule == MeasuringRule.IS_1200_13
            && Openings.isByLength(work.surface())
            && work.girthIn() <= catalogue.number(Setting.RUNNING_GIRTH) + ROUNDING_IN
            && work.line().has(InputColumn.LENGTH);
    if (!narrow) {
      return null;
    }
    Expr length = terms.input(InputColumn.LENGTH);
    return work.line().has(InputColumn.COUNT)
        ? terms.input(InputColumn.COUNT).times(length)
        : length;
  }

  /** Gross area from the dimensions, in the order in which the trade multiplies them. */
  private static Expr measured(Work work, Terms terms, Shaped shaped, List<InputColumn> missing) {
    Need need = new Need(work.line(), terms, missing);
    double length = UnitFactor.si(Quantity.LENGTH, terms.system());
    double area = UnitFactor.si(Quantity.AREA, terms.system());
    double lengths = length * length / area;
    double girths = length * UnitFactor.si(Quantity.GIRTH, terms.system()) / area;
    return switch (work.surface().measuredBy()) {
      case PERIMETER_X_HEIGHT -> {
        Expr long_ = need.input(InputColumn.LENGTH);
        Expr high = need.input(InputColumn.HEIGHT);
        Expr round =
            need.isStated(InputColumn.WIDTH)
                ? Expr.num(2).times(long_.plus(terms.input(InputColumn.WIDTH)))
                : long_;
        yield pieces(need, shaped, UnitFactor.scaled(round.times(high), lengths));
      }
      case LENGTH_X_WIDTH ->
          pieces(
              need,
              shaped,
              UnitFactor.scaled(
                  need.input(InputColumn.LENGTH).times(need.input(InputColumn.WIDTH)), lengths));
      case LENGTH_X_HEIGHT ->
          pieces(
              need,
              shaped,
              UnitFactor.scaled(
                  need.input(InputColumn.LENGTH).times(need.input(InputColumn.HEIGHT)), lengths));
      case TRIANGLE -> {
        InputColumn base =
            need.isStated(InputColumn.WIDTH) ? InputColumn.WIDTH : InputColumn.LENGTH;
        Expr box = need.input(base).times(need.input(InputColumn.HEIGHT)).over(Expr.num(2));
        yield pieces(need, shaped, UnitFactor.scaled(box, lengths));
      }
      case LENGTH_X_GIRTH, COUNT_X_LENGTH_X_GIRTH -> {
        boolean unitLength = !Double.isNaN(work.surface().unitLengthFt());
        Expr long_ =
            unitLength && !need.isStated(InputColumn.LENGTH)
                ? terms.entry(work.surface().row(), "Unit length")
                : need.input(InputColumn.LENGTH);
        if (unitLength) {
          need.input(InputColumn.COUNT);
        }
        yield pieces(need, shaped, UnitFactor.scaled(long_.times(girth(work, need)), girths));
      }
      case COUNT_X_UNIT, COUNT_X_SIZE -> {
        need.input(InputColumn.COUNT);
        yield pieces(need, shaped, onePiece(work, need, lengths));
      }
    };
  }

  private static Expr girth(Work work, Need need) {
    boolean inTable = !Double.isNaN(work.surface().girthIn());
    return inTable && !need.isStated(InputColumn.GIRTH)
        ? need.terms().entry(work.surface().row(), "Girth")
        : need.input(InputColumn.GIRTH);
  }

  /** One face of one piece: its stated size where the surface goes by size, else the usual one. */
  private static Expr onePiece(Work work, Need need, double lengths) {
    Terms terms = need.terms();
    boolean bySize = work.surface().measuredBy() == MeasuredBy.COUNT_X_SIZE;
    boolean wide = bySize && need.isStated(InputColumn.WIDTH);
    boolean high = bySize && need.isStated(InputColumn.HEIGHT);
    return wide && high
        ? UnitFactor.scaled(
            terms.input(InputColumn.WIDTH).times(terms.input(InputColumn.HEIGHT)), lengths)
        : terms.entry(work.surface().row(), "Unit area");
  }

  /** Count, faces and shape factor, as far as they are stated. */
  private static Expr pieces(Need need, Shaped shaped, Expr one) {
    return shaped.all(
        need.isStated(InputColumn.COUNT) ? need.terms().input(InputColumn.COUNT).times(one) : one);
  }

  private static double narrowest(Work work) {
    BidLine line = work.line();
    double heightIn = 12 * line.number(InputColumn.HEIGHT);
    double widthIn = 12 * line.number(InputColumn.WIDTH);
    double lengthIn = 12 * line.number(InputColumn.LENGTH);
    Narrowest narrowest = work.surface().narrowest();
    if (narrowest instanceof Narrowest.Fixed fixed) {
      return fixed.inches();
    }
    return switch ((Narrowest.Of) narrowest) {
      case HEIGHT -> heightIn;
      case WIDTH -> widthIn;
      case LESSER -> Math.min(lengthIn, widthIn);
      case GIRTH -> work.girthIn();
      case HALF_GIRTH -> work.girthIn() / 2;
    };
  }

  /** Takes inputs that an area cannot do without, and remembers those that are not there. */
  private record Need(BidLine line, Terms terms, List<InputColumn> missing) {
    Expr input(InputColumn column) {
      if (!line.has(column)) {
        miss(column);
        return Expr.num(1);
      }
      return terms.input(column);
    }

    /**
     * Whether an input that may be blank is there. One that cannot be read is not blank: the usual
     * value in its place would be invented, so that it is missing.
     */
    boolean isStated(InputColumn column) {
      if (line.get(column).isFault()) {
        miss(column);
      }
      return line.has(column);
    }

    private void miss(InputColumn column) {
      if (!missing.contains(column)) {
        missing.add(column);
      }
    }
  }
}
