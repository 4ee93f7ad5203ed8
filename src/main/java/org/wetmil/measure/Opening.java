package org.wetmil.measure;

import java.util.Locale;
import org.wetmil.quantity.Require;

/**
 * Something that interrupts a painted face, listed once for each face that it interrupts.
 *
 * @param role what kind of interruption it is
 * @param widthM smallest width in m, above 0; of a gap its length
 * @param heightM smallest height in m, above 0; of a gap the girth of the work it interrupts
 * @param count how many of this size, at least 0
 * @param revealM depth in m of the jambs and head painted with this face, 0 when none are
 * @param sill whether the sill is painted with them
 * @param otherFace how the other side of the wall is finished
 * @param id what marks the same opening on two faces; empty when it is not said
 */
public record Opening(
    Role role,
    double widthM,
    double heightM,
    double count,
    double revealM,
    boolean sill,
    OtherFace otherFace,
    String id) {

  public Opening {
    Require.positive("widthM", widthM);
    Require.positive("heightM", heightM);
    Require.notNegative("count", count);
    Require.notNegative("revealM", revealM);
  }

  /** What interrupts the face. */
  public enum Role {
    /** A door, a window or another hole: goes by its area. */
    OPENING,
    /** A column or beam: goes by its narrower side. */
    MEMBER,
    /** A skirting or a row of tiles: goes by its height. */
    PLINTH,
    /** An interruption of work measured by length: goes by its length. */
    GAP
  }

  /** How the other side of the wall is finished. */
  public enum OtherFace {
    SAME,
    DIFFERENT,
    NONE;

    /** Reads {@code same}, {@code different} or {@code none}; blank is none. */
    public static OtherFace of(String word) {
      return word.isBlank() ? NONE : valueOf(word.strip().toUpperCase(Locale.ROOT));
    }
  }

  /** Area of one in m². */
  public double areaM2() {
    return widthM * heightM;
  }

  /** Painted jambs, head and, where it is painted, sill of one in m². */
  public double revealAreaM2() {
    return (2 * heightM + (sill ? 2 : 1) * widthM) * revealM;
  }
}
