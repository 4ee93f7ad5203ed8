package org.wetmil.jobs.audit;

import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.wetmil.audit.past.Likely;
import org.wetmil.audit.past.Measure;
import org.wetmil.audit.past.PastLine;
import org.wetmil.audit.past.UnitCosts;
import org.wetmil.audit.tables.TableMoves;
import org.wetmil.audit.tables.TodaysTables;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Names;
import org.wetmil.catalogue.Setting;
import org.wetmil.checks.Checks;
import org.wetmil.checks.Finding;
import org.wetmil.estimate.Estimator;
import org.wetmil.estimate.FilledBid;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.estimate.FilledLine;
import org.wetmil.estimate.InputColumn;
import org.wetmil.estimate.job.JobFigure;
import org.wetmil.estimate.job.JobHours;
import org.wetmil.estimate.job.JobPrice;
import org.wetmil.estimate.job.Order;
import org.wetmil.estimate.job.QuickRange;
import org.wetmil.estimate.likely.Spreads;
import org.wetmil.estimate.price.CostItem;
import org.wetmil.estimate.price.Price;
import org.wetmil.ledger.DateText;
import org.wetmil.quantity.UnitSystem;
import org.wetmil.workbook.audit.FiredCheck;
import org.wetmil.workbook.opc.FileName;
import org.wetmil.workbook.read.BidReader;
import org.wetmil.workbook.read.OldSums;
import org.wetmil.workbook.read.ReadWorkbook;
import org.wetmil.workbook.read.ReadableCopy;

/**
 * What the audit keeps of one bid workbook, so that a thousand of them fit in memory.
 *
 * @param lines those that count in the totals
 * @param taken by measure, what each line states it took; NaN where it states nothing
 * @param whole by measure, what the settings state for the whole job; NaN when nothing
 * @param estimated by measure, the whole bid with what only the job as a whole has
 * @param likely by measure, the range that would have been said when it was bid: of the lines' own
 *     tasks where every line states what it took, else of the job
 * @param coatings the coating's name by every name it has in the bid
 * @param price null when it is not all stated
 * @param currency of the price, as the bid writes it
 * @param moves the bid with its own tables and with today's
 * @param checks that fired on its lines
 * @param mistakes of arithmetic in its own cells
 */
