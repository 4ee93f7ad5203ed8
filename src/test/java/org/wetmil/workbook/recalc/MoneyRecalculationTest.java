package org.wetmil.workbook.recalc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Map;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.wetmil.SmallBid;
import org.wetmil.estimate.price.Price;
import org.wetmil.jobs.FillJob;
import org.wetmil.jobs.FillReport;

/** Every way to a price is the same on the sheets as in the program, under each money setting. */
class MoneyRecalculationTest {
  @TempDir Path folder;

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Overhead=12;Profit=10",
        "Overhead=12;Profit=10;Profit as=margin;Tax on material=8",
        "Overhead=3.5;Profit=10;Profit as=mark-up on direct;Tax on price=7.5;Tax as=inside",
        "Burden=28;Sundries=0;Equipment=75;Access=120.5;Tax on price=19",
        "Minimum charge=50000;Tax on price=6",
        "Price asked=10;Tax on price=5.5;Tax as=inside",
        "Rounding step=7;Overhead=12;Smallest amount=0.05",
        "Smallest amount=0;Overhead=13.7;Profit=9.3;Rounding step=0",
        "Smallest amount=1;Currency=JPY;Tax on price=10;Profit=33"
      })
  void sheetsComputeThePriceOfTheProgram(String settings) throws IOException {
    Path filled = folder.resolve("filled.xlsx");
    FillReport report = job().fill(bid(settings, "yes"), filled);
    Map<String, Object> stored = Formulas.stored(filled);

    assertThat(Formulas.differences(stored, Formulas.evaluated(filled))).isEmpty();
    Price price = report.price().price().orElseThrow();
    assertThat(stored).containsValue(price.total().doubleValue());
    assertThat(stored).containsValue(price.beforeTax().doubleValue());
    assertThat(stored).containsValue(price.direct().doubleValue());
  }

  @Test
  void lineLeftOutIsInNoTotalCostOrOrderAndIsCounted() {
    Path filled = folder.resolve("filled.xlsx");
    FillReport with = job().fill(bid("Overhead=12", "yes"), filled);
    FillReport without =
        new FillJob(LocalDate.of(2026, 1, 5), "test", true).fill(bid("Overhead=12", "no"), filled);
    FillReport alone =
        new FillJob(LocalDate.of(2026, 1, 5), "test", true).fill(bid("Overhead=12", ""), filled);

    assertThat(with.leftOut()).isZero();
    assertThat(without.leftOut()).isEqualTo(1);
    assertThat(without.paint()).isLessThan(with.paint());
    assertThat(without.paint()).isCloseTo(alone.paint(), within(1e-9));
    assertThat(without.hours()).isCloseTo(alone.hours(), within(1e-9));
    assertThat(without.price()).isEqualTo(alone.price());
  }

  /**
   * @param include what stands under Include of the ceiling; empty where there is no ceiling
   */
  private Path bid(String settings, String include) {
    return SmallBid.write(
        folder.resolve("bid.xlsx"),
        book -> {
          XSSFSheet bid = book.getSheet("Bid");
          SmallBid.row(
              bid,
              0,
              "Room",
              "Floor",
              "Surface",
              "Length (ft)",
              "Width (ft)",
              "Height (ft)",
              "Coating",
              "Include");
          SmallBid.row(bid, 1, "Office", "Ground", "walls", 12, 10, 9, "latex", "yes");
          SmallBid.row(bid, 2, "Hall", "First", "walls", 20, 6, 9, "oil-based", "yes");
          bid.removeRow(bid.getRow(3));
          if (!include.isEmpty()) {
            SmallBid.row(bid, 3, "Hall", "First", "ceiling", 20, 6, 9, "primer", include);
          }
          XSSFSheet coatings = book.createSheet("Coatings");
          SmallBid.row(coatings, 0, "Coating", "Class", "Container sizes", "Price");
          SmallBid.row(coatings, 1, "latex", "latex", "1; 5", "36.45; 148.95");
          SmallBid.row(coatings, 2, "oil-based", "oil-based", "1", "51.99");
          SmallBid.row(coatings, 3, "primer", "primer", "1; 5", "28; 112.50");
          settings(book, settings);
        });
  }

  private static void settings(XSSFWorkbook book, String settings) {
    XSSFSheet sheet = book.createSheet("Settings");
    SmallBid.row(sheet, 0, "Setting", "Value");
    SmallBid.row(sheet, 1, "Labour rate", 33.35);
    int next = 2;
    for (String pair : settings.split(";")) {
      String[] parts = pair.split("=");
      boolean number = parts[1].matches("[\\d.]+");
      SmallBid.row(sheet, next++, parts[0], number ? (Object) Double.valueOf(parts[1]) : parts[1]);
    }
  }

  private static FillJob job() {
    return new FillJob(LocalDate.of(2026, 1, 5), "test", false);
  }
}
