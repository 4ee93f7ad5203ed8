package org.wetmil.estimate;

/** Why a tip was not taken: for each that was not there is one reason, the first that applies. */
public enum WhyNot {
  /** Listed as on hand with none left, or not listed where tips are, or not in stock. */
  NOT_AT_HAND,
  /** No guard on hand takes its fit. */
  NO_GUARD,
  /** The orifice is finer than the finest that the coating passes. */
  BELOW_LEAST,
  /** The orifice is larger than the greatest usually taken for the coating. */
  ABOVE_GREATEST,
  /** Finer than usually taken, and not looked at, since a usual one meets the film. */
  FINER_NOT_NEEDED,
  /** The orifice is larger than the sprayer takes. */
  ABOVE_SPRAYER,
  /** The pump does not keep up with all guns, its reserve included. */
  PAST_PUMP,
  /** Nothing comes to the tip: hose and lift take the whole pressure. */
  NO_FLOW,
  /** The fan is wider than suits the surface. */
  WIDER_THAN_SUITS,
  /** The fan is wider than the work. */
  WIDER_THAN_WORK,
  /** All fans are too wide, and this is not the narrowest. */
  NOT_NARROWEST,
  /** The fan is too narrow to cover narrow work in one stroke. */
  DOES_NOT_COVER,
  /** A narrower fan covers the narrow work. */
  WIDER_THAN_NEEDED,
  /** No fan covers the narrow work, and this is not the widest. */
  NOT_WIDEST,
  /** At a pace inside the band its film is outside the coating's range. */
  FILM_OUTSIDE,
  /** Its film is further from the target. */
  FILM_FURTHER,
  /** Finer than usually taken, and its film comes no nearer the target. */
  FINER_NO_NEARER,
  /** As near the target, with a narrower fan. */
  NARROWER_FAN,
  /** As near the target with the same fan, at a pace further from the easy one. */
  PACE_FURTHER,
  /** As good in all else, with a larger orifice. */
  LARGER_ORIFICE;

  /** Whether it lost by its film or pace, rather than before those were compared. */
  public boolean isCompared() {
    return compareTo(FILM_OUTSIDE) >= 0;
  }
}
