package org.wetmil.estimate;

import java.util.ArrayList;
import java.util.List;
import org.wetmil.catalogue.MeasuredBy;
import org.wetmil.catalogue.Narrowest;
import org.wetmil.formula.Expr;
import org.wetmil.quantity.Quantity;

/**
 * The area of a line, as formulas in the units of its sheet.
 *
 * @param gross before openings; null when an input is missing
 * @param net what is painted once; null when an input is missing
 * @param byDimensions gross area from the dimensions alone, in the sheet's unit; NaN when they do
 *     not make one
 * @param missing inputs that would make an area; empty when there is one
 * @param narrowestIn narrowest dimension of the work in inches; NaN when not known
 */
public record Area(
    Expr gross, Expr net, double byDimensions, List<InputColumn> missing, double narrowestIn) {

  static Area of(Work work, Terms terms, boolean deductOpenings) {
    BidLine line = work.line();
    List<InputColumn> missing = new ArrayList<>();
    Expr measured = measured(work, terms, missing);
    double byDimensions = missing.isEmpty() ? measured.value() : Double.NaN;
    boolean stated = line.has(InputColumn.AREA);
    if (!stated && !missing.isEmpty()) {
      return new Area(null, null, byDimensions, List.copyOf(missing), narrowest(work));
    }
    Expr gross = stated ? terms.input(InputColumn.AREA) : measured;
    Expr net =
        deductOpenings && line.has(InputColumn.OPENINGS)
            ? Expr.max(Expr.num(0), gross.minus(terms.input(InputColumn.OPENINGS)))
            : gross;
    return new Area(gross, net, byDimensions, List.of(), narrowest(work));
  }

  public boolean isKnown() {
    return net != null;
  }

  /** Gross area from the dimensions, in the order in which the trade multiplies them. */
  private static Expr measured(Work work, Terms terms, List<InputColumn> missing) {
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
            work.line().has(InputColumn.WIDTH)
                ? Expr.num(2).times(long_.plus(terms.input(InputColumn.WIDTH)))
                : long_;
        yield pieces(work, terms, UnitFactor.scaled(round.times(high), lengths));
      }
      case LENGTH_X_WIDTH ->
          pieces(
              work,
              terms,
              UnitFactor.scaled(
                  need.input(InputColumn.LENGTH).times(need.input(InputColumn.WIDTH)), lengths));
      case LENGTH_X_HEIGHT ->
          pieces(
              work,
              terms,
              UnitFactor.scaled(
                  need.input(InputColumn.LENGTH).times(need.input(InputColumn.HEIGHT)), lengths));
      case TRIANGLE -> {
        InputColumn base =
            work.line().has(InputColumn.WIDTH) ? InputColumn.WIDTH : InputColumn.LENGTH;
        Expr box = need.input(base).times(need.input(InputColumn.HEIGHT)).over(Expr.num(2));
        yield pieces(work, terms, UnitFactor.scaled(box, lengths));
      }
      case LENGTH_X_GIRTH, COUNT_X_LENGTH_X_GIRTH -> {
        boolean unitLength = !Double.isNaN(work.surface().unitLengthFt());
        Expr long_ =
            unitLength && !work.line().has(InputColumn.LENGTH)
                ? terms.entry(work.surface().row(), "Unit length")
                : need.input(InputColumn.LENGTH);
        if (unitLength) {
          need.input(InputColumn.COUNT);
        }
        yield pieces(work, terms, UnitFactor.scaled(long_.times(girth(work, need)), girths));
      }
      case COUNT_X_UNIT, COUNT_X_SIZE -> {
        need.input(InputColumn.COUNT);
        yield pieces(work, terms, onePiece(work, terms, lengths));
      }
    };
  }

  private static Expr girth(Work work, Need need) {
    boolean inTable = !Double.isNaN(work.surface().girthIn());
    return inTable && !work.line().has(InputColumn.GIRTH)
        ? need.terms().entry(work.surface().row(), "Girth")
        : need.input(InputColumn.GIRTH);
  }

  /** One face of one piece: its stated size where the surface goes by size, else the usual one. */
  private static Expr onePiece(Work work, Terms terms, double lengths) {
    boolean sized =
        work.surface().measuredBy() == MeasuredBy.COUNT_X_SIZE
            && work.line().has(InputColumn.WIDTH)
            && work.line().has(InputColumn.HEIGHT);
    return sized
        ? UnitFactor.scaled(
            terms.input(InputColumn.WIDTH).times(terms.input(InputColumn.HEIGHT)), lengths)
        : terms.entry(work.surface().row(), "Unit area");
  }

  /** Count, faces and shape factor, as far as they are stated. */
  private static Expr pieces(Work work, Terms terms, Expr one) {
    Expr all = one;
    if (work.line().has(InputColumn.COUNT)) {
      all = terms.input(InputColumn.COUNT).times(all);
    }
    for (String heading : List.of("Faces", "Factor")) {
      if (work.surface().row().get(heading).isStated()) {
        all = all.times(terms.entry(work.surface().row(), heading));
      }
    }
    return all;
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
        missing.add(column);
        return Expr.num(1);
      }
      return terms.input(column);
    }
  }
}
