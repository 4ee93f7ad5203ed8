package org.wetmil.estimate;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.IntPredicate;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Coating;
import org.wetmil.catalogue.Setting;
import org.wetmil.catalogue.Sprayer;
import org.wetmil.catalogue.Surface;
import org.wetmil.catalogue.TipOnHand;
import org.wetmil.trade.Film;
import org.wetmil.trade.TipCode;

/**
 * Chooses the tip of a line: of those at hand, the one that lays the target film at a comfortable
 * pace, with the widest fan that the work takes.
 */
final class TipChooser {
  /** A film this close beyond the range still counts as inside (mil). */
  private static final double SPARE_MIL = 1e-9;

  /** Scores are counted in steps of half a percent, so that no last bit of a double decides. */
  private static final double SCORE_STEP = 0.005;

  private static final Comparator<Candidate> BY_FILM =
      Comparator.comparing((Candidate c) -> !c.setup().inside())
          .thenComparingLong(Candidate::filmScore);

  private static final Comparator<Candidate> BEST =
      BY_FILM
          .thenComparing(Comparator.comparingInt((Candidate c) -> c.digit()).reversed())
          .thenComparingLong(Candidate::speedScore)
          .thenComparingInt(Candidate::orifice);

  private final Catalogue catalogue;
  private final Work work;
  private final Stroke stroke;
  private final GunFlow flow;
  private final double targetMil;
  private final double distanceIn;

  TipChooser(Catalogue catalogue, Work work, Stroke stroke, GunFlow flow, double targetMil) {
    this.catalogue = catalogue;
    this.work = work;
    this.stroke = stroke;
    this.flow = flow;
    this.targetMil = targetMil;
    this.distanceIn = catalogue.number(Setting.DISTANCE);
  }

  private record Candidate(Setup setup, long filmScore, long speedScore) {
    int digit() {
      return setup.tip().fanDigit();
    }

    int orifice() {
      return setup.tip().orificeThou();
    }
  }

  /** The recommended setup; one without a tip when none serves. */
  Setup choose() {
    Coating coating = work.coating();
    int from = from(coating, work.surface());
    Candidate usual = best(thou -> thou >= from && thou <= coating.orificeToThou());
    if (usual != null && !isOffTarget(usual.setup())) {
      return usual.setup();
    }
    Candidate finer = best(thou -> thou >= coating.leastOrificeThou() && thou < from);
    if (finer != null && (usual == null || BY_FILM.compare(finer, usual) < 0)) {
      return finer.setup();
    }
    return usual == null ? none() : usual.setup();
  }

  /** A tip that was planned, judged by the same figures. */
  Setup judge(TipCode tip) {
    return candidate(tip).setup();
  }

  /** Least orifice usually taken for a coating on a surface. */
  static int from(Coating coating, Surface surface) {
    return surface.joinery() ? coating.joineryFromThou() : coating.orificeFromThou();
  }

  /** Whether the pump keeps up with all guns at this tip, with the reserve that is wanted. */
  static boolean isWithinPump(Catalogue catalogue, Sprayer sprayer, double flowGpm) {
    if (sprayer == null || Double.isNaN(sprayer.greatestFlowGpm())) {
      return true;
    }
    double wanted = guns(catalogue, sprayer) * flowGpm * catalogue.number(Setting.PUMP_RESERVE);
    return wanted <= sprayer.greatestFlowGpm();
  }

  static double guns(Catalogue catalogue, Sprayer sprayer) {
    return sprayer == null || Double.isNaN(sprayer.guns())
        ? catalogue.number(Setting.GUNS)
        : sprayer.guns();
  }

  private boolean isOffTarget(Setup setup) {
    double off = Math.abs(Math.log(setup.wetMil() / targetMil));
    return !setup.inside() || off > catalogue.number(Setting.FILM_TOLERANCE);
  }

  /** Plain loops here and in the fans: this runs through all tips for every line. */
  private Candidate best(IntPredicate orifices) {
    List<TipCode> tips = new ArrayList<>();
    for (TipCode tip : available(catalogue, work)) {
      if (orifices.test(tip.orificeThou()) && isDriven(tip.orificeThou())) {
        tips.add(tip);
      }
    }
    Candidate best = null;
    for (TipCode tip : fitting(tips)) {
      Candidate candidate = candidate(tip);
      if (best == null || BEST.compare(candidate, best) < 0) {
        best = candidate;
      }
    }
    return best;
  }

