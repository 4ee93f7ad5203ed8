package org.wetmil.workbook.audit;

import java.util.List;
import java.util.Locale;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.wetmil.workbook.look.Heights;
import org.wetmil.workbook.look.Look;
import org.wetmil.workbook.look.Pages;
import org.wetmil.workbook.look.Rows;

/** What the audit rests on, in words. */
final class BasisPage {
  private static final int WIDTH = 90;

  private final XSSFSheet sheet;
  private final Look look;
  private final AuditBook book;
  private final Rows rows;

  BasisPage(XSSFSheet sheet, Look look, AuditBook book) {
    this.sheet = sheet;
    this.look = look;
    this.book = book;
    this.rows = new Rows(sheet);
  }

  void write() {
    Pages.width(sheet, 0, 26);
    Pages.width(sheet, 1, WIDTH);
    rows.row().text("Basis of this audit", look.title());
    rows.gap();
    fact("Folder", book.stamp().folder());
    fact("List of actuals", book.stamp().actuals().isEmpty() ? "none" : book.stamp().actuals());
    fact("Audited on", book.stamp().date().toString());
    fact("Audited by", "Wetmil " + book.stamp().version());
    fact("Units", book.system().word());
    rows.gap();
    for (List<String> line : LINES) {
      fact(line.get(0), line.get(1));
    }
    Pages.landscape(sheet, 2, rows.number());
  }

  private static final List<List<String>> LINES =
      List.of(
          List.of(
              "Bid",
              "Each bid is filled again by this version with the tables in its own workbook. Where"
                  + " paint or hours are known for the job or for a coating, the bid includes what"
                  + " only the job as a whole has (set-up, clean-up, changes, touch-up, hoses),"
                  + " spread over the lines by their size; where a line states its own, it does"
                  + " not."),
          List.of(
              "Factors already applied",
              "Where a bid's own tables state another stick or trigger share than today's, as"
                  + " after an earlier audit, what that adds is taken out of the bid first: the"
                  + " suggestions always replace today's figures."),
          List.of(
              "Taken",
              "A line's own figure wins over its coating's, a coating's over the job's. What a job"
                  + " took in all, less what its lines and coatings say, belongs to the rest."),
          List.of(
              "Ratio",
              "Taken over bid; 1 is right. Ratios are averaged as logarithms, so that twice as much"
                  + " and half as much are equally far off (geometric mean). Taken/bid on the"
                  + " first page is the sum over the sum: what was really paid for."),
          List.of(
              "Low and High",
              "95 % interval by Student's t on the logarithms; blank under three jobs."),
          List.of(
              "Ratio on its own account",
              "From one model of all jobs with coating, surface, crew, crew at height and year"
                  + " together: the group's own work, done by the average crew in the average year;"
                  + " of a crew, the average work. Each group is pulled towards all bids as far as"
                  + " its few jobs make it doubtful (w = n / (n + k); k, the scatter of a job over"
                  + " that of the groups, by restricted maximum likelihood over all kinds at once,"
                  + " which for one kind is the one-way analysis of variance; 4 where there are too"
                  + " few groups: house rule)."),
          List.of(
              "A cause",
              "A group that stands apart in the model and whose own part of the jobs shows the"
                  + " same miss, by at least 3 % (house rule). They are named one after the other,"
                  + " each time the one that explains most of what is left, and only while the"
                  + " group still misses without those named before. The figure is its Ratio where"
                  + " its outcomes are known by themselves, else its ratio on its own account."),
          List.of(
              "Setups",
              "Lines on which a check fired against all others: the difference of their mean"
                  + " logarithms, as a ratio with its 95 % interval (Welch's t, with what bids have"
                  + " in common taken off). "
                  + FiredSheet.NAME
                  + String.format(Locale.ROOT, " lists the first %,d cells.", FiredSheet.MOST)),
          List.of(
              "Moved figures",
              "Each bid is filled with the tables that its workbook carries (of one filled before,"
                  + " those of its Basis) and with today's; what the bid states about its job, and"
                  + " rows that only it has, stay. What one figure makes is told by changing it"
                  + " alone."),
          List.of(
              "Chance of luck",
              "How often a group this far from the others would come about by luck alone, allowing"
                  + " for how many groups were looked at (Benjamini and Hochberg 1995). Up to 0.05"
                  + " it is called a cause (house rule)."),
          List.of(
              "Far from the rest",
              "Modified z-score over 3.5 (Iglewicz and Hoaglin, in the NIST/SEMATECH e-Handbook"
                  + " 1.3.5.17), from six jobs on. Such jobs are marked and never dropped."),
          List.of("Drift", "Theil-Sen slope and Mann-Kendall test, from six dated jobs on."),
          List.of(
              "Usual miss",
              "Mean distance between taken and bid, either way. With the change: each job forecast"
                  + " from all the others, never from itself. A change is offered only if the"
                  + " forecast is nearer by at least half a percent, from six jobs on (house"
                  + " rule)."),
          List.of(
              "Likely range",
              "From 10 to 90 % of jobs like it, as it would have been said when the job was bid: with"
                  + " the tables and settings in its workbook; of the lines' own tasks where every"
                  + " line states what it took. Drawn 4,000 times, the lines from which the same"
                  + " share of paint stays on as one. Counted are jobs whose outcome is known for"
                  + " all that was bid. The share inside has its 95 % interval by Wilson's score"
                  + " (1927). Ranges are called right where it holds 80 % and rules out that they"
                  + " are half or twice as wide as they should be, and wrong only where luck would"
                  + " bring such a count less than once in twenty (house rules). Another value is"
                  + " named only where each job, judged by the width that fits all the others"
                  + " (conformal prediction), comes out inside as often as it should."),
          List.of(
              "What it cannot tell",
              "Film, loss and area cannot be told apart from paint alone; the factor goes to the"
                  + " loss unless you choose another table. Groups that never occur apart are named"
                  + " as such. A pattern in past jobs need not hold for the next one."));

  private void fact(String label, String value) {
    rows.row().text(label, look.strong()).text(value, look.text(true));
    rows.height(Heights.points(Heights.lines(value, WIDTH)));
  }
}
