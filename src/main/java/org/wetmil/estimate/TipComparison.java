package org.wetmil.estimate;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.trade.TipCode;

/**
 * How the tips that somebody may ask for came out for one line, by the very choice that filled it.
 *
 * @param tips first the one recommended, then those whose film and pace were compared, best first,
 *     then the others
 */
public record TipComparison(List<Tip> tips) {
  public TipComparison {
    tips = List.copyOf(tips);
  }

  /**
   * One tip, judged by the figures of the line.
   *
   * @param setup what it lays at which pace
   * @param lost why it was not taken; empty for the one recommended
   */
  public record Tip(Setup setup, Optional<WhyNot> lost) {
    public TipCode code() {
      return setup.tip();
    }
  }

  /** The comparison of a line whose coating and surface are known. */
  public static TipComparison of(Catalogue catalogue, FilledLine filled) {
    Work work = filled.work();
    GunFlow flow = new GunFlow(catalogue, work, Pressure.of(work, catalogue));
    TipChooser chooser =
        new TipChooser(catalogue, work, filled.stroke(), flow, filled.coats().targetMil());
    Map<TipCode, WhyNot> lost = new LinkedHashMap<>();
    Setup chosen = chooser.choose((tip, why) -> put(lost, tip, why));
    TipChooser.absent(catalogue, work).forEach((tip, why) -> put(lost, tip, why));
    List<Tip> tips = new ArrayList<>();
    if (chosen.isTip()) {
      tips.add(new Tip(chosen, Optional.empty()));
    }
    Map<WhyNot, List<TipCode>> byReason = new EnumMap<>(WhyNot.class);
    lost.forEach((tip, why) -> byReason.computeIfAbsent(why, w -> new ArrayList<>()).add(tip));
    List<TipCode> compared = new ArrayList<>();
    List<TipCode> others = new ArrayList<>();
    byReason.forEach((why, codes) -> (why.isCompared() ? compared : others).addAll(codes));
    chooser.sort(compared);
    others.sort(
        Comparator.comparing((TipCode tip) -> lost.get(tip))
            .thenComparingInt(TipCode::fanDigit)
            .thenComparingInt(TipCode::orificeThou));
    compared.addAll(others);
    compared.forEach(tip -> tips.add(new Tip(chooser.judge(tip), Optional.of(lost.get(tip)))));
    return new TipComparison(tips);
  }

  private static void put(Map<TipCode, WhyNot> lost, TipCode tip, WhyNot why) {
    WhyNot before = lost.put(tip, why);
    if (before != null) {
      throw new IllegalStateException(tip + " lost twice: " + before + ", " + why);
    }
  }
}
