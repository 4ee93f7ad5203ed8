package org.wetmil.audit.ratio;

import java.util.List;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;
import org.wetmil.audit.past.Observation;
import org.wetmil.audit.past.Observations;
import org.wetmil.audit.stats.Difference;
import org.wetmil.audit.stats.Interval;

/**
 * Whether lines on which a check fired also ran over.
 *
 * @param check id of the check
 * @param lines lines on which it fired, over all bids, won or not
 * @param bids bids in which it fired
 * @param jobsFired bids with an outcome to which such lines have a part
 * @param jobsQuiet bids with an outcome to which other lines have a part
 * @param over geometric mean ratio where it fired over that where it did not; NaN when either lacks
 * @param likely its 95 % interval; unknown when there are too few on either side
 */
public record SetupRatio(
    String check, int lines, int bids, int jobsFired, int jobsQuiet, double over, Interval likely) {

  /** Every check that fired anywhere, by id. */
  public static List<SetupRatio> of(Observations observations) {
    TreeSet<String> checks = new TreeSet<>();
    observations.bids().stream()
        .flatMap(bid -> bid.lines().stream())
        .forEach(line -> checks.addAll(line.fired()));
    return checks.stream().map(check -> of(observations, check)).toList();
  }

  private static SetupRatio of(Observations observations, String check) {
    ToDoubleFunction<Observation> fired = one -> one.fired().getOrDefault(check, 0.0);
    List<Piece> with = Piece.of(observations, fired);
    List<Piece> without = Piece.of(observations, one -> 1 - fired.applyAsDouble(one));
    Difference difference = Piece.difference(with, without);
    List<Long> counts =
        observations.bids().stream()
            .map(bid -> bid.lines().stream().filter(line -> line.fired().contains(check)).count())
            .filter(count -> count > 0)
            .toList();
    return new SetupRatio(
        check,
        counts.stream().mapToInt(Long::intValue).sum(),
        counts.size(),
        with.size(),
        without.size(),
        Math.exp(difference.mean()),
        difference.interval().exp());
  }

  public boolean isTooFew() {
    return !likely.isKnown();
  }
}
