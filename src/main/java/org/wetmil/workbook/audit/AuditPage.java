package org.wetmil.workbook.audit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.wetmil.audit.MeasureAudit;
import org.wetmil.audit.Verdict;
import org.wetmil.audit.model.Proof;
import org.wetmil.audit.past.Measure;
import org.wetmil.audit.range.Judgement;
import org.wetmil.audit.range.PlacedJob;
import org.wetmil.audit.range.RangeAudit;
import org.wetmil.audit.tables.Filling;
import org.wetmil.audit.tables.TableMoves;
import org.wetmil.estimate.likely.Inside;
import org.wetmil.workbook.look.Heights;
import org.wetmil.workbook.look.Look;
import org.wetmil.workbook.look.Pages;
import org.wetmil.workbook.look.Rows;

/** The one upright page, for an owner who knows painting and no statistics. */
final class AuditPage {
  static final String NAME = "Audit";

  private static final int[] WIDTHS = {13, 9, 15, 15, 15, 16, 18};
  private static final int CHART_ROWS = 17;

  private final XSSFSheet sheet;
  private final Look look;
  private final AuditBook book;
  private final Rows rows;

  AuditPage(XSSFSheet sheet, Look look, AuditBook book) {
    this.sheet = sheet;
    this.look = look;
    this.book = book;
    this.rows = new Rows(sheet);
  }

  /** Where the chart of a measure stands on the page: side by side, below the text. */
  static int[] chart(int place, int below) {
    int middle = 4;
    return place == 0
        ? new int[] {0, below, middle, below + CHART_ROWS}
        : new int[] {middle, below, WIDTHS.length, below + CHART_ROWS};
  }

  /** Writes the text; gives the first free row, from 0. */
  int write() {
    Pages.widths(sheet, WIDTHS);
    Verdict verdict = book.audit().verdict();
    rows.row().text("Were our bids right?", look.title());
    rows.height(24);
    sentence(verdict.proof(), look.strongText());
    sentence(
        "Past bids in the folder \"%s\", as of %s. %s"
            .formatted(book.stamp().folder(), book.stamp().date(), verdict.bids()),
        look.text(true));
    figures();
    List<String> right = new ArrayList<>(verdict.right());
    moved().ifPresent(right::add);
    block("Were they right?", right, false);
    ranges(verdict.ranges());
    block("Where they missed: the largest causes", verdict.reasons(), true);
    block("What to change", verdict.change(), true);
    block("Would it have helped?", verdict.helped(), false);
    rows.gap();
    int below = rows.number();
    Pages.upright(sheet, WIDTHS.length, below + CHART_ROWS + 1);
    sheet.getPrintSetup().setFitHeight((short) 1);
    sheet.setHorizontallyCenter(true);
    return below;
  }

  /** What today's tables would have made of the bids that were made with others. */
  private Optional<String> moved() {
    List<TableMoves> moved =
        book.jobs().stream()
            .map(AuditedJob::moves)
            .filter(moves -> !moves.figures().isEmpty())
            .toList();
    if (moved.isEmpty()) {
      return Optional.empty();
    }
    Function<ToDoubleFunction<Filling>, Double> change =
        amount ->
            moved.stream().mapToDouble(m -> amount.applyAsDouble(m.now())).sum()
                / moved.stream().mapToDouble(m -> amount.applyAsDouble(m.then())).sum();
    return Optional.of(
        String.format(
            Locale.ROOT,
            "%d %s made with other table figures than today's; today's would have come to %s paint"
                + " and %s hours (%s says which).",
            moved.size(),
            moved.size() == 1 ? "bid was" : "bids were",
            more(change.apply(Filling::paintGal)),
            more(change.apply(Filling::hours)),
            MovedSheet.NAME));
  }

  private static String more(double ratio) {
    return String.format(
        Locale.ROOT, "%.0f %% %s", 100 * Math.abs(ratio - 1), ratio < 1 ? "less" : "more");
  }

  private void block(String title, List<String> sentences, boolean numbered) {
    if (sentences.isEmpty()) {
      return;
    }
    title(title);
    int number = 1;
    for (String sentence : sentences) {
      boolean counted = numbered && sentences.size() > 1;
      sentence(counted ? number + ". " + sentence : sentence, look.text(true));
      number++;
    }
  }

  private void title(String title) {
    rows.gap().row().text(title, look.block());
    rows.underline(WIDTHS.length, look.block());
  }

