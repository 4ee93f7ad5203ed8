package org.wetmil.workbook.fill.page;

import java.util.List;
import java.util.Optional;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.wetmil.catalogue.Setting;
import org.wetmil.estimate.FilledBid;
import org.wetmil.estimate.FilledLine;
import org.wetmil.estimate.InputColumn;
import org.wetmil.estimate.limits.FilmArea;
import org.wetmil.estimate.limits.FilmSpot;
import org.wetmil.estimate.limits.OldPaint;
import org.wetmil.estimate.limits.VocUse;
import org.wetmil.quantity.Quantity;
import org.wetmil.quantity.UnitSystem;
import org.wetmil.trade.FilmAcceptance;
import org.wetmil.workbook.look.Canvas;
import org.wetmil.workbook.look.Look;
import org.wetmil.workbook.look.Pages;
import org.wetmil.workbook.look.Plain;

/**
 * The page of what the job is held to: films read with a gauge, solvents by category, old paint.
 * Figures for whoever is responsible, never a legal conclusion.
 */
final class LimitsPage {
  private static final int[] WIDTHS = {26, 28, 10, 14, 15, 15, 15, 15, 30};
  private static final int LAST = WIDTHS.length - 1;

  private final Canvas page;
  private final Look look;
  private final FilledBid filled;
  private final UnitSystem system;
  private int next = 3;

  LimitsPage(XSSFSheet sheet, Look look, FilledBid filled) {
    this.page = new Canvas(sheet);
    this.look = look;
    this.filled = filled;
    this.system = filled.bid().system();
  }

  /** Whether anything is stated that the page would show. */
  static boolean isWanted(FilledBid filled) {
    return !FilmArea.all(filled).isEmpty()
        || !VocUse.all(filled).isEmpty()
        || !OldPaint.all(filled).isEmpty();
  }

  void write() {
    Pages.widths(page.sheet(), WIDTHS);
    page.text(0, 0, "Limits", look.title());
    page.text(
        1,
        0,
        filled.bid().job()
            + ": figures for whoever is responsible; nothing here is a legal conclusion",
        look.text(false));
    films(FilmArea.all(filled));
    solvents(VocUse.all(filled));
    oldPaint(OldPaint.all(filled));
    Pages.landscape(page.sheet(), WIDTHS.length, next);
  }

  /**
   * @param from the first column of figures
   * @param words the first column of words after them
   */
  private void heading(int from, int words, String... texts) {
    for (int i = 0; i < texts.length; i++) {
      boolean indented = i >= words && !texts[i].isEmpty();
      page.text(next, i, (indented ? "  " : "") + texts[i], look.band(i >= from && i < words));
    }
    page.across(next++, 0, LAST, look.band(false));
  }

  private void films(List<FilmArea> areas) {
    if (areas.isEmpty()) {
      return;
    }
    String unit = ", " + Quantity.FILM.unit(system).symbol();
    heading(
        2,
        7,
        "Films read: room",
        "Surface",
        "Spots",
        "Readings",
        "Least spot" + unit,
        "Most spot" + unit,
        "Average" + unit,
        "Accepted" + unit,
        "Against the specification");
    for (FilmArea area : areas) {
      page.text(next, 0, area.room(), look.text(true));
      page.text(next, 1, area.surface(), look.text(true));
      page.number(next, 2, area.spots().size(), look.number(0));
      page.number(next, 3, area.readings(), look.number(0));
      page.number(next, 4, shown(spot(area, true)), look.number(1));
      page.number(next, 5, shown(spot(area, false)), look.number(1));
      page.number(next, 6, shown(area.meanMil()), look.strongNumber(1));
      page.text(next, 7, accepted(area), look.apart(false));
      page.text(next++, 8, judged(area), look.apart(true));
    }
    sentence(
        "A single value is accepted from 80 to 120 % of it, a range as it stands; a spot may go to"
            + " 80 % of the least and 120 % of the most. These rules are a coating practice"
            + " standard's as quoted by others or from memory, not seen in the standard itself: the"
            + " contract and the standard that it names come first.");
    next++;
  }

  private static double spot(FilmArea area, boolean least) {
    var means = area.spots().stream().mapToDouble(FilmSpot::meanMil);
    return (least ? means.min() : means.max()).orElseThrow();
  }

  private double shown(double mil) {
    return Quantity.FILM.shown(mil, system);
  }

  private String accepted(FilmArea area) {
    return area.accepted()
        .map(a -> plain(shown(a.leastMil())) + " to " + plain(shown(a.mostMil())))
        .orElse("");
  }

