package org.wetmil.workbook.audit;

import java.util.Arrays;
import java.util.stream.Stream;

/** Round ends of an axis, so that its marks are. */
final class AxisEnds {
  private AxisEnds() {}

  /** Of ratios: at a multiple of the step, with 1 between them. */
  static double[] ratios(Stream<Double> values, double step) {
    double[] all = values.mapToDouble(Double::doubleValue).toArray();
    double low = Math.min(1, Arrays.stream(all).min().orElse(1));
    double high = Math.max(1, Arrays.stream(all).max().orElse(1));
    return new double[] {
      Math.floor((low - step / 2) / step) * step, Math.ceil((high + step / 2) / step) * step
    };
  }

  /** The upper end for amounts from 0. */
  static double amounts(double most) {
    double step = Math.pow(10, Math.floor(Math.log10(most)) - 1) * 5;
    return Math.ceil(most / step) * step;
  }
}
