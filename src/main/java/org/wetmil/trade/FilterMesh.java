package org.wetmil.trade;

import java.util.Arrays;
import java.util.Comparator;
import java.util.Optional;
import org.wetmil.quantity.Require;
import org.wetmil.quantity.Unit;

/**
 * Filters by mesh number, with the opening of the woven wire.
 *
 * <p>Openings are those of ASTM E11 / ISO 565 test sieves, from memory. Mesh numbers only: colours
 * are makers' codes.
 */
public enum FilterMesh {
  MESH_30(30, 600),
  MESH_50(50, 300),
  MESH_60(60, 250),
  MESH_100(100, 150),
  MESH_200(200, 75);

  private final int number;
  private final double openingMicron;

  FilterMesh(int number, double openingMicron) {
    this.number = number;
    this.openingMicron = openingMicron;
  }

  /** Wires per inch. */
  public int number() {
    return number;
  }

  /** Clear width of an opening in micrometres. */
  public double openingMicron() {
    return openingMicron;
  }

  /**
   * The coarsest filter that still holds back what would clog an orifice.
   *
   * @param orificeThou diameter of the orifice in thousandths of an inch, above 0
   * @param share greatest opening against the orifice, above 0
   * @return the mesh, or empty when even the finest is too coarse
   */
  public static Optional<FilterMesh> coarsestFor(double orificeThou, double share) {
    Require.positive("orificeThou", orificeThou);
    Require.positive("share", share);
    double orificeMicron = Unit.THOU.to(Unit.MICROMETRE, orificeThou);
    double mostMicron = share * orificeMicron;
    return Arrays.stream(values())
        .filter(mesh -> mesh.openingMicron <= mostMicron)
        .max(Comparator.comparingDouble(FilterMesh::openingMicron));
  }
}