  private static String plain(double value) {
    return Plain.number(Math.round(value * 100) / 100.0);
  }

  private static String judged(FilmArea area) {
    Optional<FilmAcceptance> accepted = area.accepted();
    if (accepted.isEmpty()) {
      return area.known() ? "no film is specified" : "no line of the bid is for it";
    }
    String average =
        accepted.get().isUnder(area.meanMil())
            ? "average under"
            : accepted.get().isOver(area.meanMil()) ? "average over" : "average inside";
    int outside = area.spotsOutside().size();
    return outside == 0
        ? average
        : average + ", " + outside + (outside == 1 ? " spot" : " spots") + " outside";
  }

  private void solvents(List<VocUse> uses) {
    if (uses.isEmpty()) {
      return;
    }
    heading(
        2,
        6,
        "Solvent (VOC): coating",
        "Category",
        "Thinner",
        "Supplied, g/L",
        "As sprayed, g/L",
        "Limit, g/L",
        "Counted",
        "Since",
        "Against the limit");
    for (VocUse use : uses) {
      page.text(next, 0, use.coating().name(), look.text(true));
      page.text(next, 1, use.category(), look.text(true));
      page.number(next, 2, use.thinnerShare(), look.percent());
      page.number(next, 3, use.suppliedGL(), look.number(0));
      page.number(next, 4, use.thinnedGL(), look.strongNumber(0));
      page.number(next, 5, use.limitGL(), look.number(0));
      if (use.limit() != null) {
        page.text(next, 6, use.limit().text("Counted"), look.apart(true));
        page.text(next, 7, use.limit().text("From"), look.apart(true));
      }
      page.text(next, 8, judged(use), look.apart(true));
      page.height(next++, 30);
    }
    sentence(
        "Limits by category of 40 CFR 59 subpart D and 2004/42/CE (Annex II A, phase II), or rows of"
            + " your own on a sheet VOC limits. Check your local rule, it may be stricter. Less"
            + " water: of coating without water and exempt solvents; ready to use: of the product"
            + " as applied, water included. Water as thinner changes the first not at all. Of"
            + " several categories that a product claims the lowest limit counts.");
    next++;
  }

  private static String judged(VocUse use) {
    if (use.limit() == null) {
      return "no limit of this name";
    }
    String rule = use.limit().text("Rule");
    String by = rule.isEmpty() ? "" : ", " + rule;
    return !use.isJudged()
        ? "not stated for the coating" + by
        : (use.isOver() ? "over" : "not over") + by;
  }

  private void oldPaint(List<OldPaint> places) {
    if (places.isEmpty()) {
      return;
    }
    String unit = ", " + Quantity.AREA.unit(system).symbol();
    heading(
        3,
        7,
        "Old paint: place",
        "Lines of the bid",
        "",
        "This job" + unit,
        "30 days" + unit,
        "Together" + unit,
        "Minor up to" + unit,
        "",
        "Against minor work");
    for (OldPaint place : places) {
      FilledLine first = place.first();
      String room = first.line().text(InputColumn.ROOM);
      page.text(next, 0, place.isOutside() ? "Outside" : room, look.text(true));
      page.text(
          next,
          1,
          String.join(
              ", ",
              place.lines().stream()
                  .map(line -> line.line().text(InputColumn.SURFACE))
                  .distinct()
                  .toList()),
          look.text(true));
      page.number(next, 3, area(place.ft2()), look.number(1));
      page.number(next, 4, area(place.earlierFt2()), look.sparse(1));
      page.number(next, 5, area(place.togetherFt2()), look.strongNumber(1));
      page.number(next, 6, area(place.limitFt2()), look.number(1));
      page.text(next++, 8, place.isOver() ? "over: have it tested" : "not over", look.apart(true));
    }
    sentence(
        "Built in %s. 40 CFR 745.83 calls work minor that disturbs no more than 6 ft² of old paint"
                .formatted(Plain.number(filled.bid().catalogue().number(Setting.YEAR_BUILT)))
            + " in a room or 20 ft² outside within 30 days, without prohibited practices; window"
            + " replacement and demolition are never minor, and a part that is taken out counts"
            + " whole. Areas here are those of lines whose condition asks for sanding or scraping"
            + " of old paint. A test for lead, and who is licensed, decide.");
    next++;
  }

  private double area(double ft2) {
    return Quantity.AREA.shown(ft2, system);
  }

  private void sentence(String text) {
    page.paragraph(next++, text, WIDTHS, look.text(true));
  }
}
