package org.wetmil.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.wetmil.checks.Case.bid;
import static org.wetmil.checks.ThinCases.room;
import static org.wetmil.estimate.InputColumn.COATING;
import static org.wetmil.estimate.InputColumn.COATS;
import static org.wetmil.estimate.InputColumn.SPECIFIED_FILM;
import static org.wetmil.estimate.InputColumn.THINNER;

import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wetmil.estimate.BidLine;
import org.wetmil.estimate.Bids;

/** The coats that are advised for a film build it; where none do, none do. */
class FilmOfCoatsTest {
  private static final long SEED = 20_251_125;
  private static final Pattern PLAN = Pattern.compile("plan (\\d+)");

  @ParameterizedTest
  @CsvSource({
    // latex of 36 % solids: 3.5 to 7 mil wet, up to 5.625 without running
    "2, 2.0, 'over the 2.4 mil accepted; plan 1 coat, which builds 2.0 mil.'",
    "9, 6.0, 'over the 7.2 mil accepted; plan 4 coats, which build 6.0 mil.'",
    "2, 0.5, 'no number of coats fits, since 1 coat builds 1.3 mil; change the coating or the tip.'",
    "2, 2.05, 'no number of coats fits, since 1 coat runs and 2 coats build 2.5 mil; change the coating or the tip.'"
  })
  void coatsThatFitAreNamedOrWhyNoneDo(int coats, double dryMil, String end) {
    assertThat(outside(room(COATS, coats, SPECIFIED_FILM, dryMil)).get(0).message()).endsWith(end);
  }

  @Test
  @Tag("long")
  void plannedAsAdvisedTheFilmIsAccepted() {
    Random random = new Random(SEED);
    int planned = 0;
    int none = 0;
    for (int i = 0; i < 600; i++) {
      BidLine line =
          room(
              COATING,
              List.of("latex", "two-part", "oil-based", "stain").get(i % 4),
              COATS,
              1 + random.nextInt(6),
              THINNER,
              random.nextInt(3) * 0.05);
      double low = 0.4 + 12 * random.nextDouble();
      double high = low * (1 + 0.4 * random.nextDouble());
      BidLine specified = Bids.range(line, SPECIFIED_FILM, low, high);
      for (Finding finding : outside(specified)) {
        Matcher plan = PLAN.matcher(finding.message());
        if (plan.find()) {
          planned++;
          assertThat(ids(with(specified, Integer.parseInt(plan.group(1)))))
              .as(finding.message())
              .doesNotContain("dry-film-outside", "coats-too-few");
        } else {
          none++;
          assertThat(IntStream.rangeClosed(1, 40).filter(n -> fits(specified, n)))
              .as(finding.message())
              .isEmpty();
        }
      }
    }
    assertThat(planned).isGreaterThan(100);
    assertThat(none).isGreaterThan(10);
  }

  private static boolean fits(BidLine line, int coats) {
    List<String> ids = ids(with(line, coats));
    return !ids.contains("dry-film-outside") && !ids.contains("coats-too-few");
  }

  private static BidLine with(BidLine line, int coats) {
    return Bids.changed(line, COATS, room(COATS, coats).get(COATS));
  }

  private static List<Finding> outside(BidLine line) {
    return Checks.run(bid(line)).stream()
        .filter(finding -> finding.check().equals("dry-film-outside"))
        .toList();
  }

  private static List<String> ids(BidLine line) {
    return Checks.run(bid(line)).stream().map(Finding::check).toList();
  }
}
