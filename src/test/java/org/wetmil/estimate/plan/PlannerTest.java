package org.wetmil.estimate.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.wetmil.estimate.InputColumn.AREA;
import static org.wetmil.estimate.InputColumn.COATING;
import static org.wetmil.estimate.InputColumn.COATS;
import static org.wetmil.estimate.InputColumn.COLOUR;
import static org.wetmil.estimate.InputColumn.CONDITION;
import static org.wetmil.estimate.InputColumn.INCLUDE;
import static org.wetmil.estimate.InputColumn.ROOM;
import static org.wetmil.estimate.InputColumn.SURFACE;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.StatedRow;
import org.wetmil.catalogue.TableProblem;
import org.wetmil.catalogue.Tables;
import org.wetmil.catalogue.Task;
import org.wetmil.estimate.BidLine;
import org.wetmil.estimate.Bids;
import org.wetmil.estimate.Estimator;
import org.wetmil.estimate.FilledBid;
import org.wetmil.estimate.job.JobFigure;
import org.wetmil.estimate.job.JobHours;
import org.wetmil.quantity.UnitSystem;

class PlannerTest {
  /** Person-hours of a square foot of wall in one coat of latex, touch-up included. */
  private static final double PER_FT2 =
      JobHours.of(fill(Catalogue.builtIn(), wall(AREA, 1000, COATS, 1))).number(JobFigure.WORK)
          / 1000;

  /** A crew of 2 works 16 person-hours a day. */
  private static final double DAY_FT2 = 16 / PER_FT2;

  private static final double HOUR_FT2 = DAY_FT2 / 8;

  @Test
  void withoutDryingAPlanTakesTheDaysOfTheHours() {
    for (double days : new double[] {0.4, 1, 1.001, 2.5, 3}) {
      FilledBid filled = fill(Catalogue.builtIn(), wall(AREA, days * DAY_FT2, COATS, 1));
      Plan plan = Planner.plan(filled);

      assertThat(plan.days()).isEqualTo(JobHours.of(filled).days());
      assertThat(plan.waitingHours()).isZero();
    }
  }

  @Test
  void secondCoatWaitsForTheFirstToDry() {
    // one hour for each coat, then four to dry: the second is begun at hour 5 of 8
    Plan plan = plan(4, wall(AREA, HOUR_FT2, COATS, 2));
    assertThat(plan.days()).isEqualTo(1);
    assertThat(plan.waitingHours()).isCloseTo(4, within(1e-6));

    // seven and a half hours to dry leave half an hour on the first day
    Plan longer = plan(7.5, wall(AREA, HOUR_FT2, COATS, 2));
    assertThat(longer.days()).isEqualTo(2);
  }

  @Test
  void nightsDryPaint() {
    // 23 hours after the first hour it is the next morning
    Plan plan = plan(23, wall(AREA, HOUR_FT2, COATS, 2));

    assertThat(plan.days()).isEqualTo(2);
    assertThat(plan.waitingHours()).isCloseTo(7, within(1e-6));
  }

  @Test
  void whileACoatDriesTheNextRoomIsBegun() {
    Plan plan =
        plan(
            4,
            wall(ROOM, "A", AREA, HOUR_FT2, COATS, 2),
            wall(ROOM, "B", AREA, HOUR_FT2, COATS, 2));

    // A 0 to 1, B 1 to 2, wait to 5, A 5 to 6, B 6 to 7
    assertThat(plan.days()).isEqualTo(1);
    assertThat(plan.waitingHours()).isCloseTo(3, within(1e-6));
    assertThat(plan.rooms()).extracting(RoomPlan::room).containsExactly("A", "B");
  }

  @Test
  void primerComesFirstWhereverItsLineStands() {
    Plan plan =
        plan(4, wall(AREA, HOUR_FT2, COATS, 1), wall(AREA, HOUR_FT2, COATING, "primer", COATS, 1));

    // a primer dries four hours; without the wait both were done by noon
    assertThat(plan.waitingHours()).isGreaterThan(3.5);
    assertThat(plan.coatingChanges()).isEqualTo(1);
  }

  @Test
  void whatIsInThePumpGoesFirst() {
    Plan plan =
        plan(
            1,
            wall(ROOM, "A", AREA, DAY_FT2 / 20, COLOUR, "red", COATS, 1),
            wall(ROOM, "A", AREA, DAY_FT2 / 20, COLOUR, "blue", COATS, 1),
            wall(ROOM, "A", AREA, DAY_FT2 / 20, COLOUR, "Red", COATS, 1));

    assertThat(plan.coatingChanges()).isEqualTo(1);
  }

