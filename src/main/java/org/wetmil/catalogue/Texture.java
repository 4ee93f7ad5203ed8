package org.wetmil.catalogue;

/** How rough a surface is: what it multiplies paint and spray hours by. */
public record Texture(Row row, String name, double roughness, boolean rough) {
  /** The texture that a blank cell means. */
  public static final String SMOOTH = "smooth";

  static Texture of(Row row) {
    boolean rough =
        row.get("Rough").isStated() ? row.isYes("Rough") : !Names.key(row.name()).equals(SMOOTH);
    return new Texture(row, row.name(), row.number("Roughness"), rough);
  }
}
