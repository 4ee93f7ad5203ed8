package org.wetmil.audit.change;

/**
 * Where a paint factor goes. Paint alone cannot tell a loss from a thicker film or a larger area,
 * so the loss takes it unless the owner knows better.
 */
public enum PaintTable {
  /** Stick of a coating on a surface: more paint for the same film. */
  LOSS,
  /** Target wet film of a coating. */
  FILM,
  /** Factor of a surface: the true area over the flat one. */
  AREA
}
