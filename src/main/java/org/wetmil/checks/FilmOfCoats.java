package org.wetmil.checks;

import static org.wetmil.estimate.InputColumn.SPECIFIED_FILM;

import java.util.Comparator;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.wetmil.estimate.CoatPlan;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.estimate.InputValue;
import org.wetmil.estimate.Trial;
import org.wetmil.quantity.Count;
import org.wetmil.quantity.Quantity;
import org.wetmil.trade.Film;
import org.wetmil.trade.FilmAcceptance;

/** Which number of coats builds the dry film that a line specifies; each is tried on the line. */
final class FilmOfCoats {
  /** What two ways of computing one film may differ by. */
  private static final double ROUNDING = 1e-9;

  /** Numbers of coats that are tried. */
  private static final int MOST_TRIALS = 8;

  private final Line line;
  private final Trial trial;

  FilmOfCoats(Line line) {
    this.line = line;
    this.trial = new Trial(line.catalogue(), line.filled());
  }

  FilmAcceptance accepted() {
    InputValue specified = line.cell(SPECIFIED_FILM);
    return specified.low() < specified.high()
        ? FilmAcceptance.of(specified.low(), specified.high())
        : FilmAcceptance.of(specified.number(), specified.number());
  }

  /** The dry film that so many coats would build. */
  double dryMil(int coats) {
    return trial.coats(coats).base(FilledColumn.DRY_FILM);
  }

  /** The end of a sentence: the coats that fit, or what the nearest numbers come to. */
  String advice() {
    int least = wanted();
    OptionalInt fitting = near(least).filter(coats -> accepted().holds(dryMil(coats))).findFirst();
    if (fitting.isPresent()) {
      return "plan " + coats(fitting.getAsInt()) + ", which " + builds(fitting.getAsInt());
    }
    String fewer =
        least == 1 ? "" : "%s %s and ".formatted(coats(least - 1), least == 2 ? "runs" : "run");
    return "no number of coats fits, since %s%s %s; change the coating or the tip"
        .formatted(fewer, coats(least), builds(least));
  }

  /** The least number of coats that builds the film without running. */
  int wanted() {
    return CoatPlan.wanted(line.work(), line.catalogue(), line.number(SPECIFIED_FILM));
  }

  private static String coats(int coats) {
    return Count.of(coats, "coat");
  }

  String builds(int coats) {
    return (coats == 1 ? "builds " : "build ") + line.say(Quantity.FILM, dryMil(coats));
  }

  /**
   * Numbers that the coating's range of film allows, those first whose coats need not be raised to
   * its least, then those nearest to the planned one.
   */
  private IntStream near(int from) {
    double least = dryOf(line.coating().wetMinMil());
    int to = (int) Math.min(CoatPlan.MOST, Math.ceil(accepted().mostMil() / least));
    int planned = line.filled().coats().coats();
    double specified = line.number(SPECIFIED_FILM);
    return IntStream.rangeClosed(from, Math.max(from, to))
        .boxed()
        .sorted(
            Comparator.comparing((Integer coats) -> specified / coats < least * (1 - ROUNDING))
                .thenComparingInt(coats -> Math.abs(coats - planned))
                .thenComparingInt(coats -> coats))
        .limit(MOST_TRIALS)
        .mapToInt(Integer::intValue);
  }

  private double dryOf(double wetMil) {
    return Film.dryMil(wetMil, line.coating().volumeSolids(), line.work().thinnerShare());
  }
}
