package org.wetmil.workbook.fill.page;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Setting;
import org.wetmil.estimate.job.FilledJob;
import org.wetmil.estimate.job.JobFigure;
import org.wetmil.estimate.plan.AirAtWork;
import org.wetmil.estimate.plan.Plan;
import org.wetmil.estimate.plan.RoomPlan;
import org.wetmil.formula.Expr;
import org.wetmil.quantity.Quantity;
import org.wetmil.quantity.UnitSystem;
import org.wetmil.workbook.fill.beside.BasisBook;
import org.wetmil.workbook.look.Canvas;
import org.wetmil.workbook.look.Look;
import org.wetmil.workbook.look.Pages;
import org.wetmil.workbook.look.Plain;

/**
 * The page of the plan: which rooms on which working days, how long coats dry, and whether the air
 * allows it. Days are choices and stay until the bid is filled again.
 */
final class PlanPage {
  private static final int FLOOR = 0;
  private static final int ROOM = 1;
  private static final int HOURS = 2;
  private static final int FIRST = 3;
  private static final int LAST = 4;
  private static final int DAYS = 5;
  private static final int[] WIDTHS = {14, 32, 13, 10, 10, 10};
  private static final String CHANGED =
      "The bid was changed after this plan was made: fill it again.";

  private static final int MOST_BARS = 40;
  private static final int MOST_ROOMS = 1_000;

  /** More would be too small to read; the notes then begin a page. */
  private static final int MOST_ROWS_ON_A_PAGE = 85;

  private final Canvas page;
  private final Look look;
  private final FilledJob job;
  private final BasisBook basis;
  private final Catalogue catalogue;
  private final UnitSystem system;
  private int next = 3;

  PlanPage(XSSFSheet sheet, Look look, FilledJob job, BasisBook basis) {
    this.page = new Canvas(sheet);
    this.look = look;
    this.job = job;
    this.basis = basis;
    this.catalogue = job.filled().bid().catalogue();
    this.system = job.filled().bid().system();
  }

  /**
   * @param summary where the page Summary has its figures
   */
  void write(Plan plan, SummarySheet.Places summary) {
    Pages.widths(page.sheet(), WIDTHS);
    page.text(0, FLOOR, "Plan", look.title());
    page.text(
        1,
        FLOOR,
        "%s: working days of %s h, crew of %s"
            .formatted(
                job.filled().bid().job(),
                Plain.number(catalogue.number(Setting.HOURS_A_DAY)),
                Plain.number(catalogue.number(Setting.CREW))),
        look.text(false));
    page.formula(2, FLOOR, summary.changed().formula(CHANGED), "", look.strong());
    days(plan, summary.hours());
    int chart = next;
    int bars = Math.min(MOST_BARS, plan.rooms().size());
    int chartRows = bars == 0 ? 0 : bars + 5;
    next += chartRows + 1;
    int first = rooms(plan);
    if (bars > 0) {
      String title = title(plan);
      page.text(chart, FLOOR, title, look.text(false));
      new SummaryCharts(page.sheet())
          .spans(
              new int[] {chart, FLOOR, chart + chartRows, DAYS + 1},
              new String[] {page.from(chart, FLOOR), title},
              shown(plan, first, ROOM, PlanPage::name),
              shown(plan, first, FIRST, room -> (double) room.firstDay()),
              shown(plan, first, DAYS, room -> (double) room.days()),
              1,
              plan.days() + 1);
    }
    drying(plan);
    air();
    int notes = next;
    notes();
    Pages.upright(page.sheet(), WIDTHS.length, next);
    if (next <= MOST_ROWS_ON_A_PAGE) {
      page.sheet().getPrintSetup().setFitHeight((short) 1);
    } else {
      page.sheet().setRowBreak(notes - 1);
    }
    Pages.narrowMargins(page.sheet());
  }

  private static String name(RoomPlan room) {
    return room.room().isEmpty() ? "no room named" : room.room();
  }

  /** Cells of the rooms that have bars, from the row of the first. */
  private static <T> SummaryCharts.Shown<T> shown(
      Plan plan, int first, int column, Function<RoomPlan, T> value) {
    List<T> now = plan.rooms().stream().limit(MOST_BARS).map(value).toList();
    return new SummaryCharts.Shown<>(
        new CellRangeAddress(first, first + now.size() - 1, column, column), now);
  }

  private String title(Plan plan) {
    int work = job.hours().days();
    int more = plan.days() - work;
    String whole = plan.days() == 1 ? "The job takes 1 day" : "The job takes %d days";
    return String.format(Locale.ROOT, whole, plan.days())
        + (more > 0
            ? String.format(Locale.ROOT, ", %d more than the hours alone", more)
            : ": drying adds none");
  }

