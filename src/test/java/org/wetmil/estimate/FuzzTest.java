package org.wetmil.estimate;

import static org.assertj.core.api.Assertions.assertThatCode;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Row;
import org.wetmil.catalogue.TableProblem;
import org.wetmil.catalogue.Tables;
import org.wetmil.estimate.InputValue.State;
import org.wetmil.quantity.Unit;
import org.wetmil.quantity.UnitSystem;

/** Lines that no estimator means, though a workbook may hold them. */
@Tag("long")
class FuzzTest {
  private static final double[] NUMBERS = {
    0,
    -0.0,
    1,
    -1,
    0.5,
    2,
    3,
    4.4999,
    7,
    10,
    12,
    99,
    100,
    1000,
    2000,
    3000,
    1e4,
    1e6,
    1e9,
    1e12,
    1e15,
    1e100,
    1e300,
    Double.MAX_VALUE,
    -Double.MAX_VALUE,
    Double.MIN_VALUE,
    1e-300,
    1e-12,
    1e-6,
    Double.NaN,
    Double.POSITIVE_INFINITY,
    Double.NEGATIVE_INFINITY,
    Math.PI
  };

  private static final List<String> TEXTS =
      List.of(
          "",
          " ",
          "-",
          "\u00a0",
          "0",
          "no",
          "FALSE",
          "yes",
          "all coats",
          "first coat",
          "never",
          "517",
          "1219",
          "017",
          "5-17",
          "5/17/2024",
          "99999999999999999999",
          "\u0000",
          "\ud83d\ude00",
          "\ud83d",
          "=1+1",
          "#REF!",
          "'; --",
          "walls\nceiling",
          "İı",
          "ß",
          "a".repeat(40_000),
          "Small",
          "Hosed",
          "None",
          "n/a",
          "1e309");

  private final Random random = new Random(99);
  private final List<Catalogue> catalogues = catalogues();

  /** The tables that random bids have, with their hoses, guards, tests and settings. */
  private static List<Catalogue> catalogues() {
    RandomBids bids = new RandomBids(11);
    List<Catalogue> catalogues = new ArrayList<>();
    for (int i = 0; i < 20; i++) {
      catalogues.add(bids.next().catalogue());
    }
    return catalogues;
  }

  private InputValue value(InputColumn column) {
    Unit[] units = Unit.values();
    State state = State.values()[random.nextInt(State.values().length)];
    String text = name(column);
    if (random.nextInt(4) == 0) {
      return InputValue.fault(state, text, "something else");
    }
    if (!column.quantity().isNumber()) {
      return InputValue.text(text);
    }
    Unit unit = column.quantity().unit(UnitSystem.values()[random.nextInt(2)]);
    if (random.nextInt(8) == 0) {
      unit = units[random.nextInt(units.length)];
    }
    double number =
        random.nextInt(3) == 0 ? random.nextDouble() * 60 : NUMBERS[random.nextInt(NUMBERS.length)];
    double cell = random.nextBoolean() ? number : NUMBERS[random.nextInt(NUMBERS.length)];
    return new InputValue(
        random.nextInt(6) == 0 ? state : State.READ, text, number, number, number, cell, unit, "");
  }

  private String name(InputColumn column) {
    Tables table =
        switch (column) {
          case SURFACE -> Tables.SURFACES;
          case COATING -> Tables.COATINGS;
          case CONDITION -> Tables.CONDITIONS;
          case TEXTURE -> Tables.TEXTURES;
          default -> null;
        };
    if (table != null && random.nextInt(6) > 0) {
      List<Row> rows = Catalogue.builtIn().rows(table);
      return rows.get(random.nextInt(rows.size())).name();
    }
    return TEXTS.get(random.nextInt(TEXTS.size()));
  }

  @Test
  void noLineBreaksTheEstimatorOrTheFormulasOfItsFigures() {
    for (int i = 0; i < 10_000; i++) {
      List<BidLine> lines = new ArrayList<>();
      for (int row = 0; row < 3; row++) {
        Map<InputColumn, InputValue> values = new EnumMap<>(InputColumn.class);
        for (InputColumn column : InputColumn.values()) {
          if (random.nextInt(3) > 0) {
            values.put(column, value(column));
          }
        }
        UnitSystem system = UnitSystem.values()[random.nextInt(2)];
        lines.add(new BidLine("Bid", row, system, random.nextBoolean(), values));
      }
      Catalogue catalogue = catalogues.get(random.nextInt(catalogues.size()));
      UnitSystem basis = UnitSystem.values()[random.nextInt(2)];
      BidSheet sheet = new BidSheet("Bid", basis, true, Map.of(), lines);
      Bid bid =
          new Bid(
              "fuzz", basis, catalogue, List.of(sheet), List.<TableProblem>of(), List.<Remark>of());

      assertThatCode(() -> Estimator.fill(bid).lines().forEach(FuzzTest::show))
          .as("lines %s", i)
          .doesNotThrowAnyException();
    }
  }

  /** What a writer does with each figure. */
  private static void show(FilledLine line) {
    for (Figure figure : line.figures().values()) {
      if (figure instanceof Figure.Live live && Double.isFinite(live.number())) {
        live.formula().print(Object::toString);
      }
    }
    line.isCounted();
    line.base(FilledColumn.PAINT);
  }
}