record PastBook(
    Path file,
    String job,
    List<PastLine> lines,
    int read,
    int notFilled,
    Map<Measure, List<Double>> taken,
    Map<Measure, Double> whole,
    Map<Measure, Double> estimated,
    Map<Measure, Likely> likely,
    Map<String, String> coatings,
    LocalDate date,
    String crew,
    String estimator,
    Price price,
    String currency,
    TableMoves moves,
    List<FiredCheck> checks,
    List<OldSums.Mistake> mistakes) {

  /**
   * Reads and fills a workbook; throws as the reader does.
   *
   * @param today the tables to bid with now
   */
  static PastBook read(Path file, UnitSystem system, Catalogue today) {
    ReadableCopy copy = ReadableCopy.of(file);
    ReadWorkbook read = BidReader.read(copy);
    Catalogue now = TodaysTables.of(read.bid().catalogue(), today);
    FilledBid filled = Estimator.fill(read.bid());
    FilledBid asBid = TableMoves.asBid(filled, read.carried());
    TableMoves moves = TableMoves.of(read.bid(), asBid, now);
    return new Reader(file, read, filled, asBid, now, moves, OldSums.of(copy), system).book();
  }

  String name() {
    return FileName.of(file);
  }

  /** What a gallon and an hour of the bid cost it directly. */
  UnitCosts costs() {
    return price == null
        ? UnitCosts.NONE
        : new UnitCosts(
            each(CostItem.Kind.MATERIAL, estimated.get(Measure.PAINT)),
            each(CostItem.Kind.LABOUR, estimated.get(Measure.HOURS)),
            currency);
  }

  private BigDecimal each(CostItem.Kind kind, double amount) {
    BigDecimal sum =
        price.parts().stream()
            .filter(part -> part.item().kind() == kind)
            .map(Price.Part::amount)
            .reduce(BigDecimal.ZERO, BigDecimal::add);
    return sum.signum() > 0 && amount > 0
        ? sum.divide(BigDecimal.valueOf(amount), MathContext.DECIMAL64)
        : null;
  }

  /** Takes from a filled bid what is to be kept. */
  private static final class Reader {
    private final Path file;
    private final FilledBid filled;
    private final Catalogue today;
    private final TableMoves moves;
    private final List<OldSums.Mistake> mistakes;
    private final Catalogue catalogue;
    private final HeightClass heights;
    private final JobHours hours;
    private final Order order;
    private final QuickRange range;
    private final Spreads spreads;
    private final Map<FilledLine, Set<String>> fired = new IdentityHashMap<>();
    private final List<FiredCheck> checks = new ArrayList<>();

    Reader(
        Path file,
        ReadWorkbook read,
        FilledBid filled,
        FilledBid asBid,
        Catalogue today,
        TableMoves moves,
        List<OldSums.Mistake> mistakes,
        UnitSystem system) {
      this.file = file;
      this.filled = filled;
      this.today = today;
      this.moves = moves;
      this.mistakes = mistakes;
      this.catalogue = filled.bid().catalogue();
      this.heights = new HeightClass(catalogue, system);
      this.hours = JobHours.of(filled);
      this.order = Order.asBought(filled);
      this.range =
          QuickRange.of(asBid, asBid == filled ? hours : JobHours.of(asBid), Order.hoseGal(asBid));
      this.spreads = Spreads.of(asBid.bid().catalogue());
      Map<List<Object>, List<FilledLine>> lines = new HashMap<>();
      filled
          .lines()
          .forEach(line -> lines.computeIfAbsent(key(line), any -> new ArrayList<>()).add(line));
      for (Finding finding : Checks.run(filled)) {
        List<FilledLine> inRow =
            lines.getOrDefault(List.of(finding.spot().sheet(), finding.spot().row()), List.of());
        int before = finding.among(inRow);
        if (before >= 0 && inRow.get(before).work().isIncluded()) {
          FilledLine line = inRow.get(before);
          fired.computeIfAbsent(line, any -> new TreeSet<>()).add(finding.check());
          checks.add(fired(read, finding, before, line));
        }
      }
    }

    private static List<Object> key(FilledLine line) {
      return List.of(line.line().sheet(), line.line().row());
    }

    private static FiredCheck fired(
        ReadWorkbook read, Finding finding, int before, FilledLine line) {
      String address =
          read.layouts().stream()
              .filter(layout -> layout.sheet().equals(finding.spot().sheet()))
              .map(layout -> layout.address(finding.spot().row(), before, finding.spot().column()))
              .findFirst()
              .orElse("");
      return new FiredCheck(
          finding.check(),
          finding.spot().sheet(),
          address,
          finding.room(),
          surface(line),
          coating(line));
    }

    /** The lines that count in the totals. */
    private List<FilledLine> counted() {
      return filled.lines().filter(line -> line.work().isIncluded()).toList();
    }

    PastBook book() {
      List<FilledLine> counted = counted();
      Map<Measure, List<Double>> taken =
          Map.of(
              Measure.PAINT, numbers(counted, InputColumn.ACTUAL_PAINT),
              Measure.HOURS, numbers(counted, InputColumn.ACTUAL_HOURS));
      Map<String, String> coatings = new HashMap<>();
      for (FilledLine line : counted) {
        String name = coating(line);
        coatings.putIfAbsent(Names.key(line.line().text(InputColumn.COATING)), name);
        coatings.putIfAbsent(Names.key(name), name);
      }
      double paint = filled.total(FilledColumn.PAINT) + order.hoseGal();
      double labour = hours.number(JobFigure.TOTAL);
      // A line's own figure is for its own tasks; one for the job also covers what lines lack.
      double morePaint = more(taken.get(Measure.PAINT), paint, FilledColumn.PAINT);
      double moreHours = more(taken.get(Measure.HOURS), labour, FilledColumn.LABOUR);
      return new PastBook(
          file,
          filled.bid().job(),
          counted.stream().map(line -> line(line, morePaint, moreHours)).toList(),
          (int) filled.lines().count(),
          (int) filled.lines().filter(line -> !line.isFilled() && !line.isLeftOut()).count(),
          taken,
          Map.of(
              Measure.PAINT, catalogue.number(Setting.ACTUAL_PAINT),
              Measure.HOURS, catalogue.number(Setting.ACTUAL_HOURS)),
          Map.of(Measure.PAINT, paint, Measure.HOURS, labour),
          Map.of(
              Measure.PAINT,
              new Likely(
                  isByLine(taken.get(Measure.PAINT)) ? range.linesGal() : range.jobGal(),
                  range.linesGal(),
                  spreads),
              Measure.HOURS,
              new Likely(
                  isByLine(taken.get(Measure.HOURS)) ? range.lineHours() : range.jobHours(),
                  range.sprayHours(),
                  spreads)),
          coatings,
          DateText.read(catalogue.text(Setting.DATE_DONE)).orElse(null),
          catalogue.text(Setting.CREW_NAME),
          catalogue.text(Setting.ESTIMATOR),
          JobPrice.of(filled, hours, order).price().orElse(null),
          catalogue.text(Setting.CURRENCY),
          moves,
          List.copyOf(checks),
          mistakes);
    }

    private static boolean isByLine(List<Double> taken) {
      return !taken.isEmpty() && taken.stream().noneMatch(amount -> Double.isNaN(amount));
    }

    private double more(List<Double> taken, double whole, FilledColumn column) {
      double sum = filled.total(column);
      boolean own = taken.stream().anyMatch(amount -> !Double.isNaN(amount));
      return own || !(sum > 0) ? 1 : whole / sum;
    }

    private static List<Double> numbers(List<FilledLine> lines, InputColumn column) {
      List<Double> numbers = new ArrayList<>();
      lines.forEach(line -> numbers.add(line.line().number(column)));
      return List.copyOf(numbers);
    }

    private PastLine line(FilledLine line, double morePaint, double moreHours) {
      Applied applied = Applied.of(line, today);
      return new PastLine(
          coating(line),
          surface(line),
          heights.of(line.line().number(InputColumn.HEIGHT)),
          line.isFilled() ? line.base(FilledColumn.PAINT) * morePaint : Double.NaN,
          line.isFilled() ? line.base(FilledColumn.LABOUR) * moreHours : Double.NaN,
          applied.sprayHours() * moreHours,
          applied.factors(),
          fired.getOrDefault(line, Set.of()));
    }

    private static String surface(FilledLine line) {
      return line.work().surface() == null
          ? line.line().text(InputColumn.SURFACE)
          : line.work().surface().name();
    }

    private static String coating(FilledLine line) {
      return line.work().coating() == null
          ? line.line().text(InputColumn.COATING)
          : line.work().coating().name();
    }
  }
}
