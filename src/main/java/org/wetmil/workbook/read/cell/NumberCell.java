package org.wetmil.workbook.read.cell;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.wetmil.estimate.InputColumn;
import org.wetmil.estimate.InputValue;
import org.wetmil.estimate.InputValue.State;
import org.wetmil.measure.LengthText;
import org.wetmil.measure.NumberText;
import org.wetmil.measure.Typed;
import org.wetmil.quantity.Quantity;
import org.wetmil.quantity.Unit;
import org.wetmil.workbook.read.grid.CellText;
import org.wetmil.workbook.read.words.SizeText;
import org.wetmil.workbook.read.words.UnitWords;
import org.wetmil.workbook.stream.RawCell;

/** Reads the cells of columns that hold numbers. */
final class NumberCell {
  /** Four to six, between: mil, µm. A unit may follow. */
  private static final Pattern RANGE =
      Pattern.compile("(.*?\\d)\\s*(?:-|–|—|\\bto\\b|\\bbis\\b|\\ba\\b|\\.\\.)\\s*(\\d.*)");

  /** What is written behind a number of pieces or coats. */
  private static final Pattern PIECES =
      Pattern.compile(
          "(?iu)([\\d.,]+)\\s*(?:x|ea|each|pcs?|pieces?|no|nr|off|coats?|ct|cts|mal|stk|stück"
              + "|lagen?|schichten|anstriche?|manos?|capas?|uds?)\\.?");

  private final CellText texts;

  NumberCell(CellText texts) {
    this.texts = texts;
  }

  InputValue read(CellContext context, RawCell cell) {
    String raw = texts.exact(cell).strip();
    return switch (cell.kind()) {
      case BLANK -> blank(cell);
      case ERROR -> InputValue.fault(State.FORMULA_ERROR, raw, expected(context.column()));
      case BOOLEAN -> InputValue.fault(State.UNREADABLE, raw, expected(context.column()));
      case NUMBER ->
          texts.isDate(cell)
              ? InputValue.fault(State.DATE, raw, expected(context.column()))
              : number(context, cell, raw);
      case TEXT -> typed(context, cell.text().strip());
    };
  }

  private static InputValue blank(RawCell cell) {
    return cell.formula() == null
        ? InputValue.NOTHING
        : InputValue.fault(
            State.UNREADABLE,
            "=" + cell.formula(),
            "a computed value; open the workbook in the spreadsheet program and save it once");
  }

  private InputValue number(CellContext context, RawCell cell, String raw) {
    double number = CellText.number(cell);
    if (!Double.isFinite(number)) {
      return InputValue.fault(State.UNREADABLE, cell.text(), expected(context.column()));
    }
    Unit unit =
        UnitWords.inFormat(texts.format(cell))
            .filter(each -> each.dimension() == context.unit().dimension())
            .orElse(context.unit());
    if (context.column().quantity() == Quantity.SHARE) {
      unit = share(number, texts.isPercent(cell));
    }
    return value(context, raw, number, unit, number);
  }

  private InputValue typed(CellContext context, String raw) {
    InputColumn column = context.column();
    Typed typed =
        isLength(column)
            ? LengthText.read(raw, context.mark())
            : NumberText.read(raw, context.mark());
    if (typed instanceof Typed.NotKnown) {
      return blank(raw, context.unit());
    }
    if (typed instanceof Typed.Value value) {
      Unit unit = value.unit().orElse(context.unit());
      if (column.quantity() == Quantity.SHARE && value.unit().isEmpty()) {
        unit = share(value.value(), false);
      }
      return unit.dimension() == column.quantity().base().dimension()
          ? value(context, raw, value.value(), unit, Double.NaN)
          : InputValue.fault(State.UNREADABLE, raw, expected(column));
    }
    return other(context, raw)
        .orElseGet(() -> InputValue.fault(State.UNREADABLE, raw, expected(column, typed)));
  }

  /** Of a length its own reading says best how it is written. */
  private static String expected(InputColumn column, Typed typed) {
    boolean length = isLength(column) && column.quantity() != Quantity.FILM;
    return length && typed instanceof Typed.Refused refused ? refused.expected() : expected(column);
  }

