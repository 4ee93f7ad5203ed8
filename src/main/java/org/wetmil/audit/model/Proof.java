package org.wetmil.audit.model;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.wetmil.audit.past.Observation;
import org.wetmil.audit.past.Observations;
import org.wetmil.audit.past.PastBid;

/**
 * Whether a change would have helped: each bid forecast by what all the others say.
 *
 * @param change what was tried
 * @param bids each bid with its forecast, in the order given
 */
public record Proof(Change change, List<Forecast> bids) {
  /** Fewest bids that prove anything (house rule). */
  public static final int FEWEST = 6;

  /** Least fall of the mean miss that is worth a change (house rule: half a percent). */
  private static final double LEAST_GAIN = 0.005;

  /** Misses as near as this to each other are the same but for rounding. */
  private static final double EQUAL = 1e-9;

  /**
   * One bid, in the kept unit of the measure.
   *
   * @param estimated as bid, without factors
   * @param forecast as it would have been bid with factors from all other bids
   * @param actual outcome
   */
  public record Forecast(PastBid bid, double estimated, double forecast, double actual) {
    double missBefore() {
      return Math.abs(Math.log(actual / estimated));
    }

    double missAfter() {
      return Math.abs(Math.log(actual / forecast));
    }
  }

  /** Every change, the simplest first. */
  public static List<Proof> of(Observations observations, LeaveOneOut fits) {
    return Stream.of(Change.values()).map(change -> of(observations, fits, change)).toList();
  }

  /**
   * The change that forecasts best, if there are enough bids and it does clearly better than none;
   * among equals the simplest.
   */
  public static Optional<Proof> offered(List<Proof> proofs) {
    double best = proofs.stream().mapToDouble(Proof::after).min().orElse(Double.NaN);
    return proofs.stream()
        .filter(proof -> proof.after() <= best + EQUAL)
        .findFirst()
        .filter(proof -> proof.bids.size() >= FEWEST)
        .filter(proof -> proof.before() - proof.after() >= LEAST_GAIN);
  }

  /** Mean |ln(actual / estimated)|. */
  public double before() {
    return bids.stream().mapToDouble(Forecast::missBefore).average().orElse(Double.NaN);
  }

  /** Mean |ln(actual / forecast)|. */
  public double after() {
    return bids.stream().mapToDouble(Forecast::missAfter).average().orElse(Double.NaN);
  }

  /** Bids that would have come out nearer. */
  public long closer() {
    return bids.stream().filter(bid -> bid.missAfter() < bid.missBefore()).count();
  }

  /** The last bids by date, latest last; undated ones count as the oldest. */
  public List<Forecast> last(int count) {
    List<Forecast> dated =
        bids.stream()
            .sorted(
                Comparator.comparing(
                    forecast -> forecast.bid().date(),
                    Comparator.nullsFirst(Comparator.naturalOrder())))
            .toList();
    return dated.subList(Math.max(0, dated.size() - count), dated.size());
  }

  private static Proof of(Observations observations, LeaveOneOut fits, Change change) {
    return new Proof(
        change,
        observations.byBid().entrySet().stream()
            .map(bid -> forecast(observations, fits, change, bid))
            .toList());
  }

  private static Forecast forecast(
      Observations observations,
      LeaveOneOut fits,
      Change change,
      Map.Entry<Integer, List<Observation>> bid) {
    AdditiveModel others = fits.without().get(bid.getKey());
    double estimated = 0;
    double forecast = 0;
    double actual = 0;
    for (Observation one : bid.getValue()) {
      estimated += one.estimated();
      forecast +=
          one.estimated() * Math.exp(others.logFactor(one, change.kinds(observations.measure())));
      actual += one.actual();
    }
    return new Forecast(observations.bids().get(bid.getKey()), estimated, forecast, actual);
  }
}
