package org.wetmil.estimate.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Days of eight working hours; the second begins at hour 24. */
class WorkClockTest {
  private final WorkClock clock = new WorkClock(8);

  @Test
  void workGoesOnTheNextMorning() {
    clock.work(3);
    assertThat(clock.now()).isEqualTo(3);
    clock.work(5);
    assertThat(clock.now()).isEqualTo(8);
    clock.work(1.5);
    assertThat(clock.now()).isCloseTo(25.5, within(1e-9));
    clock.work(16);
    assertThat(clock.now()).isCloseTo(24 * 3 + 1.5, within(1e-9));
    clock.work(0);
    assertThat(clock.now()).isCloseTo(24 * 3 + 1.5, within(1e-9));
  }

  @Test
  void waitingCostsOnlyWorkingHours() {
    clock.work(2);
    assertThat(clock.waitUntil(5)).isCloseTo(3, within(1e-9));
    assertThat(clock.now()).isEqualTo(5);
    // from hour 5 to the night: three hours; what is dry at hour 20 is gone on with at 24
    assertThat(clock.waitUntil(20)).isCloseTo(3, within(1e-9));
    assertThat(clock.now()).isEqualTo(24);
    assertThat(clock.waitUntil(26)).isCloseTo(2, within(1e-9));
    assertThat(clock.waitUntil(25)).isZero();
    assertThat(clock.now()).isEqualTo(26);
  }

  @Test
  void hoursFallOnTheDayThatIsWorked() {
    assertThat(clock.dayBegun(0)).isEqualTo(1);
    assertThat(clock.dayBegun(7.9)).isEqualTo(1);
    // what is begun at the end of a day is begun the next morning
    assertThat(clock.dayBegun(8)).isEqualTo(2);
    assertThat(clock.dayBegun(24)).isEqualTo(2);
    assertThat(clock.dayBegun(32 - 1e-10)).isEqualTo(3);
    assertThat(WorkClock.dayEnded(0)).isEqualTo(1);
    assertThat(WorkClock.dayEnded(8)).isEqualTo(1);
    assertThat(WorkClock.dayEnded(24 + 1e-10)).isEqualTo(1);
    assertThat(WorkClock.dayEnded(25)).isEqualTo(2);
    assertThat(new RoomPlan("", "Hall", 20, 2, 4).days()).isEqualTo(3);
  }
}
