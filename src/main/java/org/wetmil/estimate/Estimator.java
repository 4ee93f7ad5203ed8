package org.wetmil.estimate;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Coating;
import org.wetmil.catalogue.Setting;
import org.wetmil.catalogue.Sprayer;

/** Fills bid lines: area, coats, tip, pace, film, paint and hours, in that order. */
public final class Estimator {
  private final Bid bid;
  private final Catalogue catalogue;
  private final boolean followsPlanned;
  private final List<List<Work>> works;
  private final Openings openings;
  private final Map<FlowKey, GunFlow> flows = new ConcurrentHashMap<>();

  /** What the flow at the gun depends on besides the orifice. */
  private record FlowKey(
      String coating, double thinner, double setPsi, String sprayer, boolean atGun) {}

  private Estimator(Bid bid) {
    this.bid = bid;
    this.catalogue = bid.catalogue();
    this.followsPlanned = catalogue.text(Setting.FIGURES_FOLLOW).equals("Planned");
    this.works =
        bid.sheets().stream()
            .map(sheet -> sheet.lines().stream().map(line -> Work.of(line, catalogue)).toList())
            .toList();
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

  private FilledBid.FilledSheet fill(BidSheet sheet, List<Work> lines) {
    Rooms rooms = new Rooms(lines);
    return new FilledBid.FilledSheet(sheet, lines.stream().map(work -> fill(work, rooms)).toList());
  }

  private FilledLine fill(Work work, Rooms rooms) {
    Terms terms = new Terms(work.line(), catalogue, bid.system());
    Figures figures = new Figures(catalogue, work, terms);
    Area area = work.surface() == null ? null : Area.of(work, terms, catalogue, openings);
    if (area == null || work.coating() == null) {
      return new FilledLine(
          work, area, null, null, Double.NaN, null, null, null, figures.incomplete(area));
    }
    Stroke stroke = Stroke.of(work.surface(), area.narrowestIn(), catalogue);
    CoatPlan coats = CoatPlan.of(work, catalogue);
    double setPsi = pressureToSet(work);
    GunFlow flow =
        flows.computeIfAbsent(
            new FlowKey(
                work.coating().name(),
                work.thinnerShare(),
                setPsi,
                work.line().text(InputColumn.SPRAYER),
                work.line().pressureAtGun()),
            key -> new GunFlow(catalogue, work, setPsi));
    TipChooser chooser = new TipChooser(catalogue, work, stroke, flow, coats.targetMil());
    Setup recommended = chooser.choose();
    Setup planned = work.planned() == null ? null : chooser.judge(work.planned());
    boolean plannedWorks = planned != null && planned.gun().flowGpm() > 0;
    Setup followed = followsPlanned && plannedWorks ? planned : recommended;
    return new FilledLine(
        work,
        area,
        stroke,
        coats,
        setPsi,
        recommended,
        planned,
        followed,
        figures.of(area, stroke, coats, flow, setPsi, recommended, followed, rooms));
  }

  /**
   * The line's pressure where it is inside what airless spraying takes, else the coating's usual;
   * never over the sprayer's rating.
   */
  private double pressureToSet(Work work) {
    Coating coating = work.coating();
    double stated = work.line().number(InputColumn.PRESSURE);
    boolean usable =
        stated >= catalogue.number(Setting.LEAST_PRESSURE)
            && stated <= catalogue.number(Setting.GREATEST_PRESSURE);
    double wanted = usable ? stated : coating.usualPsi();
    Sprayer sprayer = work.sprayer();
    boolean rated = sprayer != null && !Double.isNaN(sprayer.greatestPsi());
    return rated ? Math.min(wanted, sprayer.greatestPsi()) : wanted;
  }
}