  private void days(Plan plan, Map<JobFigure, String> hours) {
    heading("Days", "", "", "", "", "");
    fact("Days of work by the hours alone", hours.get(JobFigure.DAYS), job.hours().days(), 0);
    fact("Days until the last coat is laid", null, plan.days(), 0);
    fact("Working hours in which nothing is dry enough", null, plan.waitingHours(), 1);
    fact("Changes of colour or product in this order of work", null, plan.coatingChanges(), 0);
    fact(
        "Changes that the hours count",
        hours.get(JobFigure.COATING_CHANGES),
        job.hours().number(JobFigure.COATING_CHANGES),
        0);
    next++;
  }

  private void fact(String label, String formula, double value, int decimals) {
    page.text(next, FLOOR, label, look.text(false));
    page.formula(next++, DAYS, formula, value, look.strongNumber(decimals));
  }

  private void heading(String... texts) {
    for (int i = 0; i < texts.length; i++) {
      page.text(next, i, texts[i], look.band(i >= HOURS));
    }
    next++;
  }

  private int rooms(Plan plan) {
    heading("Floor", "Room", "Person-hours", "First day", "Last day", "Days");
    int first = next;
    for (RoomPlan room : plan.rooms().subList(0, Math.min(MOST_ROOMS, plan.rooms().size()))) {
      page.text(next, FLOOR, room.floor(), look.text(false));
      page.text(next, ROOM, name(room), look.text(false));
      page.number(next, HOURS, room.personHours(), look.number(1));
      page.number(next, FIRST, room.firstDay(), look.number(0));
      page.number(next, LAST, room.lastDay(), look.number(0));
      page.number(next++, DAYS, room.days(), look.strongNumber(0));
    }
    if (plan.rooms().size() > MOST_ROOMS) {
      page.text(next++, FLOOR, plan.rooms().size() - MOST_ROOMS + " more rooms", look.text(false));
    }
    next++;
    return first;
  }

  private void drying(Plan plan) {
    heading("Time to the next coat", "", "h", "Rests on", "", "");
    for (Plan.Recoat recoat : plan.coatings()) {
      page.text(next, FLOOR, recoat.coating(), look.text(false));
      page.number(next, HOURS, recoat.hours(), look.number(1));
      page.text(next++, FIRST, recoat.yours() ? "yours" : "class: data sheet wins", look.aside());
    }
    next++;
  }

  private void air() {
    heading("Dew point", "", Quantity.TEMPERATURE.unit(system).symbol(), "", "", "");
    Optional<AirAtWork> air = AirAtWork.of(catalogue, system);
    if (air.isEmpty()) {
      sentence(
          "Not judged: state Air temperature, Surface temperature and Humidity on a Settings"
              + " sheet.");
    } else {
      temperature("Dew point of the air", air.get().dewPoint());
      int above = next;
      temperature("Surface above the dew point", air.get().above());
      temperature("Wanted at least (setting Dew point margin)", air.get().wanted());
      page.text(next, FLOOR, "Enough", look.strong());
      page.formula(
          next++,
          HOURS,
          "IF(%s>=%s,\"yes\",\"no: wait, or warm it\")"
              .formatted(Canvas.at(above, HOURS), Canvas.at(above + 1, HOURS)),
          air.get().isEnough() ? "yes" : "no: wait, or warm it",
          look.strong());
    }
    next++;
  }

  private void temperature(String label, Expr formula) {
    page.text(next, FLOOR, label, look.text(false));
    page.formula(next++, HOURS, formula.print(basis::reference), formula.value(), look.number(1));
  }

  private void notes() {
    page.text(next, FLOOR, "What this rests on", look.block()).across(next, 0, DAYS, look.block());
    next++;
    for (String text :
        List.of(
            "A bar runs from the morning of a room's first day to the evening of its last.",
            "The crew works together. Each room is masked and prepared as a whole, then come its"
                + " coats, primer and filler first. Of what is dry the crew does first what is in"
                + " the pump, then what most work is ready for; while all of it dries it begins the"
                + " next room.",
            "Drying goes on at night and is slower in cold or damp air: the data sheet says for"
                + " which. Days off, other trades and deliveries are not in this plan, and set-up"
                + " and clean-up of each day are outside the hours a day, as in the estimate.",
            "The hours count each colour once through the job. Where this order of work changes more"
                + " often, its changes are in the days here and not in the hours or the price.",
            "Many specifications want the surface 5 °F above the dew point and rising, measured"
                + " about every four hours near the work (MIL-HDBK-1110, UFC 3-190-06, 9.6.6);"
                + " others want more. The data sheet wins.")) {
      sentence(text);
    }
  }

  private void sentence(String text) {
    page.paragraph(next++, text, WIDTHS, look.text(true));
  }
}
