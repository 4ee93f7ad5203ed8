package org.wetmil.estimate.job;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.wetmil.estimate.FilledBid;
import org.wetmil.estimate.FilledLine;

/**
 * What the recommended tips would save against the planned ones over the lines that count.
 *
 * @param switches the lines whose planned tip is not the recommended one
 */
public record Switching(List<TipSwitch> switches) {
  public Switching {
    switches = List.copyOf(switches);
  }

  public static Switching of(FilledBid filled) {
    return new Switching(
        filled
            .lines()
            .filter(FilledLine::isCounted)
            .flatMap(line -> TipSwitch.of(line).stream())
            .toList());
  }

  public int lines() {
    return switches.size();
  }

  public double plannedGal() {
    return sum(each -> each.planned().paintGal());
  }

  public double recommendedGal() {
    return sum(each -> each.recommended().paintGal());
  }

  public double plannedHours() {
    return sum(each -> each.planned().sprayHours());
  }

  public double recommendedHours() {
    return sum(each -> each.recommended().sprayHours());
  }

  /** Paint saved by switching, in gallons; below 0 where the planned tips lay less. */
  public double savedGal() {
    return plannedGal() - recommendedGal();
  }

  /** Person-hours of spraying saved by switching; below 0 where the planned tips are faster. */
  public double savedHours() {
    return plannedHours() - recommendedHours();
  }

  private double sum(ToDoubleFunction<TipSwitch> figure) {
    return switches.stream().mapToDouble(figure).sum();
  }
}
