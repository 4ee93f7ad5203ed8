package org.wetmil.estimate;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.StatedRow;
import org.wetmil.catalogue.Tables;
import org.wetmil.quantity.UnitSystem;

/** How filled columns are headed and shown, and which a bid has. */
class FilledColumnTest {

  /** Converted on paper: 17 thou x 0.0254 mm, 4.5 mil x 25.4 um, 2000 psi x 0.0689476 bar. */
  @ParameterizedTest
  @CsvSource({
    "ORIFICE, 17, 17, 0.43",
    "FAN, 10, 10, 25.4",
    "PRESSURE, 2000, 2000, 138",
    "SPEED, 32.395, 32.4, 82.3",
    "WET_FILM, 4.5, 4.5, 114",
    "DRY_FILM, 3.24, 3.2, 82",
    "SPREAD, 237.06, 237, 5.8",
    "PAINT, 4.97764, 4.98, 18.8",
    "FLOW, 0.270459, 0.270, 1.02",
    "NET_AREA, 590, 590.0, 54.8",
    "LABOUR, 3.81313, 3.81, 3.81",
    "COATS, 2, 2, 2",
    "PAINT_COST, 189.1503, 189.15, 189.15"
  })
  void figuresAreShownToWhatTheTradeReads(FilledColumn column, double kept, String us, String si) {
    assertThat(shown(column, kept, UnitSystem.US)).isEqualTo(us);
    assertThat(shown(column, kept, UnitSystem.METRIC)).isEqualTo(si);
  }

  private static String shown(FilledColumn column, double kept, UnitSystem system) {
    return String.format(
        Locale.ROOT, "%." + column.decimals(system) + "f", column.quantity().shown(kept, system));
  }

  @Test
  void aHeadingSaysTheUnitWhereThereIsOne() {
    assertThat(FilledColumn.NET_AREA.heading(UnitSystem.US)).isEqualTo("Net area (ft²)");
    assertThat(FilledColumn.NET_AREA.heading(UnitSystem.METRIC)).isEqualTo("Net area (m²)");
    assertThat(FilledColumn.COATS.heading(UnitSystem.METRIC)).isEqualTo("Coats to apply");
    assertThat(FilledColumn.TIP_CODE.heading(UnitSystem.US)).isEqualTo("Tip code");
  }

  /** The estimator looks at area, tip, coats, film, paint and hours first; the rest folds away. */
  @Test
  void whatIsLookedAtFirstIsNotFoldedAway() {
    for (FilledColumn column :
        List.of(
            FilledColumn.NET_AREA,
            FilledColumn.TIP_CODE,
            FilledColumn.COATS,
            FilledColumn.WET_FILM,
            FilledColumn.PAINT,
            FilledColumn.LABOUR,
            FilledColumn.FINDINGS)) {
      assertThat(column.isGrouped()).as("%s", column).isFalse();
    }
    assertThat(FilledColumn.FLOW.isGrouped()).isTrue();
    assertThat(FilledColumn.PAINT_HIGH.isGrouped()).isTrue();
    // a fold is one block of columns that stand side by side
    String folds = "";
    for (FilledColumn column : FilledColumn.values()) {
      folds += column.isGrouped() ? "g" : "-";
    }
    assertThat(folds).matches("-+g+-+");
  }

  private static final List<FilledColumn> MEASURING =
      List.of(FilledColumn.GROSS, FilledColumn.DEDUCTED, FilledColumn.ADDED);
  private static final List<FilledColumn> COSTS =
      List.of(FilledColumn.COST_LOW, FilledColumn.COST_HIGH);

  private static Catalogue tables(boolean priced, Object... settings) {
    List<StatedRow> rows = new ArrayList<>();
    for (int i = 0; i < settings.length; i += 2) {
      rows.add(Bids.row(i, "Setting", settings[i], "Value", settings[i + 1]));
    }
    List<StatedRow> paints =
        List.of(
            priced
                ? Bids.row(0, "Coating", "stain", "Container sizes", "1", "Price", "60")
                : Bids.row(0, "Coating", "stain", "Density", 0.9));
    return Catalogue.builtIn()
        .with(
            Map.of(Tables.SETTINGS, rows, Tables.COATINGS, paints),
            UnitSystem.US,
            new ArrayList<>());
  }

  @Test
  void measuringIsShownWhereItIsAskedForAndLengthsUnderTheIndianStandardAlone() {
    String rule = "Measuring rule";
    String show = "Show measuring";
    List<FilledColumn> plain = FilledColumn.shown(Catalogue.builtIn());
    List<FilledColumn> unasked = FilledColumn.shown(tables(false, rule, "IS 1200-13"));
    List<FilledColumn> net = FilledColumn.shown(tables(false, show, "yes"));
    List<FilledColumn> indian = FilledColumn.shown(tables(false, show, "yes", rule, "IS 1200-13"));

    assertThat(plain).doesNotContainAnyElementsOf(MEASURING).doesNotContain(FilledColumn.RUNNING);
    assertThat(unasked).isEqualTo(plain);
    assertThat(net).containsAll(MEASURING).doesNotContain(FilledColumn.RUNNING);
    assertThat(indian).containsAll(MEASURING).contains(FilledColumn.RUNNING);
    assertThat(plain).startsWith(FilledColumn.NET_AREA).endsWith(FilledColumn.FINDINGS);
    assertThat(plain).isSorted();
  }

  /** A price of any coating is enough: other lines may be of it. */
  @Test
  void moneyIsShownWherePricesAreStated() {
    List<FilledColumn> none = FilledColumn.shown(tables(false));
    List<FilledColumn> paint = FilledColumn.shown(tables(true));
    List<FilledColumn> labour = FilledColumn.shown(tables(false, "Labour rate", 30));

    assertThat(none)
        .doesNotContain(FilledColumn.PAINT_COST, FilledColumn.LABOUR_COST)
        .doesNotContainAnyElementsOf(COSTS);
    assertThat(paint)
        .contains(FilledColumn.PAINT_COST)
        .doesNotContain(FilledColumn.LABOUR_COST)
        .containsAll(COSTS);
    assertThat(labour)
        .contains(FilledColumn.LABOUR_COST)
        .doesNotContain(FilledColumn.PAINT_COST)
        .containsAll(COSTS);
  }
}
