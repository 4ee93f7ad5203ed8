package org.wetmil.workbook.audit;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.DateUtil;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.wetmil.audit.MeasureAudit;
import org.wetmil.audit.model.Proof;
import org.wetmil.audit.past.Likely;
import org.wetmil.audit.past.Measure;
import org.wetmil.audit.past.PastBid;
import org.wetmil.audit.range.PlacedJob;
import org.wetmil.audit.ratio.JobRatio;
import org.wetmil.audit.tables.TableMoves;
import org.wetmil.quantity.UnitSystem;
import org.wetmil.workbook.look.Look;
import org.wetmil.workbook.look.Rows;

/** The list of jobs, one a row: what was bid, what it took, what the change would have bid. */
final class JobsSheet {
  static final String NAME = "Jobs";

  private final Look look;
  private final AuditBook book;
  private final Rows rows;
  private final XSSFSheet sheet;

  JobsSheet(XSSFSheet sheet, Look look, AuditBook book) {
    this.sheet = sheet;
    this.look = look;
    this.book = book;
    String[] headings =
        Arrays.stream(JobsColumn.values())
            .map(column -> heading(column, book.system()))
            .toArray(String[]::new);
    int[] widths = Arrays.stream(JobsColumn.values()).mapToInt(JobsColumn::width).toArray();
    this.rows = ListSheet.begin(sheet, look, headings, widths);
  }

  void write() {
    book.jobs().forEach(this::job);
    ListSheet.end(sheet, look, JobsColumn.values().length, rows);
  }

  /** How a job came out in a measure; empty when it cannot be compared. */
  static Optional<JobRatio> ratio(AuditBook book, Measure measure, PastBid bid) {
    return audit(book, measure)
        .flatMap(
            audit -> audit.ratios().jobs().stream().filter(job -> job.bid() == bid).findFirst());
  }

  static Optional<MeasureAudit> audit(AuditBook book, Measure measure) {
    return book.audit().measures().stream().filter(one -> one.measure() == measure).findFirst();
  }

  static double shown(Measure measure, double kept, UnitSystem system) {
    return measure.quantity().shown(kept, system);
  }

  private static String heading(JobsColumn column, UnitSystem system) {
    return column.measure() == null
        ? column.heading()
        : column.heading() + " (" + column.measure().quantity().unit(system).symbol() + ")";
  }

  private void job(AuditedJob job) {
    PastBid bid = job.bid();
    rows.row()
        .text(bid.id(), look.strong())
        .text(job.file(), look.text(false))
        .number(bid.date() == null ? Double.NaN : DateUtil.getExcelDate(bid.date()), look.date())
        .text(bid.crew(), look.text(false))
        .text(bid.estimator(), look.text(false))
        .text(outcome(bid), look.text(false))
        .text(odd(bid), look.text(false))
        .number(job.lines(), look.number(0))
        .number(job.notFilled(), look.number(0));
    amounts(Measure.PAINT, bid, job.paintGal());
    amounts(Measure.HOURS, bid, job.hours());
    misses(Measure.PAINT, bid);
    misses(Measure.HOURS, bid);
    range(Measure.PAINT, bid);
    range(Measure.HOURS, bid);
    TableMoves moves = job.moves();
    rows.number(shown(Measure.PAINT, moves.then().paintGal(), book.system()), look.number(1))
        .number(shown(Measure.PAINT, moves.now().paintGal(), book.system()), look.number(1))
        .number(shown(Measure.HOURS, moves.then().hours(), book.system()), look.number(1))
        .number(shown(Measure.HOURS, moves.now().hours(), book.system()), look.number(1));
  }

  private String outcome(PastBid bid) {
    String known =
        Stream.of(Measure.values())
            .filter(measure -> ratio(book, measure, bid).isPresent())
            .map(Measure::word)
            .collect(Collectors.joining(" and "));
    return known.isEmpty() ? "no" : known;
  }

  private String odd(PastBid bid) {
    List<String> odd =
        Stream.of(Measure.values())
            .filter(m -> ratio(book, m, bid).filter(JobRatio::isOdd).isPresent())
            .map(Measure::word)
            .toList();
    return String.join(" and ", odd);
  }

  /** Where the outcome is known, the bid for what it covers; else the whole bid. */
  private void amounts(Measure measure, PastBid bid, double whole) {
    JobsColumn.OfMeasure columns = JobsColumn.OfMeasure.of(measure);
    Optional<JobRatio> ratio = ratio(book, measure, bid);
    int row = rows.number();
    double estimated = ratio.map(JobRatio::estimated).orElse(whole);
    rows.number(shown(measure, estimated, book.system()), look.number(1));
    if (ratio.isEmpty()) {
      rows.skip(3);
      return;
    }
    rows.number(shown(measure, ratio.get().actual(), book.system()), look.number(1))
        .formula(
            columns.taken().in(row) + "/" + columns.bid().in(row),
            ratio.get().ratio(),
            look.number(2));
    Optional<Proof.Forecast> changed = changed(measure, bid);
    if (changed.isPresent()) {
      rows.number(shown(measure, changed.get().forecast(), book.system()), look.number(1));
    } else {
      rows.skip(1);
    }
  }

  private void misses(Measure measure, PastBid bid) {
    JobsColumn.OfMeasure columns = JobsColumn.OfMeasure.of(measure);
    Optional<JobRatio> ratio = ratio(book, measure, bid);
    Optional<Proof.Forecast> changed = changed(measure, bid);
    int row = rows.number();
    if (ratio.isPresent()) {
      rows.formula(miss(columns.ratio().in(row)), miss(ratio.get().ratio()), look.percent());
    } else {
      rows.skip(1);
    }
    if (changed.isPresent()) {
      rows.formula(
          miss(columns.taken().in(row) + "/" + columns.changed().in(row)),
          miss(changed.get().actual() / changed.get().forecast()),
          look.percent());
    } else {
      rows.skip(1);
    }
  }

  /** How far a ratio is off either way: 25 % at 1.25 and at 1/1.25. */
  private static double miss(double ratio) {
    return Math.exp(Math.abs(Math.log(ratio))) - 1;
  }

  private static String miss(String ratio) {
    return "EXP(ABS(LN(" + ratio + ")))-1";
  }

  /** The range as it would have been said, and where the job came out. */
  private void range(Measure measure, PastBid bid) {
    Likely likely = bid.likely().get(measure);
    if (likely == null) {
      rows.skip(3);
      return;
    }
    rows.number(shown(measure, likely.whole().low(), book.system()), look.number(1))
        .number(shown(measure, likely.whole().high(), book.system()), look.number(1));
    Optional<PlacedJob> placed =
        book.audit()
            .ranges()
            .of(measure)
            .flatMap(audit -> audit.jobs().stream().filter(job -> job.bid() == bid).findFirst());
    if (placed.isEmpty()) {
      rows.text(ratio(book, measure, bid).isPresent() ? "known in part" : "", look.text(false));
      return;
    }
    JobsColumn.OfMeasure columns = JobsColumn.OfMeasure.of(measure);
    int row = rows.number();
    rows.formula(
        "IF(%s<%s,\"below\",IF(%s>%s,\"above\",\"inside\"))"
            .formatted(
                columns.taken().in(row),
                columns.low().in(row),
                columns.taken().in(row),
                columns.high().in(row)),
        placed.get().place().word(),
        look.text(false));
  }

  private Optional<Proof.Forecast> changed(Measure measure, PastBid bid) {
    return audit(book, measure)
        .flatMap(MeasureAudit::offered)
        .flatMap(
            proof -> proof.bids().stream().filter(forecast -> forecast.bid() == bid).findFirst());
  }
}