  private void sentence(String text, XSSFCellStyle style) {
    rows.row().text(text, style);
    int row = rows.number() - 1;
    sheet.addMergedRegion(new CellRangeAddress(row, row, 0, WIDTHS.length - 1));
    int width = Arrays.stream(WIDTHS).sum();
    rows.height(Heights.points(Heights.lines(text, width)));
  }

  /** What was bid and taken in all: sums of the list of jobs, which they follow. */
  private void figures() {
    rows.gap().row();
    String[] headings = {"", "Jobs", "Bid", "Taken", "Taken/bid", "Usual miss", "With the change"};
    for (int i = 0; i < headings.length; i++) {
      rows.text(headings[i], look.band(i > 0));
    }
    book.audit().measures().forEach(this::figures);
    sentence(
        "Taken/bid is of all jobs added up, so that large ones weigh most. How much jobs ran over or"
            + " under, below, is their mean, in which each weighs the same; the two differ where"
            + " large jobs came out otherwise than small ones.",
        look.text(true));
  }

  private void figures(MeasureAudit audit) {
    Measure measure = audit.measure();
    String unit = measure.quantity().unit(book.system()).symbol();
    JobsColumn.OfMeasure columns = JobsColumn.OfMeasure.of(measure);
    int jobs = book.jobs().size();
    String taken = columns.taken().all(jobs);
    double estimated = JobsSheet.shown(measure, audit.ratios().all().estimated(), book.system());
    double actual = JobsSheet.shown(measure, audit.ratios().all().actual(), book.system());
    int row = rows.row().number();
    rows.text(measure.title() + " (" + unit + ")", look.strong())
        .formula("COUNT(" + taken + ")", audit.ratios().jobs().size(), look.number(0))
        .formula(
            "SUMIF(" + taken + ",\">0\"," + columns.bid().all(jobs) + ")",
            estimated,
            look.number(1))
        .formula("SUM(" + taken + ")", actual, look.number(1))
        .formula("D" + row + "/C" + row, actual / estimated, look.strongNumber(2))
        .formula(mean(columns.miss().all(jobs)), Math.exp(meanMiss(audit)) - 1, look.percent());
    if (audit.offered().isPresent()) {
      rows.formula(
          mean(columns.missChanged().all(jobs)),
          Math.exp(audit.offered().map(Proof::after).orElseThrow()) - 1,
          look.percent());
    } else {
      rows.text("no change yet", look.text(false));
    }
  }

  /** The mean of misses as of ratios; an empty cell counts as none. */
  private static String mean(String misses) {
    return "EXP(SUMPRODUCT(LN(1+" + misses + "))/COUNT(" + misses + "))-1";
  }

  /** How many jobs came out inside their likely ranges: counts over the list of jobs. */
  private void ranges(List<String> sentences) {
    if (sentences.isEmpty()) {
      return;
    }
    title("Were the likely ranges right?");
    rows.row();
    String[] headings = {"", "Jobs", "Below", "Inside", "Above", "Inside", "Expected"};
    for (int i = 0; i < headings.length; i++) {
      rows.text(headings[i], look.band(i > 0));
    }
    for (RangeAudit audit : book.audit().ranges().audits()) {
      String places = JobsColumn.OfMeasure.of(audit.measure()).place().all(book.jobs().size());
      Inside inside = audit.inside();
      int row = rows.row().number();
      rows.text(audit.measure().title(), look.strong())
          .formula("SUM(C%d:E%d)".formatted(row, row), inside.jobs(), look.number(0))
          .formula(count(places, PlacedJob.Place.BELOW), inside.below(), look.number(0))
          .formula(count(places, PlacedJob.Place.INSIDE), inside.inside(), look.number(0))
          .formula(count(places, PlacedJob.Place.ABOVE), inside.above(), look.number(0));
      if (inside.jobs() > 0) {
        rows.formula("D%d/B%d".formatted(row, row), inside.share(), look.percent());
      } else {
        rows.skip(1);
      }
      rows.number(Judgement.EXPECTED, look.percent());
    }
    sentences.forEach(sentence -> sentence(sentence, look.text(true)));
  }

  private static String count(String places, PlacedJob.Place place) {
    return "COUNTIF(" + places + ",\"" + place.word() + "\")";
  }

  private static double meanMiss(MeasureAudit audit) {
    return audit.ratios().jobs().stream()
        .mapToDouble(job -> Math.abs(Math.log(job.ratio())))
        .average()
        .orElse(Double.NaN);
  }
}
