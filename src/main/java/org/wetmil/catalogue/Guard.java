package org.wetmil.catalogue;

import java.util.Set;

/** A guard that the contractor owns, with the letters of the tips that seat in it. */
public record Guard(Row row, String name, Set<String> fitsTaken, String sprayer) {

  /** Whether a tip of this fit can be used on a sprayer; a guard without one serves on any. */
  public boolean takes(String fit, String onSprayer) {
    return fitsTaken.contains(Names.key(fit))
        && (sprayer.isBlank() || Names.key(sprayer).equals(Names.key(onSprayer)));
  }
}
