package org.wetmil.audit.past;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * What an owner wrote down about one job, finest first: a line's own figure wins over its
 * coating's, a coating's over the job's. A coarser figure, less what the finer ones took of it,
 * belongs to the lines that have none.
 *
 * @param byLine a figure for each line; NaN where the line states none
 * @param byCoating figures of a coating, by its name
 * @param job the job's figure; NaN when there is none
 */
public record StatedActuals(
    Measure measure,
    List<PastLine> lines,
    List<Double> byLine,
    Map<String, Double> byCoating,
    double job) {

  /** Comparable pieces that cover no line twice. */
  public List<Actual> actuals() {
    List<Actual> actuals = new ArrayList<>();
    Map<String, List<PastLine>> open = new LinkedHashMap<>();
    Map<String, Double> left = new LinkedHashMap<>(byCoating);
    double jobLeft = job;
    for (int i = 0; i < lines.size(); i++) {
      PastLine line = lines.get(i);
      double own = byLine.get(i);
      if (Double.isNaN(own)) {
        open.computeIfAbsent(line.coating(), coating -> new ArrayList<>()).add(line);
        continue;
      }
      actuals.add(new Actual(measure, List.of(line), own));
      left.computeIfPresent(line.coating(), (coating, figure) -> figure - own);
      jobLeft -= byCoating.containsKey(line.coating()) ? 0 : own;
    }
    List<PastLine> rest = new ArrayList<>();
    for (Map.Entry<String, List<PastLine>> coating : open.entrySet()) {
      if (left.containsKey(coating.getKey())) {
        actuals.add(new Actual(measure, coating.getValue(), left.get(coating.getKey())));
      } else {
        rest.addAll(coating.getValue());
      }
    }
    jobLeft -= byCoating.values().stream().mapToDouble(Double::doubleValue).sum();
    if (!rest.isEmpty() && !Double.isNaN(jobLeft)) {
      actuals.add(new Actual(measure, rest, jobLeft));
    }
    return actuals;
  }

  /** The lines' own sum over the job's figure; NaN unless every line and the job state one. */
  public double linesOverJob() {
    double sum = IntStream.range(0, lines.size()).mapToDouble(byLine::get).sum();
    return lines.isEmpty() ? Double.NaN : sum / job;
  }
}
