package org.wetmil.audit;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import org.wetmil.audit.model.Proof;
import org.wetmil.audit.past.Measure;
import org.wetmil.quantity.Count;
import org.wetmil.quantity.UnitSystem;

/** What a change would have done to the last bids, in amounts and, where they say it, in money. */
record LastBids(Measure measure, List<Proof.Forecast> bids, UnitSystem system) {

  String sentence() {
    double taken = sum(Proof.Forecast::actual);
    double planned = sum(Proof.Forecast::estimated);
    double changed = sum(Proof.Forecast::forecast);
    return "The last %s planned %s and took %s: %s. With the change they would have planned %s: %s%s."
        .formatted(
            Count.of(bids.size(), "bid"),
            amount(planned),
            amount(taken),
            spare(planned, taken),
            amount(changed),
            spare(changed, taken),
            money().map(said -> "; " + said).orElse(""));
  }

  private double sum(ToDoubleFunction<Proof.Forecast> figure) {
    return bids.stream().mapToDouble(figure).sum();
  }

  private String amount(double kept) {
    return Words.amount(measure, kept, system);
  }

  /** The difference of the amounts as they are printed. */
  private String spare(double planned, double taken) {
    long over =
        Math.round(measure.quantity().shown(planned, system))
            - Math.round(measure.quantity().shown(taken, system));
    return over == 0
        ? "just enough"
        : Math.abs(over)
            + " "
            + measure.quantity().unit(system).symbol()
            + (over < 0 ? " short" : " to spare");
  }

  /** The same at what paint or time cost in each of the bids; empty unless all of them say it. */
  private Optional<String> money() {
    List<String> currencies =
        bids.stream().map(bid -> bid.bid().costs().currency()).distinct().toList();
    boolean stated = bids.stream().allMatch(bid -> bid.bid().costs().of(measure) != null);
    if (!stated || currencies.size() != 1) {
      return Optional.empty();
    }
    return Optional.of(
        "in their own prices %s instead of %s"
            .formatted(
                price(Proof.Forecast::forecast, currencies.get(0)),
                price(Proof.Forecast::estimated, currencies.get(0))));
  }

  private String price(ToDoubleFunction<Proof.Forecast> planned, String currency) {
    BigDecimal sum =
        bids.stream()
            .map(
                bid ->
                    bid.bid()
                        .costs()
                        .of(measure)
                        .multiply(BigDecimal.valueOf(planned.applyAsDouble(bid) - bid.actual())))
            .collect(Collectors.reducing(BigDecimal.ZERO, BigDecimal::add))
            .setScale(0, RoundingMode.HALF_UP);
    String amount = (sum.abs().toPlainString() + " " + currency).strip();
    return sum.signum() == 0 ? "nothing" : amount + (sum.signum() < 0 ? " short" : " to spare");
  }
}
