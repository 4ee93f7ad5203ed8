package org.wetmil.catalogue;

/**
 * A coating as the tip, the film and the order need it.
 *
 * @param row where each figure was stated
 * @param named whether the estimator states its solids, rather than the class standing in
 */
public record Coating(
    Row row,
    String name,
    String className,
    int orificeFromThou,
    int orificeToThou,
    int joineryFromThou,
    int leastOrificeThou,
    double volumeSolids,
    double wetMinMil,
    double wetTargetMil,
    double wetMaxMil,
    double densityKgL,
    double viscosityPaS,
    double usualPsi,
    double leastPsi,
    int usualCoats,
    double greatestThinner,
    double thinnerDensityKgL,
    double tipLifeGal,
    double recoatHours,
    boolean heavyDuty,
    boolean solventBorne,
    boolean fillsVoids,
    boolean named) {

  static Coating of(Row row) {
    return new Coating(
        row,
        row.name(),
        row.text("Class"),
        (int) Math.round(row.number("Orifice from")),
        (int) Math.round(row.number("Orifice to")),
        (int) Math.round(row.number("Orifice joinery from")),
        (int) Math.round(row.number("Orifice least")),
        row.number("Volume solids"),
        row.number("Wet film min"),
        row.number("Wet film target"),
        row.number("Wet film max"),
        row.number("Density"),
        row.number("Viscosity"),
        row.number("Usual pressure"),
        row.number("Least pressure"),
        (int) Math.round(row.number("Usual coats")),
        row.number("Greatest thinner"),
        row.number("Thinner density"),
        row.number("Tip life"),
        row.number("Recoat"),
        row.isYes("Heavy duty"),
        row.isYes("Solvent borne"),
        row.isYes("Fills voids"),
        row.get("Volume solids").origin().isYours());
  }

  /** The least orifice usually taken on a surface, in thousandths of an inch. */
  public int usualFromThou(Surface surface) {
    return surface.joinery() ? joineryFromThou : orificeFromThou;
  }

  /** Whether others go over it: a primer or a filler. */
  public boolean isUndercoat() {
    return fillsVoids || isOfClass("primer");
  }

  /** Whether it is of a class of the built-in table, however the class is spelt. */
  public boolean isOfClass(String name) {
    Coating of = Catalogue.builtIn().coating(className).orNull();
    return of != null && of.name().equals(name);
  }
}
