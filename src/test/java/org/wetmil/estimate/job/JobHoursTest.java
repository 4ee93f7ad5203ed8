package org.wetmil.estimate.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.wetmil.estimate.InputColumn.AREA;
import static org.wetmil.estimate.InputColumn.COATING;
import static org.wetmil.estimate.InputColumn.COLOUR;
import static org.wetmil.estimate.InputColumn.HEIGHT;
import static org.wetmil.estimate.InputColumn.INCLUDE;
import static org.wetmil.estimate.InputColumn.LENGTH;
import static org.wetmil.estimate.InputColumn.SPRAYER;
import static org.wetmil.estimate.InputColumn.SURFACE;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Tables;
import org.wetmil.estimate.BidLine;
import org.wetmil.estimate.Bids;
import org.wetmil.estimate.Estimator;
import org.wetmil.estimate.Figure;
import org.wetmil.estimate.FilledBid;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.quantity.UnitSystem;

class JobHoursTest {

  @Test
  void jobIsTheSumOfItsTasksAndItsOwnRows() {
    FilledBid filled =
        fill(
            Catalogue.builtIn(),
            wall(COLOUR, "white"),
            wall(COLOUR, "grey"),
            Bids.line(SURFACE, "trim", COATING, "latex", LENGTH, 200, COLOUR, "white"));
    JobHours hours = JobHours.of(filled);

    // tips 517 and 212; latex in white and in grey
    assertThat(hours.number(JobFigure.TIP_CHANGES)).isEqualTo(1);
    assertThat(hours.number(JobFigure.COATING_CHANGES)).isEqualTo(1);
    assertThat(hours.number(JobFigure.CHANGE_TIP)).isEqualTo(0.05);
    assertThat(hours.number(JobFigure.CHANGE_COATING)).isEqualTo(0.5);
    double spray = filled.total(FilledColumn.SPRAY);
    assertThat(hours.number(JobFigure.TOUCH_UP)).isCloseTo(0.1 * spray, within(1e-12));
    assertThat(hours.number(JobFigure.TOTAL))
        .isCloseTo(
            Stream.of(JobFigure.values())
                .filter(JobFigure::isTask)
                .mapToDouble(hours::number)
                .sum(),
            within(1e-9));
    assertThat(hours.number(JobFigure.WORK))
        .isCloseTo(filled.total(FilledColumn.LABOUR) + 0.55 + 0.1 * spray, within(1e-9));
    assertThat(hours.number(JobFigure.DURATION))
        .isCloseTo(hours.number(JobFigure.TOTAL) / 2, within(1e-12));
  }

  @Test
  void exactlyTwoDaysOfWorkIsTwoDaysAndAHairMoreIsThree() {
    double perFt2 = JobHours.of(fill(wall(AREA, 1000))).number(JobFigure.WORK) / 1000;

    assertThat(JobHours.of(fill(wall(AREA, 32 / perFt2))).days()).isEqualTo(2);
    assertThat(JobHours.of(fill(wall(AREA, 32.001 / perFt2))).days()).isEqualTo(3);
    assertThat(JobHours.of(fill(wall(AREA, 31.999 / perFt2))).days()).isEqualTo(2);
  }

  @Test
  void setUpAndCleanUpGoByGunAndDay() {
    Catalogue twoGuns =
        Bids.with(Tables.SPRAYERS, List.of(Bids.row(0, "Sprayer", "big", "Guns", 2)));
    double perFt2 = JobHours.of(fill(wall(AREA, 1000))).number(JobFigure.WORK) / 1000;
    JobHours hours = JobHours.of(fill(twoGuns, wall(AREA, 40 / perFt2, SPRAYER, "big")));

    assertThat(hours.days()).isEqualTo(3);
    assertThat(hours.number(JobFigure.SET_UP)).isCloseTo(4.5, within(1e-12));
    assertThat(hours.number(JobFigure.CLEAN_UP)).isCloseTo(4.5, within(1e-12));
  }

  @Test
  void linesLeftOutNeedNoHoursAndNoChange() {
    JobHours hours =
        JobHours.of(fill(wall(AREA, 500), wall(AREA, 900, COATING, "oil-based", INCLUDE, "no")));

    assertThat(hours.number(JobFigure.COATING_CHANGES)).isZero();
    assertThat(hours.number(JobFigure.SPRAY))
        .isCloseTo(fill(wall(AREA, 500)).total(FilledColumn.SPRAY), within(1e-12));
  }

  @Test
  void jobWithoutLinesTakesNoTime() {
    JobHours hours = JobHours.of(fill(wall(INCLUDE, "no")));

    assertThat(hours.days()).isZero();
    assertThat(hours.number(JobFigure.TOTAL)).isZero();
    assertThat(hours.number(JobFigure.TIP_CHANGES)).isZero();
  }

  @Test
  void daysAreAFormulaOverTheJobsOwnFigures() {
    Figure days = JobHours.of(fill(wall())).figures().get(JobFigure.DAYS);

    assertThat(
            ((Figure.Live) days)
                .formula()
                .print(place -> place.toString().toLowerCase(Locale.ROOT)))
        .startsWith("MAX(0,ROUNDUP(work/(")
        .endsWith("-0.000000001,0))");
  }

  private static FilledBid fill(BidLine... lines) {
    return fill(Catalogue.builtIn(), lines);
  }

  private static FilledBid fill(Catalogue catalogue, BidLine... lines) {
    return Estimator.fill(Bids.bid(catalogue, UnitSystem.US, lines));
  }

  private static BidLine wall(Object... more) {
    Object[] cells =
        Stream.concat(
                Stream.of(SURFACE, "walls", COATING, "latex", LENGTH, 60, HEIGHT, 9),
                Stream.of(more))
            .toArray();
    return Bids.line(cells);
  }
}