  /** Tips on hand that a guard takes, or those in stock where none are listed. */
  static List<TipCode> available(Catalogue catalogue, Work work) {
    List<TipOnHand> onHand = catalogue.tipsOnHand();
    if (onHand.isEmpty()) {
      return catalogue.stockTips();
    }
    String sprayer = work.line().text(InputColumn.SPRAYER);
    return onHand.stream()
        .filter(tip -> !(tip.count() < 1))
        .filter(tip -> catalogue.isGuarded(tip.fit(), sprayer))
        .map(TipOnHand::tip)
        .distinct()
        .toList();
  }

  /** Whether the sprayer takes the orifice and its pump keeps up with it. */
  private boolean isDriven(int orificeThou) {
    Sprayer sprayer = work.sprayer();
    return sprayer == null
        || (!(orificeThou > sprayer.greatestOrificeThou())
            && isWithinPump(catalogue, sprayer, flow.at(orificeThou).flowGpm())
            && flow.at(orificeThou).flowGpm() > 0);
  }

  /** The tips whose fan suits the work. */
  private List<TipCode> fitting(List<TipCode> tips) {
    return stroke.narrow() ? narrowFan(tips) : broadFans(tips);
  }

  /** Fans no wider than the work and than the surface takes; none that narrow: the narrowest. */
  private List<TipCode> broadFans(List<TipCode> tips) {
    List<TipCode> fitting = new ArrayList<>();
    int narrowest = Integer.MAX_VALUE;
    for (TipCode tip : tips) {
      narrowest = Math.min(narrowest, tip.fanDigit());
      if (tip.fanDigit() <= work.surface().widestFanDigit()
          && stroke.isInside(tip.fanIn(distanceIn))) {
        fitting.add(tip);
      }
    }
    return fitting.isEmpty() ? ofFan(narrowest, tips) : fitting;
  }

  /** The narrowest fan that still covers the work; none that wide: the widest. */
  private List<TipCode> narrowFan(List<TipCode> tips) {
    double share = catalogue.number(Setting.NARROW_FIT);
    int covering = Integer.MAX_VALUE;
    int widest = 0;
    for (TipCode tip : tips) {
      widest = Math.max(widest, tip.fanDigit());
      if (stroke.isCovered(tip.fanIn(distanceIn), share)) {
        covering = Math.min(covering, tip.fanDigit());
      }
    }
    return ofFan(covering == Integer.MAX_VALUE ? widest : covering, tips);
  }

  private static List<TipCode> ofFan(int digit, List<TipCode> tips) {
    return tips.stream().filter(tip -> tip.fanDigit() == digit).toList();
  }

  private Candidate candidate(TipCode tip) {
    GunFlow.At gun = flow.at(tip.orificeThou());
    double fanIn = tip.fanIn(distanceIn);
    double stick = work.surface().stick();
    if (gun.flowGpm() <= 0) {
      Setup dry = new Setup(tip, fanIn, gun, stroke.slowestInPerS(), 0, false, isBelow(tip));
      return new Candidate(dry, Long.MAX_VALUE, Long.MAX_VALUE);
    }
    double speed =
        Film.heldInPerS(
            Film.speedInPerS(gun.flowGpm(), stick, targetMil, fanIn, stroke.overlap()),
            stroke.slowestInPerS(),
            stroke.fastestInPerS());
    double wetMil = Film.laidWetMil(gun.flowGpm(), stick, speed, fanIn, stroke.overlap());
    Setup setup = new Setup(tip, fanIn, gun, speed, wetMil, isInside(wetMil), isBelow(tip));
    double offFilm = Math.abs(Math.log(wetMil / targetMil));
    double offSpeed = Math.abs(Math.log(speed / stroke.easyInPerS()));
    long filmScore =
        offFilm <= catalogue.number(Setting.FINE_STEP) ? 0 : Math.round(offFilm / SCORE_STEP);
    return new Candidate(setup, filmScore, Math.round(offSpeed / SCORE_STEP));
  }

  private boolean isBelow(TipCode tip) {
    return tip.orificeThou() < from(work.coating(), work.surface());
  }

  private boolean isInside(double wetMil) {
    return wetMil >= work.coating().wetMinMil() - SPARE_MIL
        && wetMil <= work.coating().wetMaxMil() + SPARE_MIL;
  }

  /** What is assumed when no tip serves: the target film, the easy pace, the widest fan allowed. */
  private Setup none() {
    double fanIn =
        fitting(catalogue.stockTips()).stream()
            .mapToDouble(tip -> tip.fanIn(distanceIn))
            .max()
            .orElseThrow();
    double speed = stroke.easyInPerS();
    double unitFilmMil = Film.laidWetMil(1, work.surface().stick(), speed, fanIn, stroke.overlap());
    GunFlow.At wanted =
        new GunFlow.At(flow.wantedPsi(), Double.NaN, targetMil / unitFilmMil, 0, true, null);
    return new Setup(null, fanIn, wanted, speed, targetMil, isInside(targetMil), false);
  }
}