  @Test
  void changingPaintOrTipIsWorkThatACoatDriesIn() {
    Catalogue builtIn = Catalogue.builtIn();
    double doors =
        JobHours.of(fill(builtIn, wall(SURFACE, "doors", AREA, 100, COATS, 1)))
            .number(JobFigure.WORK);

    // red 0 to 1, blue for an hour after a change by two people, and red again at hour 5
    Plan colours =
        plan(
            4,
            wall(AREA, HOUR_FT2, COLOUR, "red", COATS, 2),
            wall(AREA, HOUR_FT2, COLOUR, "blue", COATS, 1));
    assertThat(colours.waitingHours())
        .isCloseTo(3 - builtIn.rate(Task.CHANGE_COATING) / 2, within(1e-6));

    // walls 0 to 1, doors with a finer tip, and walls again at hour 5
    Plan tips =
        plan(4, wall(AREA, HOUR_FT2, COATS, 2), wall(SURFACE, "doors", AREA, 100, COATS, 1));
    assertThat(tips.coatingChanges()).isZero();
    assertThat(tips.waitingHours())
        .isCloseTo(4 - (doors + builtIn.rate(Task.CHANGE_TIP)) / 2, within(1e-6));
  }

  /** Of two products that can be laid, the one with more work goes first. */
  @Test
  void mostWorkGoesFirst() {
    Plan plan =
        plan(
            4,
            wall(ROOM, "A", AREA, HOUR_FT2, COLOUR, "red", COATS, 1),
            wall(ROOM, "A", AREA, 2 * HOUR_FT2, COLOUR, "blue", COATS, 2));

    // blue 0 to 2, red 2 to 3 after a change, blue again at hour 6
    assertThat(plan.waitingHours())
        .isCloseTo(3 - Catalogue.builtIn().rate(Task.CHANGE_COATING) / 2, within(1e-6));
  }

  @Test
  void linesThatDoNotCountAreNotPlanned() {
    assertThat(plan(4, wall(INCLUDE, "no")).rooms()).isEmpty();
    assertThat(plan(4, wall(INCLUDE, "no")).days()).isZero();
  }

  @Test
  void hoursOfTheRoomsAreThoseOfTheEstimate() {
    FilledBid filled =
        fill(
            Catalogue.builtIn(),
            wall(ROOM, "A", CONDITION, "painted", AREA, 700),
            wall(ROOM, "B", SURFACE, "doors", COATING, "oil-based", AREA, 300),
            wall(ROOM, "B", CONDITION, "bare", AREA, 900));
    JobHours hours = JobHours.of(filled);
    double planned = Planner.plan(filled).rooms().stream().mapToDouble(RoomPlan::personHours).sum();

    assertThat(planned)
        .isCloseTo(
            hours.number(JobFigure.WORK)
                - hours.number(JobFigure.CHANGE_TIP)
                - hours.number(JobFigure.CHANGE_COATING),
            within(1e-9));
  }

  @Test
  void planSaysWhereItsDryingTimesAreFrom() {
    Plan plan = plan(7, wall());

    assertThat(plan.coatings()).containsExactly(new Plan.Recoat("latex", 7, "your sheet", true));
    assertThat(Planner.plan(fill(Catalogue.builtIn(), wall())).coatings().get(0).yours()).isFalse();
  }

  @Test
  @Tag("long")
  void manyRoomsArePlannedQuickly() {
    BidLine[] lines = new BidLine[20_000];
    for (int i = 0; i < lines.length; i++) {
      lines[i] = wall(ROOM, "Room " + i / 3, COLOUR, "Colour " + i % 5, AREA, 300);
    }
    long start = System.nanoTime();
    Plan plan = Planner.plan(fill(Catalogue.builtIn(), lines));

    assertThat(plan.rooms()).hasSize(6_667);
    assertThat((System.nanoTime() - start) / 1e9).isLessThan(20);
  }

  private static Plan plan(double recoatHours, BidLine... lines) {
    StatedRow latex = Bids.row(0, "Coating", "latex", "Recoat", recoatHours);
    List<TableProblem> problems = new ArrayList<>();
    Catalogue catalogue =
        Catalogue.builtIn().with(Map.of(Tables.COATINGS, List.of(latex)), UnitSystem.US, problems);
    assertThat(problems).isEmpty();
    return Planner.plan(fill(catalogue, lines));
  }

  private static FilledBid fill(Catalogue catalogue, BidLine... lines) {
    return Estimator.fill(Bids.bid(catalogue, UnitSystem.US, lines));
  }

  private static BidLine wall(Object... more) {
    List<Object> cells = new ArrayList<>(List.of(SURFACE, "walls", COATING, "latex", AREA, 800));
    cells.addAll(List.of(more));
    return Bids.line(cells.toArray());
  }
}
