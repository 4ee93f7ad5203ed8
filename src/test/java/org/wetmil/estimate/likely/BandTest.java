package org.wetmil.estimate.likely;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class BandTest {

  @Test
  void endsBelongToTheRange() {
    Band band = new Band(80, 100, 125);

    assertThat(band.holds(79.99)).isFalse();
    assertThat(band.holds(80)).isTrue();
    assertThat(band.holds(125)).isTrue();
    assertThat(band.holds(125.01)).isFalse();
  }

  @Test
  void endsAreRatiosToWhatIsStated() {
    assertThat(new Band(80, 100, 125).lowRatio()).isEqualTo(0.8);
    assertThat(new Band(80, 100, 125).highRatio()).isEqualTo(1.25);
    assertThat(new Band(0, 0, 0).lowRatio()).isEqualTo(1);
    assertThat(new Band(0, 0, 0).highRatio()).isEqualTo(1);
  }

  @Test
  void statedFigureIsNeverOutside() {
    assertThat(Band.around(90, 80, 100)).isEqualTo(new Band(80, 80, 100));
    assertThat(Band.around(90, 110, 100)).isEqualTo(new Band(90, 110, 110));
    assertThat(new Band(5, 5, 5)).isEqualTo(Band.around(5, 5, 5));
    assertThatThrownBy(() -> new Band(90, 80, 100)).hasMessageContaining("80.0 is not within");
    assertThatThrownBy(() -> new Band(90, 110, 100)).hasMessageContaining("110.0 is not within");
  }

  @Test
  void jobsAreAllThatAreBelowInsideAndAbove() {
    assertThat(new Inside(1, 2, 4).jobs()).isEqualTo(7);
    assertThat(new Inside(1, 6, 1).share()).isEqualTo(0.75);
  }
}
