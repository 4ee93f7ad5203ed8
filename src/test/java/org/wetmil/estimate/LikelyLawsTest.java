package org.wetmil.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.wetmil.estimate.job.FilledJob;
import org.wetmil.estimate.job.JobFigure;
import org.wetmil.estimate.job.JobRange;
import org.wetmil.quantity.UnitSystem;

/** What holds of the likely range of any bid. */
@Tag("long")
class LikelyLawsTest {

  @Test
  void statedFiguresLieWithinTheirRanges() {
    int lines = 0;
    for (int seed = 0; seed < 40; seed++) {
      RandomBids random = new RandomBids(seed);
      BidLine[] stated = Stream.generate(random::line).limit(12).toArray(BidLine[]::new);
      FilledBid filled = Estimator.fill(Bids.bid(random.next().catalogue(), UnitSystem.US, stated));
      FilledJob job = FilledJob.of(filled);
      JobRange range = job.range();

      assertThat(range.paintGal().stated()).isCloseTo(job.paintGal(), within(1e-9));
      assertThat(range.hours().stated()).isEqualTo(job.hours().number(JobFigure.TOTAL));
      assertThat(range.days().low()).isLessThanOrEqualTo(range.days().high());
      List<FilledLine> some = filled.lines().filter(FilledLine::isFilled).toList();
      assertThat(some)
          .allSatisfy(
              line -> {
                assertThat(line.base(FilledColumn.PAINT_LOW))
                    .isNotNegative()
                    .isLessThanOrEqualTo(line.base(FilledColumn.PAINT_HIGH));
                assertThat(line.base(FilledColumn.LABOUR_LOW))
                    .isNotNegative()
                    .isLessThanOrEqualTo(line.base(FilledColumn.LABOUR_HIGH));
              });
      lines += some.size();
    }
    assertThat(lines).isPositive();
  }
}
