package org.wetmil.catalogue;

/** A machine as the estimator describes it; what is not stated is NaN and sets no limit. */
public record Sprayer(
    Row row,
    String name,
    double greatestFlowGpm,
    double greatestOrificeThou,
    double greatestPsi,
    double guns,
    double hoseBoreIn,
    double hoseLengthFt,
    double riseFt,
    double filterMesh) {

  static Sprayer of(Row row) {
    return new Sprayer(
        row,
        row.name(),
        row.number("Greatest flow"),
        // orifices go by whole thousandths, which a rating in millimetres only comes close to
        Math.rint(row.number("Greatest orifice")),
        row.number("Greatest pressure"),
        row.number("Guns"),
        row.number("Hose bore"),
        row.number("Hose length"),
        row.number("Rise"),
        row.number("Filter"));
  }

  /** Guns that it feeds; the usual number where it states none. */
  public double gunsOr(double usual) {
    return Double.isNaN(guns) ? usual : guns;
  }

  public boolean hasHose() {
    return hoseBoreIn > 0 && hoseLengthFt > 0;
  }
}
