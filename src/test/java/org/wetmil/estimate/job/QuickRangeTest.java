package org.wetmil.estimate.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.wetmil.estimate.InputColumn.AREA;
import static org.wetmil.estimate.InputColumn.COATING;
import static org.wetmil.estimate.InputColumn.COUNT;
import static org.wetmil.estimate.InputColumn.ROOM;
import static org.wetmil.estimate.InputColumn.SURFACE;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.wetmil.estimate.BidLine;
import org.wetmil.estimate.Bids;
import org.wetmil.estimate.Estimator;
import org.wetmil.estimate.FilledBid;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.estimate.likely.Band;

class QuickRangeTest {
  /** Three standard errors of a 10 or 90 % end, of each of two sets of 4,000 plain draws. */
  private static final double ERROR = 3 * Math.sqrt(2) * Math.sqrt(0.1 * 0.9 / 4000) / 0.1755;

  @ParameterizedTest
  @ValueSource(ints = {1, 3, 12, 60})
  void endsAreThoseOfTheRangeThatIsDrawnLineByLine(int lines) {
    FilledBid filled = Estimator.fill(Bids.bid(lines(lines)));
    FilledJob job = FilledJob.of(filled);
    QuickRange quick = QuickRange.of(filled, job.hours(), job.order().hoseGal());
    near(quick.jobGal(), job.range().paintGal());
    near(quick.jobHours(), job.range().hours());
    assertThat(quick.linesGal().stated()).isEqualTo(filled.total(FilledColumn.PAINT));
    assertThat(quick.lineHours().stated())
        .isCloseTo(filled.total(FilledColumn.LABOUR), within(1e-9));
  }

  private static void near(Band quick, Band drawn) {
    double sigma = Math.log(drawn.highRatio() / drawn.lowRatio()) / 2 / 1.2816;
    assertThat(quick.stated()).isCloseTo(drawn.stated(), within(1e-9));
    assertThat(Math.log(quick.highRatio() / drawn.highRatio()))
        .isCloseTo(0, within(ERROR * sigma + 0.002));
    assertThat(Math.log(quick.lowRatio() / drawn.lowRatio()))
        .isCloseTo(0, within(ERROR * sigma + 0.002));
  }

  private static BidLine[] lines(int count) {
    Random random = new Random(5);
    List<BidLine> lines = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      String room = "Room " + i;
      lines.add(
          i % 3 == 0
              ? Bids.line(ROOM, room, SURFACE, "cabinets", COATING, "lacquer", COUNT, 1 + i)
              : Bids.line(
                  ROOM,
                  room,
                  SURFACE,
                  i % 3 == 1 ? "walls" : "siding",
                  COATING,
                  "latex",
                  AREA,
                  100 + random.nextInt(2000)));
    }
    return lines.toArray(BidLine[]::new);
  }
}
