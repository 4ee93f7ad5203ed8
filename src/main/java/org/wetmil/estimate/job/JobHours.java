package org.wetmil.estimate.job;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Entry;
import org.wetmil.catalogue.Names;
import org.wetmil.catalogue.Row;
import org.wetmil.catalogue.Setting;
import org.wetmil.catalogue.Sprayer;
import org.wetmil.catalogue.Task;
import org.wetmil.estimate.Bid;
import org.wetmil.estimate.EntryPlace;
import org.wetmil.estimate.Figure;
import org.wetmil.estimate.FilledBid;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.estimate.FilledLine;
import org.wetmil.estimate.InputColumn;
import org.wetmil.formula.Expr;

/**
 * The person-hours of a job: the tasks of its lines, and the rows that only the job as a whole has.
 *
 * <p>Sums over lines and counts of what is distinct are numbers; everything that follows from them
 * is a formula over {@link JobFigure} places and the settings.
 */
public record JobHours(Map<JobFigure, Figure> figures) {
  /** A last bit of a double must not make another day (house). */
  private static final double ROUNDING = 1e-9;

  public JobHours {
    figures = Map.copyOf(figures);
  }

  public double number(JobFigure figure) {
    return figures.get(figure).number();
  }

  /** Whole days on site. */
  public int days() {
    return (int) Math.round(number(JobFigure.DAYS));
  }

  /** Adds up a filled bid. */
  public static JobHours of(FilledBid filled) {
    return new Sheet(filled.bid()).sums(filled).hours();
  }

  /** The same job with another time of spraying; everything that follows from it follows. */
  public JobHours withSpray(Bid bid, double hours) {
    Sheet sheet = new Sheet(bid);
    sheet.figures.putAll(figures);
    sheet.number(JobFigure.SPRAY, hours);
    return sheet.hours();
  }

  /** Fills the figures one after the other. */
  private static final class Sheet {
    private final Bid bid;
    private final Catalogue catalogue;
    private final Map<JobFigure, Figure> figures = new EnumMap<>(JobFigure.class);

    Sheet(Bid bid) {
      this.bid = bid;
      this.catalogue = bid.catalogue();
    }

    /** What is added up and counted over the lines. */
    Sheet sums(FilledBid filled) {
      List<FilledLine> lines = filled.lines().filter(FilledLine::isCounted).toList();
      number(JobFigure.SPRAY, filled.total(FilledColumn.SPRAY));
      number(JobFigure.ROLL, filled.total(FilledColumn.ROLL));
      number(JobFigure.MASK, filled.total(FilledColumn.MASK));
      number(JobFigure.PREPARE, filled.total(FilledColumn.PREPARE));
      number(JobFigure.TIP_CHANGES, Math.max(0, tips(lines) - 1));
      number(JobFigure.COATING_CHANGES, Math.max(0, coatings(lines) - 1));
      number(JobFigure.GUNS, guns(lines));
      return this;
    }

    /** What follows from those. */
    JobHours hours() {
      live(JobFigure.CHANGE_TIP, at(JobFigure.TIP_CHANGES).times(rate(Task.CHANGE_TIP)));
      live(
          JobFigure.CHANGE_COATING, at(JobFigure.COATING_CHANGES).times(rate(Task.CHANGE_COATING)));
      live(JobFigure.TOUCH_UP, at(JobFigure.SPRAY).times(rate(Task.TOUCH_UP)));
      live(
          JobFigure.WORK,
          Expr.sum(
              at(JobFigure.SPRAY),
              at(JobFigure.ROLL),
              at(JobFigure.MASK),
              at(JobFigure.PREPARE),
              at(JobFigure.CHANGE_TIP),
              at(JobFigure.CHANGE_COATING),
              at(JobFigure.TOUCH_UP)));
      Expr aDay = setting(Setting.CREW).times(setting(Setting.HOURS_A_DAY));
      Expr days = at(JobFigure.WORK).over(aDay).minus(Expr.num(ROUNDING));
      live(JobFigure.DAYS, Expr.max(Expr.num(0), Expr.roundUp(days)));
      Expr gunDays = at(JobFigure.GUNS).times(at(JobFigure.DAYS));
      live(JobFigure.SET_UP, gunDays.times(rate(Task.SET_UP)));
      live(JobFigure.CLEAN_UP, gunDays.times(rate(Task.CLEAN_UP)));
      live(
          JobFigure.TOTAL,
          Expr.sum(at(JobFigure.WORK), at(JobFigure.SET_UP), at(JobFigure.CLEAN_UP)));
      live(JobFigure.DURATION, at(JobFigure.TOTAL).over(setting(Setting.CREW)));
      return new JobHours(figures);
    }

    /** Distinct tips at work; lines without one need no change. */
    private static long tips(List<FilledLine> lines) {
      return lines.stream()
          .map(line -> line.followed().tip())
          .filter(Objects::nonNull)
          .distinct()
          .count();
    }

    private static long coatings(List<FilledLine> lines) {
      return lines.stream()
          .map(
              line ->
                  List.of(
                      line.work().coating().name(),
                      Names.key(line.line().text(InputColumn.COLOUR))))
          .distinct()
          .count();
    }

    private double guns(List<FilledLine> lines) {
      return lines.stream()
          .map(line -> line.work().sprayer())
          .filter(Objects::nonNull)
          .mapToDouble(Sprayer::guns)
          .filter(guns -> !Double.isNaN(guns))
          .max()
          .orElse(catalogue.number(Setting.GUNS));
    }

    private void number(JobFigure figure, double value) {
      figures.put(figure, new Figure.Choice(value));
    }

    private void live(JobFigure figure, Expr formula) {
      figures.put(figure, new Figure.Live(formula));
    }

    private Expr at(JobFigure figure) {
      return Expr.at(figure, figures.get(figure).number());
    }

    private Expr rate(Task task) {
      return entry(catalogue.row(task), "Rate");
    }

    private Expr setting(Setting setting) {
      return entry(catalogue.row(setting), "Value");
    }

    /** A figure as Basis shows it, in the units of the job. */
    private Expr entry(Row row, String heading) {
      Entry entry = row.get(heading);
      double shown = entry.quantity().shown(entry.number(), bid.system());
      return Expr.at(EntryPlace.of(row, heading), shown);
    }
  }
}
