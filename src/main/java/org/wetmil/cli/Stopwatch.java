package org.wetmil.cli;

import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.LongSupplier;
import org.wetmil.jobs.FillReport;
import org.wetmil.jobs.FillRun;

/** Measures how long each workbook takes, whatever is filled beside it. */
final class Stopwatch implements FillRun.Filler {
  private static final double NANOS = 1e9;

  private final FillRun.Filler filler;
  private final LongSupplier clockNs;
  private final Map<Path, Double> seconds = new ConcurrentHashMap<>();

  /**
   * @param clockNs a clock, ns
   */
  Stopwatch(FillRun.Filler filler, LongSupplier clockNs) {
    this.filler = filler;
    this.clockNs = clockNs;
  }

  @Override
  public FillReport fill(Path input, Path output, Path customer) {
    long begunNs = clockNs.getAsLong();
    try {
      return filler.fill(input, output, customer);
    } finally {
      seconds.put(input, (clockNs.getAsLong() - begunNs) / NANOS);
    }
  }

  /** What a workbook took, s; 0 for one that was never begun. */
  double seconds(Path input) {
    return seconds.getOrDefault(input, 0.0);
  }
}
