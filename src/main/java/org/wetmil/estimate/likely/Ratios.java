package org.wetmil.estimate.likely;

import java.util.Arrays;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * How many times more or less than stated a line takes, at both ends of its range. It depends on
 * the share of paint that stays on and on nothing else of the line, so that few are worked out.
 */
public final class Ratios {
  /** Draws for amounts, which have no closed form. */
  private static final int DRAWS = 4_096;

  /** Shares of labour that amounts are worked out for; between them lies a straight line. */
  private static final int STEPS = 32;

  /** Kept for the bids of a run, which mostly have the same ranges and shares; more are let go. */
  private static final int MOST_KEPT = 1_000;

  private static final Map<Spreads, Ratios> KEPT = new ConcurrentHashMap<>();

  private final Spreads spreads;
  private final Map<Double, Of> known = new ConcurrentHashMap<>();

  Ratios(Spreads spreads) {
    this.spreads = spreads;
  }

  /** The ratios for some ranges; the same for every bid that states these. */
  public static Ratios of(Spreads spreads) {
    letGo(KEPT);
    return KEPT.computeIfAbsent(spreads, Ratios::new);
  }

  /** The ratios for one share of paint that stays on. */
  public Of of(double transfer) {
    letGo(known);
    return known.computeIfAbsent(transfer, Of::new);
  }

  private static void letGo(Map<?, ?> kept) {
    if (kept.size() >= MOST_KEPT) {
      kept.clear();
    }
  }

  public final class Of {
    private final double transfer;
    private final Ends paint;
    private final Ends spray;
    private volatile Ends[] amounts;

    private Of(double transfer) {
      this.transfer = transfer;
      this.paint = ends(spreads.together(Factor.FILM, Factor.KEPT));
      this.spray = ends(spreads.together(Factor.FILM, Factor.TRIGGER));
    }

    private Ends ends(double free) {
      double sigma = spreads.sigma(Factor.TRANSFER);
      return new Ends(
          Quantile.ratio(Spreads.TAIL, free, sigma, transfer),
          Quantile.ratio(1 - Spreads.TAIL, free, sigma, transfer));
    }

    /** Paint goes with film over the share that stays on and the share kept. */
    public Ends paint() {
      return paint;
    }

    /** Spraying goes with film over the share that stays on and the time with the trigger on. */
    public Ends spray() {
      return spray;
    }

    /**
     * An amount for paint and spraying together.
     *
     * @param labour share of the amount that goes for spraying, 0..1
     */
    public Ends amount(double labour) {
      Ends[] amounts = this.amounts;
      if (amounts == null) {
        amounts = worked();
        this.amounts = amounts;
      }
      double at = labour * STEPS;
      int below = (int) Math.min(STEPS - 1, Math.floor(at));
      double share = at - below;
      return new Ends(
          amounts[below].low() * (1 - share) + amounts[below + 1].low() * share,
          amounts[below].high() * (1 - share) + amounts[below + 1].high() * share);
    }

    private Ends[] worked() {
      double[] paints = new double[DRAWS];
      double[] sprays = new double[DRAWS];
      double[] film = drawn(Factor.FILM);
      double[] stays = drawn(Factor.TRANSFER);
      double[] kept = drawn(Factor.KEPT);
      double[] trigger = drawn(Factor.TRIGGER);
      for (int i = 0; i < DRAWS; i++) {
        double both = film[i] * Math.max(transfer, stays[i]);
        paints[i] = both * kept[i];
        sprays[i] = both * trigger[i];
      }
      Ends[] ends = new Ends[STEPS + 1];
      for (int step = 0; step <= STEPS; step++) {
        double labour = (double) step / STEPS;
        double[] mixed = new double[DRAWS];
        Arrays.setAll(mixed, i -> (1 - labour) * paints[i] + labour * sprays[i]);
        ends[step] =
            new Ends(
                Strata.quantile(mixed, Spreads.TAIL), Strata.quantile(mixed, 1 - Spreads.TAIL));
      }
      // paint alone and spraying alone have a closed form
      ends[0] = paint;
      ends[STEPS] = spray;
      return ends;
    }

    private double[] drawn(Factor factor) {
      Strata strata = new Strata(DRAWS);
      double[] values = strata.lognormal(0, spreads.sigma(factor));
      short[] order = strata.order(Strata.seed(factor.name()));
      double[] drawn = new double[DRAWS];
      Arrays.setAll(drawn, i -> values[order[i]]);
      return drawn;
    }
  }
}
