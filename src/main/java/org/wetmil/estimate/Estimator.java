package org.wetmil.estimate;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Setting;
import org.wetmil.estimate.likely.Ratios;
import org.wetmil.estimate.likely.Spreads;
import org.wetmil.quantity.UnitSystem;

/** Fills bid lines: area, coats, tip, pace, film, paint and hours, in that order. */
public final class Estimator {
  private final Catalogue catalogue;
  private final boolean followsPlanned;
  private final List<List<Work>> works;
  private final Openings openings;
  private final Ratios ratios;
  private final Map<UnitSystem, TableTerms> tables = new EnumMap<>(UnitSystem.class);
  private final Map<FlowKey, GunFlow> flows = new HashMap<>();
  private final Map<SetupKey, Setup> recommended = new HashMap<>();

  /** What the flow at the gun depends on besides the orifice. */
  private record FlowKey(String coating, double thinner, Pressure pressure, String sprayer) {}

  /**
   * What the recommended setup depends on; many lines of a bid are alike in it.
   *
   * @param guarded the sprayer as the line names it, known or not: guards on hand are listed for it
   */
  private record SetupKey(
      FlowKey flow, String guarded, String surface, Stroke stroke, double targetMil) {}

  /** A line on its way: what is wanted before its room can be judged. */
  private record Draft(Work work, Terms terms, Area area, Rooms.Room room) {}

  private Estimator(Bid bid) {
    this.catalogue = bid.catalogue();
    this.followsPlanned = catalogue.text(Setting.FIGURES_FOLLOW).equals("Planned");
    for (UnitSystem system : UnitSystem.values()) {
      tables.put(system, new TableTerms(catalogue, system, bid.system()));
    }
    this.works =
        bid.sheets().stream()
            .map(
                sheet ->
                    sheet.lines().stream()
                        .map(line -> Work.of(GreatestSizes.held(line, catalogue), catalogue))
                        .toList())
            .toList();
    this.ratios = Ratios.of(Spreads.of(catalogue));
    this.openings = new Openings(catalogue, works.stream().flatMap(List::stream).toList());
  }

  /** Fills every line of a bid. */
  public static FilledBid fill(Bid bid) {
    Estimator estimator = new Estimator(bid);
    List<FilledBid.FilledSheet> sheets = new ArrayList<>();
    for (int i = 0; i < bid.sheets().size(); i++) {
      sheets.add(estimator.fill(bid.sheets().get(i), estimator.works.get(i)));
    }
    return new FilledBid(bid, sheets);
  }

  /** Fills a line by itself. */
  static FilledLine fill(Catalogue catalogue, BidLine line) {
    BidSheet sheet = new BidSheet(line.sheet(), line.system(), true, Map.of(), List.of(line));
    Bid bid = new Bid("", line.system(), catalogue, List.of(sheet), List.of(), List.of());
    return fill(bid).sheets().get(0).lines().get(0);
  }

  private FilledBid.FilledSheet fill(BidSheet sheet, List<Work> lines) {
    Rooms rooms = new Rooms();
    List<Draft> drafts = lines.stream().map(work -> draft(work, rooms)).toList();
    return new FilledBid.FilledSheet(sheet, drafts.stream().map(this::fill).toList());
  }

  private Draft draft(Work work, Rooms rooms) {
    Terms terms = new Terms(work.line(), tables.get(work.line().system()));
    Area area = work.surface() == null ? null : Area.of(work, terms, catalogue, openings);
    boolean counts = area != null && area.isKnown() && work.coating() != null && work.isIncluded();
    return new Draft(work, terms, area, rooms.add(work, counts));
  }

  private FilledLine fill(Draft draft) {
    Work work = draft.work();
    Area area = draft.area();
    Figures figures = new Figures(catalogue, work, draft.terms(), ratios);
    if (area == null || work.coating() == null) {
      return new FilledLine(
          work, area, null, null, Double.NaN, null, null, null, figures.incomplete(area));
    }
    Stroke stroke = Stroke.of(work.surface(), area.narrowestIn(), catalogue);
    CoatPlan coats = CoatPlan.of(work, catalogue);
    FlowKey flowKey = flowKey(work);
    GunFlow flow =
        flows.computeIfAbsent(flowKey, key -> new GunFlow(catalogue, work, key.pressure()));
    TipChooser chooser = new TipChooser(catalogue, work, stroke, flow, coats.targetMil());
    Setup recommended =
        this.recommended.computeIfAbsent(
            new SetupKey(
                flowKey,
                work.line().text(InputColumn.SPRAYER),
                work.surface().name(),
                stroke,
                coats.targetMil()),
            key -> chooser.choose());
    Setup planned = work.planned() == null ? null : chooser.judge(work.planned());
    boolean plannedWorks = planned != null && planned.gun().flowGpm() > 0;
    Setup followed = followsPlanned && plannedWorks ? planned : recommended;
    return new FilledLine(
        work,
        area,
        stroke,
        coats,
        followed.gun().pumpPsi(),
        recommended,
        planned,
        followed,
        figures.of(area, stroke, coats, flow, recommended, followed, draft.room()));
  }

  private FlowKey flowKey(Work work) {
    String sprayer = work.sprayer() == null ? "" : work.sprayer().name();
    return new FlowKey(
        work.coating().name(), work.thinnerShare(), Pressure.of(work, catalogue), sprayer);
  }
}
