package org.wetmil.catalogue;

/** How rough a surface is: what it multiplies paint and spray hours by. */
public record Texture(Row row, String name, double roughness, boolean rough) {
  static Texture of(Row row) {
    return new Texture(row, row.name(), row.number("Roughness"), row.isYes("Rough"));
  }
}
