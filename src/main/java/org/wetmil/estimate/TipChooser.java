package org.wetmil.estimate;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Coating;
import org.wetmil.catalogue.Setting;
import org.wetmil.catalogue.Sprayer;
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

  private static final List<Stage> BY_FILM =
      List.of(
          new Stage(WhyNot.FILM_OUTSIDE, Comparator.comparing(c -> !c.setup().inside())),
          new Stage(WhyNot.FILM_FURTHER, Comparator.comparingLong(Candidate::filmScore)));

  private static final List<Stage> BEST =
      List.of(
          BY_FILM.get(0),
          BY_FILM.get(1),
          new Stage(WhyNot.NARROWER_FAN, Comparator.comparingInt(c -> -c.digit())),
          new Stage(WhyNot.PACE_FURTHER, Comparator.comparingLong(Candidate::speedScore)),
          new Stage(WhyNot.LARGER_ORIFICE, Comparator.comparingInt(Candidate::orifice)));

  /** Nobody wants to know why the others were not taken. */
  private static final Losers UNTOLD = (tip, why) -> {};

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

  /** Hears of each tip that is not taken, with the reason. */
  interface Losers {
    void lost(TipCode tip, WhyNot why);
  }

  /**
   * One look at two tips; the next decides where both are alike.
   *
   * @param why what is said of the one that comes after
   */
  private record Stage(WhyNot why, Comparator<Candidate> order) {}

  /**
   * The tips of one range of orifices.
   *
   * @param best null when none serves
   * @param all those whose film and pace were compared
   */
  private record Field(Candidate best, List<Candidate> all) {}

  /** The recommended setup; one without a tip when none serves. */
  Setup choose() {
    return choose(UNTOLD);
  }

  /** The same, with a reason for each tip at hand that is not taken. */
  Setup choose(Losers losers) {
    Coating coating = work.coating();
    int from = coating.usualFromThou(work.surface());
    List<TipCode> usualTips = new ArrayList<>();
    List<TipCode> finerTips = new ArrayList<>();
    for (TipCode tip : available(catalogue, work)) {
      int thou = tip.orificeThou();
      if (thou >= from && thou <= coating.orificeToThou()) {
        usualTips.add(tip);
      } else if (thou < from && thou >= coating.leastOrificeThou()) {
        finerTips.add(tip);
      } else {
        losers.lost(tip, thou < from ? WhyNot.BELOW_LEAST : WhyNot.ABOVE_GREATEST);
      }
    }
    Field usual = field(usualTips, losers);
    if (usual.best() != null && !isOffTarget(usual.best().setup())) {
      finerTips.forEach(tip -> losers.lost(tip, WhyNot.FINER_NOT_NEEDED));
      return won(usual.best(), usual.all(), losers);
    }
    Field finer = field(finerTips, losers);
    boolean nearer =
        finer.best() != null
            && (usual.best() == null || compare(BY_FILM, finer.best(), usual.best()) < 0);
    if (nearer) {
      won(finer.best(), usual.all(), losers);
      return won(finer.best(), finer.all(), losers);
    }
    finer.all().forEach(each -> losers.lost(each.setup().tip(), WhyNot.FINER_NO_NEARER));
    return usual.best() == null ? none() : won(usual.best(), usual.all(), losers);
  }

  private static Setup won(Candidate best, List<Candidate> all, Losers losers) {
    if (losers != UNTOLD) {
      for (Candidate each : all) {
        if (each != best) {
          losers.lost(each.setup().tip(), why(each, best));
        }
      }
    }
    return best.setup();
  }

  private static int compare(List<Stage> stages, Candidate one, Candidate other) {
    for (Stage stage : stages) {
      int order = stage.order().compare(one, other);
      if (order != 0) {
        return order;
      }
    }
    return 0;
  }

  /** What decides against one that comes after the best. */
  private static WhyNot why(Candidate other, Candidate best) {
    for (Stage stage : BEST) {
      if (stage.order().compare(other, best) != 0) {
        return stage.why();
      }
    }
    throw new IllegalStateException("two tips are one: " + other.setup().tip());
  }

  /** A tip that was planned, judged by the same figures. */
  Setup judge(TipCode tip) {
    return candidate(tip).setup();
  }

  /** Sorts tips as the choice compares them, best first. */
  void sort(List<TipCode> tips) {
    Map<TipCode, Candidate> candidates = new HashMap<>();
    tips.forEach(tip -> candidates.put(tip, candidate(tip)));
    tips.sort((one, other) -> compare(BEST, candidates.get(one), candidates.get(other)));
  }

  private boolean isOffTarget(Setup setup) {
    double off = Math.abs(Math.log(setup.wetMil() / targetMil));
    return !setup.inside() || off > catalogue.number(Setting.FILM_TOLERANCE);
  }

  /** Plain loops here and in the fans: this runs through all tips for every line. */
  private Field field(List<TipCode> tips, Losers losers) {
    List<TipCode> driven = new ArrayList<>();
    for (TipCode tip : tips) {
      WhyNot why = undriven(tip.orificeThou());
      if (why == null) {
        driven.add(tip);
      } else {
        losers.lost(tip, why);
      }
    }
    Candidate best = null;
    List<Candidate> all = new ArrayList<>();
    for (TipCode tip : fitting(driven, losers)) {
      Candidate candidate = candidate(tip);
      all.add(candidate);
      if (best == null || compare(BEST, candidate, best) < 0) {
        best = candidate;
      }
    }
    return new Field(best, all);
  }

  /** Tips on hand that a guard takes, or those in stock where none are listed. */
  static List<TipCode> available(Catalogue catalogue, Work work) {
    List<TipOnHand> onHand = catalogue.tipsOnHand();
    if (onHand.isEmpty()) {
      return catalogue.stockTips();
    }
    return onHand.stream()
        .filter(tip -> absent(catalogue, work, tip) == null)
        .map(TipOnHand::tip)
        .distinct()
        .toList();
  }

  /** Why a tip that is listed as on hand cannot be taken; null when it can. */
  private static WhyNot absent(Catalogue catalogue, Work work, TipOnHand tip) {
    if (tip.count() < 1) {
      return WhyNot.NOT_AT_HAND;
    }
    String sprayer = work.line().text(InputColumn.SPRAYER);
    return catalogue.isGuarded(tip.fit(), sprayer) ? null : WhyNot.NO_GUARD;
  }

  /** Every tip that somebody may ask for and that is not at hand. */
  static Map<TipCode, WhyNot> absent(Catalogue catalogue, Work work) {
    Map<TipCode, WhyNot> absent = new LinkedHashMap<>();
    for (TipOnHand tip : catalogue.tipsOnHand()) {
      WhyNot why = absent(catalogue, work, tip);
      if (why != null) {
        absent.merge(tip.tip(), why, (one, other) -> one == other ? one : WhyNot.NO_GUARD);
      }
    }
    catalogue.stockTips().forEach(tip -> absent.putIfAbsent(tip, WhyNot.NOT_AT_HAND));
    if (work.planned() != null) {
      absent.putIfAbsent(work.planned(), WhyNot.NOT_AT_HAND);
    }
    available(catalogue, work).forEach(absent::remove);
    return absent;
  }

  /** Why the sprayer cannot drive an orifice, or its pump does not keep up; null when it does. */
  private WhyNot undriven(int orificeThou) {
    Sprayer sprayer = work.sprayer();
    if (sprayer == null) {
      return null;
    }
    if (orificeThou > sprayer.greatestOrificeThou()) {
      return WhyNot.ABOVE_SPRAYER;
    }
    double flowGpm = flow.at(orificeThou).flowGpm();
    double guns = sprayer.gunsOr(catalogue.number(Setting.GUNS));
    if (guns * flowGpm * catalogue.number(Setting.PUMP_RESERVE) > sprayer.greatestFlowGpm()) {
      return WhyNot.PAST_PUMP;
    }
    return flowGpm > 0 ? null : WhyNot.NO_FLOW;
  }

  /** The tips whose fan suits the work. */
  private List<TipCode> fitting(List<TipCode> tips, Losers losers) {
    return stroke.narrow() ? narrowFan(tips, losers) : broadFans(tips, losers);
  }

  /** Fans no wider than the work and than the surface takes; none that narrow: the narrowest. */
  private List<TipCode> broadFans(List<TipCode> tips, Losers losers) {
    List<TipCode> fitting = new ArrayList<>();
    int narrowest = Integer.MAX_VALUE;
    for (TipCode tip : tips) {
      narrowest = Math.min(narrowest, tip.fanDigit());
      if (tooWide(tip) == null) {
        fitting.add(tip);
      }
    }
    if (fitting.isEmpty()) {
      return ofFan(narrowest, tips, (tip, wider) -> losers.lost(tip, WhyNot.NOT_NARROWEST));
    }
    if (losers != UNTOLD) {
      tips.stream()
          .filter(tip -> !fitting.contains(tip))
          .forEach(tip -> losers.lost(tip, tooWide(tip)));
    }
    return fitting;
  }

  private WhyNot tooWide(TipCode tip) {
    if (tip.fanDigit() > work.surface().widestFanDigit()) {
      return WhyNot.WIDER_THAN_SUITS;
    }
    return stroke.isInside(tip.fanIn(distanceIn)) ? null : WhyNot.WIDER_THAN_WORK;
  }

  /** The narrowest fan that still covers the work; none that wide: the widest. */
  private List<TipCode> narrowFan(List<TipCode> tips, Losers losers) {
    double share = catalogue.number(Setting.NARROW_FIT);
    int covering = Integer.MAX_VALUE;
    int widest = 0;
    for (TipCode tip : tips) {
      widest = Math.max(widest, tip.fanDigit());
      if (stroke.isCovered(tip.fanIn(distanceIn), share)) {
        covering = Math.min(covering, tip.fanDigit());
      }
    }
    if (covering == Integer.MAX_VALUE) {
      return ofFan(widest, tips, (tip, wider) -> losers.lost(tip, WhyNot.NOT_WIDEST));
    }
    return ofFan(
        covering,
        tips,
        (tip, wider) -> losers.lost(tip, wider ? WhyNot.WIDER_THAN_NEEDED : WhyNot.DOES_NOT_COVER));
  }

  private static List<TipCode> ofFan(
      int digit, List<TipCode> tips, BiConsumer<TipCode, Boolean> widerOrNot) {
    List<TipCode> same = new ArrayList<>();
    for (TipCode tip : tips) {
      if (tip.fanDigit() == digit) {
        same.add(tip);
      } else {
        widerOrNot.accept(tip, tip.fanDigit() > digit);
      }
    }
    return same;
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
    return tip.orificeThou() < work.coating().usualFromThou(work.surface());
  }

  private boolean isInside(double wetMil) {
    return wetMil >= work.coating().wetMinMil() - SPARE_MIL
        && wetMil <= work.coating().wetMaxMil() + SPARE_MIL;
  }

  /** What is assumed when no tip serves: the target film, the easy pace, the widest fan allowed. */
  private Setup none() {
    double fanIn =
        fitting(catalogue.stockTips(), UNTOLD).stream()
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
