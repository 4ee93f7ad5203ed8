package org.wetmil.workbook.fill.page;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.wetmil.checks.Finding;
import org.wetmil.estimate.job.FilledJob;
import org.wetmil.estimate.plan.Plan;
import org.wetmil.estimate.plan.Planner;
import org.wetmil.quantity.UnitSystem;
import org.wetmil.workbook.copy.LeanWorkbook;
import org.wetmil.workbook.fill.beside.BasisBook;
import org.wetmil.workbook.fill.beside.FillStamp;
import org.wetmil.workbook.fill.beside.Marks;
import org.wetmil.workbook.fill.beside.SheetPlan;
import org.wetmil.workbook.look.Look;

/**
 * The sheets that Wetmil adds after the estimator's, in their order. All are made before any is
 * written, since their formulas refer to each other.
 */
public record OwnSheets(
    FilledJob job,
    XSSFSheet summary,
    XSSFSheet howSure,
    XSSFSheet findings,
    XSSFSheet hours,
    XSSFSheet order,
    Optional<XSSFSheet> bid,
    XSSFSheet plan,
    XSSFSheet crew,
    Optional<XSSFSheet> limits,
    XSSFSheet cautions,
    XSSFSheet basis) {

  private static final String BID = "Bid";

  public static OwnSheets create(XSSFWorkbook workbook, FilledJob job) {
    return new OwnSheets(
        job,
        make(workbook, "Summary"),
        make(workbook, "How sure"),
        make(workbook, "Findings"),
        make(workbook, "Hours"),
        make(workbook, "Order"),
        job.price().price().map(price -> bid(workbook)),
        make(workbook, "Plan"),
        make(workbook, "Crew"),
        LimitsPage.isWanted(job.filled())
            ? Optional.of(make(workbook, "Limits"))
            : Optional.empty(),
        make(workbook, "Cautions"),
        make(workbook, "Basis"));
  }

  private static XSSFSheet make(XSSFWorkbook workbook, String name) {
    XSSFSheet sheet = SheetNames.create(workbook, name);
    Marks.sheet(sheet, name.toLowerCase(Locale.ROOT).replace(' ', '_'));
    return sheet;
  }

  /** The estimator's own lines often stand on a sheet called Bid. */
  private static XSSFSheet bid(XSSFWorkbook workbook) {
    XSSFSheet sheet = SheetNames.create(workbook, workbook.getSheet(BID) == null ? BID : "Offer");
    Marks.sheet(sheet, "bid");
    return sheet;
  }

  /** Sheets that could not have the name that they should have, for Basis to say so. */
  public List<String> renamed() {
    List<String> renamed = new ArrayList<>();
    wanted()
        .forEach(
            (sheet, name) -> {
              if (!sheet.getSheetName().equals(name)) {
                renamed.add("the page %s is called %s".formatted(name, sheet.getSheetName()));
              }
            });
    return renamed;
  }

  private Map<XSSFSheet, String> wanted() {
    Map<XSSFSheet, String> wanted = new LinkedHashMap<>();
    wanted.put(summary, "Summary");
    wanted.put(howSure, "How sure");
    wanted.put(findings, "Findings");
    wanted.put(hours, "Hours");
    wanted.put(order, "Order");
    bid.ifPresent(sheet -> wanted.put(sheet, BID));
    wanted.put(plan, "Plan");
    wanted.put(crew, "Crew");
    limits.ifPresent(sheet -> wanted.put(sheet, "Limits"));
    wanted.put(cautions, "Cautions");
    wanted.put(basis, "Basis");
    return wanted;
  }

  public void write(
      LeanWorkbook workbook,
      Look look,
      BasisBook book,
      List<SheetPlan> plans,
      List<Finding> worstFirst,
      FillStamp stamp) {
    UnitSystem system = job.filled().bid().system();
    Plan planned = Planner.plan(job.filled());
    HoursSums sums = new HoursSums(hours.getSheetName());
    Coin coin = new Coin(job.filled(), book, look);
    HowSurePage sure = new HowSurePage(howSure, look, job, book, coin);
    SummarySheet.Places places =
        new SummarySheet(summary, look, job, sums, book, coin)
            .write(
                stamp,
                worstFirst,
                findings.getSheetName(),
                order.getSheetName(),
                sure.places(),
                planned.days());
    sure.write(places);
    new HoursSheet(hours, look, system).write(workbook, plans, job.hours(), places.hours());
    new OrderSheet(order, look, job.filled(), sums, coin).write(job.order());
    bid.ifPresent(
        sheet ->
            new BidPage(sheet, look, job.filled())
                .write(job.price().price().orElseThrow(), places, coin, stamp.date()));
    new PlanPage(plan, look, job, book).write(planned, places);
    new CrewSheet(crew, look, job.filled()).write(places.changed());
    limits.ifPresent(sheet -> new LimitsPage(sheet, look, job.filled()).write());
    new CautionsSheet(cautions, look).write();
    short paper = paper(workbook.getSheet(plans.get(0).sheet()), system);
    wanted().keySet().forEach(sheet -> sheet.getPrintSetup().setPaperSize(paper));
  }

  /** The paper that the estimator chose for the bid, or what goes with the units. */
  private static short paper(XSSFSheet theirs, UnitSystem system) {
    var setup = theirs.getCTWorksheet().getPageSetup();
    if (setup != null && setup.isSetPaperSize()) {
      return theirs.getPrintSetup().getPaperSize();
    }
    return system == UnitSystem.US ? PrintSetup.LETTER_PAPERSIZE : PrintSetup.A4_PAPERSIZE;
  }
}
