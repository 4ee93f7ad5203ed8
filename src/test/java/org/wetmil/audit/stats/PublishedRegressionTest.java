package org.wetmil.audit.stats;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wetmil.Published;

class PublishedRegressionTest {

  static Stream<Published.Row> certified() {
    return Published.rows("nist-regression.csv").stream();
  }

  @ParameterizedTest
  @MethodSource("certified")
  void aLineHasItsCertifiedFigures(Published.Row certified) {
    Line line = fit(certified.text("set"));
    certified.check(
        switch (certified.text("figure")) {
          case "intercept" -> line.intercept();
          case "slope" -> line.slope();
          case "slope error" -> line.slopeError();
          default -> line.scatter();
        });
  }

  private static Line fit(String set) {
    List<Published.Row> points =
        Published.rows("nist-regression-points.csv").stream()
            .filter(point -> point.text("set").equals(set))
            .toList();
    double[] x = points.stream().mapToDouble(point -> point.number("x")).toArray();
    double[] y = points.stream().mapToDouble(point -> point.number("y")).toArray();
    return set.equals("Norris") ? Line.through(x, y) : Line.throughOrigin(x, y);
  }
}