  /** What only some columns take: ranges of film, pieces, areas as products. */
  private Optional<InputValue> other(CellContext context, String raw) {
    return switch (context.column()) {
      case SPECIFIED_FILM -> range(context, raw);
      case COUNT, COATS, MASK_OPENINGS -> pieces(context, raw);
      case AREA, OPENINGS -> product(context, raw);
      default -> Optional.empty();
    };
  }

  private Optional<InputValue> range(CellContext context, String raw) {
    Matcher matcher = RANGE.matcher(raw);
    if (!matcher.matches()
        || !(LengthText.read(matcher.group(1), context.mark()) instanceof Typed.Value low)
        || !(LengthText.read(matcher.group(2), context.mark()) instanceof Typed.Value high)) {
      return Optional.empty();
    }
    Unit unit = high.unit().or(low::unit).orElse(context.unit());
    Unit base = context.column().quantity().base();
    double from = low.unit().orElse(unit).to(base, low.value());
    double to = unit.to(base, high.value());
    if (!(from > 0 && from <= to)) {
      return Optional.empty();
    }
    return Optional.of(
        new InputValue(State.READ, raw, (from + to) / 2, from, to, Double.NaN, unit, ""));
  }

  private Optional<InputValue> pieces(CellContext context, String raw) {
    Matcher matcher = PIECES.matcher(raw);
    return matcher.matches()
            && NumberText.read(matcher.group(1), context.mark()) instanceof Typed.Value value
        ? Optional.of(value(context, raw, value.value(), Unit.ONE, Double.NaN))
        : Optional.empty();
  }

  private Optional<InputValue> product(CellContext context, String raw) {
    Unit length = context.unit() == Unit.SQUARE_METRE ? Unit.METRE : Unit.FOOT;
    return SizeText.read(raw, context.mark())
        .filter(sizes -> sizes.size() == 2)
        .map(
            sizes -> {
              double area = 1;
              for (Typed.Value size : sizes) {
                area *= size.unit().orElse(length).to(Unit.FOOT, size.value());
              }
              return value(context, raw, area, Unit.SQUARE_FOOT, Double.NaN);
            });
  }

  /** A value in its unit; the sign and the zero mean what they mean in this column. */
  static InputValue value(CellContext context, String raw, double number, Unit unit, double live) {
    InputColumn column = context.column();
    if (number < 0) {
      return InputValue.fault(State.UNREADABLE, raw, expected(column) + " of 0 or more");
    }
    if (number == 0 && isUnknownWhenZero(column)) {
      return blank(raw, unit);
    }
    double base = unit.to(column.quantity().base(), number);
    return new InputValue(State.READ, raw, base, base, base, live, unit, "");
  }

  private static InputValue blank(String raw, Unit unit) {
    return new InputValue(
        State.BLANK, raw, Double.NaN, Double.NaN, Double.NaN, Double.NaN, unit, "");
  }

  /** A share is typed 10, 10 % or 0.1: from 1 on, per cent are meant. */
  private static Unit share(double number, boolean percentFormat) {
    if (percentFormat) {
      return Unit.ONE;
    }
    return number >= 1 ? Unit.PERCENT : Unit.ONE;
  }

  private static boolean isUnknownWhenZero(InputColumn column) {
    return switch (column) {
      case OPENINGS, THINNER, MASK_EDGE, MASK_OPENINGS -> false;
      // none of a thing is no piece of it: that is said, not taken for one
      case COUNT, COATS -> false;
      default -> true;
    };
  }

  private static boolean isLength(InputColumn column) {
    return switch (column.quantity()) {
      case LENGTH, GIRTH, FILM -> true;
      default -> false;
    };
  }

  private static String expected(InputColumn column) {
    return switch (column.quantity()) {
      case LENGTH, GIRTH -> "a length such as 12.5, 12' 6\", 3.81 m or 3810 mm";
      case AREA -> "an area such as 120, 120 ft² or 11.2 m²";
      case FILM -> "a film such as 4, 4-6 or 100 µm";
      case PRESSURE -> "a pressure such as 2000, 2000 psi or 140 bar";
      case SHARE -> "a share such as 10 % or 0.1";
      default -> column == InputColumn.COATS ? "a number of coats" : "a number";
    };
  }
}
