package org.wetmil.workbook.fill;

import java.util.List;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.wetmil.checks.Finding;
import org.wetmil.estimate.job.FilledJob;
import org.wetmil.quantity.UnitSystem;

/**
 * The sheets that Wetmil adds after the estimator's, in their order. All are made before any is
 * written, since their formulas refer to each other.
 */
record OwnSheets(
    FilledJob job,
    XSSFSheet summary,
    XSSFSheet findings,
    XSSFSheet hours,
    XSSFSheet order,
    XSSFSheet crew,
    XSSFSheet cautions,
    XSSFSheet basis) {

  static OwnSheets create(XSSFWorkbook workbook, FilledJob job) {
    return new OwnSheets(
        job,
        make(workbook, "Summary"),
        make(workbook, "Findings"),
        make(workbook, "Hours"),
        make(workbook, "Order"),
        make(workbook, "Crew"),
        make(workbook, "Cautions"),
        make(workbook, "Basis"));
  }

  private static XSSFSheet make(XSSFWorkbook workbook, String name) {
    XSSFSheet sheet = SheetNames.create(workbook, name);
    Marks.sheet(sheet, name.toLowerCase(java.util.Locale.ROOT));
    return sheet;
  }

  void write(
      Look look, BasisBook book, List<SheetPlan> plans, List<Finding> worstFirst, FillStamp stamp) {
    UnitSystem system = job.filled().bid().system();
    HoursSums sums = new HoursSums(hours.getSheetName());
    Coin coin = new Coin(job.filled(), book, look);
    SummarySheet.Places places =
        new SummarySheet(summary, look, job, sums, book, coin)
            .write(stamp, worstFirst, findings.getSheetName(), order.getSheetName());
    new HoursSheet(hours, look, system).write(plans, job.hours(), places.hours());
    new OrderSheet(order, look, job.filled(), sums, coin).write(job.order());
    new CrewSheet(crew, look, job.filled()).write();
    new CautionsSheet(cautions, look).write();
  }
}
