package org.wetmil.audit.range;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.wetmil.audit.model.Proof;
import org.wetmil.audit.past.Likely;
import org.wetmil.audit.past.Measure;
import org.wetmil.audit.past.PastBid;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Setting;
import org.wetmil.estimate.likely.Factor;
import org.wetmil.estimate.likely.Inside;
import org.wetmil.estimate.likely.Spreads;

/**
 * What would have set the ranges of a measure right, tried on the past jobs.
 *
 * @param withChange jobs inside as the ranges are, had they been bid with the change that the audit
 *     offers; empty when it offers none
 * @param settings the settings that would fit, with their values; empty when none proved itself or
 *     none is needed
 * @param heldOut jobs inside when each is judged by the width that fits all the others
 */
public record RangeChange(
    Optional<Inside> withChange, Map<Setting, Double> settings, Optional<Inside> heldOut) {
  /** Greatest range that is suggested, as the settings allow it (house). */
  private static final double GREATEST = 3;

  public static final RangeChange NONE =
      new RangeChange(Optional.empty(), Map.of(), Optional.empty());

  public RangeChange {
    settings = Map.copyOf(settings);
  }

  /**
   * Tries the change that the audit offers first; only what it leaves is a matter of width.
   *
   * @param offered the change that the audit offers for the measure
   * @param spreads how far the factors range that this measure's jobs would be bid with next
   */
  public static RangeChange of(
      RangeAudit audit, Optional<Proof> offered, Catalogue today, Spreads spreads) {
    Judgement judgement = audit.judgement();
    if (judgement != Judgement.TOO_NARROW && judgement != Judgement.TOO_WIDE) {
      return NONE;
    }
    Factor[] factors = factors(audit.measure());
    Widths widths =
        new Widths(audit.jobs().stream().map(job -> job(job, audit.measure(), offered)).toList());
    Optional<Inside> withChange = offered.map(proof -> widths.at(spreads.together(factors)));
    Judgement left = Judgement.of(withChange.orElse(audit.inside()));
    OptionalDouble width = widths.fitting();
    if (left == Judgement.ABOUT_RIGHT || left == Judgement.TOO_FEW || width.isEmpty()) {
      return new RangeChange(withChange, Map.of(), Optional.empty());
    }
    Map<Setting, Double> settings = settings(audit.measure(), width.getAsDouble(), today, spreads);
    Inside heldOut = widths.heldOut();
    boolean proven =
        !settings.isEmpty()
            && settings.values().stream().allMatch(value -> value <= GREATEST)
            && Judgement.of(heldOut) == Judgement.ABOUT_RIGHT
            && Judgement.of(widths.at(with(settings, spreads).together(factors)))
                == Judgement.ABOUT_RIGHT;
    return proven
        ? new RangeChange(withChange, settings, Optional.of(heldOut))
        : new RangeChange(withChange, Map.of(), Optional.empty());
  }

  /** The factors that a measure turns on. */
  public static Factor[] factors(Measure measure) {
    return switch (measure) {
      case PAINT -> new Factor[] {Factor.TRANSFER, Factor.FILM, Factor.KEPT};
      case HOURS -> new Factor[] {Factor.TRANSFER, Factor.FILM, Factor.TRIGGER};
    };
  }

  private static Widths.Job job(PlacedJob job, Measure measure, Optional<Proof> offered) {
    Likely likely = job.bid().likely().get(measure);
    double estimate =
        offered.flatMap(proof -> forecast(proof, job.bid())).orElse(job.range().stated());
    return Widths.job(job.actual() / estimate, likely, factors(measure));
  }

  private static Optional<Double> forecast(Proof proof, PastBid bid) {
    return proof.bids().stream()
        .filter(each -> each.bid() == bid)
        .map(Proof.Forecast::forecast)
        .findFirst();
  }

  /** The spreads with some settings changed. */
  public static Spreads with(Map<Setting, Double> settings, Spreads spreads) {
    Map<Factor, Double> sigmas = new EnumMap<>(spreads.sigmas());
    for (Factor factor : Factor.values()) {
      Double value = settings.get(factor.setting());
      if (value != null) {
        sigmas.put(factor, Spreads.sigma(value));
      }
    }
    return new Spreads(sigmas, spreads.common());
  }

  /**
   * What paint shows does not tell its factors apart, so all of them keep their proportion; hours
   * have one of their own, which makes up for what the others leave.
   */
  private static Map<Setting, Double> settings(
      Measure measure, double width, Catalogue today, Spreads spreads) {
    Map<Setting, Double> settings = new EnumMap<>(Setting.class);
    if (measure == Measure.HOURS) {
      double shared = spreads.together(Factor.TRANSFER, Factor.FILM);
      if (width > shared) {
        put(settings, Factor.TRIGGER, Math.sqrt(width * width - shared * shared), today);
      }
    } else {
      double power = width / spreads.together(factors(measure));
      for (Factor factor : factors(measure)) {
        put(settings, factor, power * spreads.sigma(factor), today);
      }
    }
    return settings;
  }

  private static void put(
      Map<Setting, Double> settings, Factor factor, double sigma, Catalogue today) {
    double value = Math.round(100 * Spreads.limit(sigma)) / 100.0;
    if (value != today.number(factor.setting())) {
      settings.put(factor.setting(), value);
    }
  }
}
