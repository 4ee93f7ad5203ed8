package org.wetmil.catalogue;

import java.util.Arrays;
import java.util.Optional;

/** How the dimensions of a line make its area. */
public enum MeasuredBy {
  PERIMETER_X_HEIGHT("perimeter x height"),
  LENGTH_X_WIDTH("length x width"),
  LENGTH_X_HEIGHT("length x height"),
  TRIANGLE("triangle"),
  LENGTH_X_GIRTH("length x girth"),
  COUNT_X_UNIT("count x unit"),
  COUNT_X_SIZE("count x size"),
  COUNT_X_LENGTH_X_GIRTH("count x length x girth");

  private final String words;

  MeasuredBy(String words) {
    this.words = words;
  }

  public String words() {
    return words;
  }

  /** Whether an area is so many pieces of a usual size. */
  boolean goesByPiece() {
    return this == COUNT_X_UNIT || this == COUNT_X_SIZE;
  }

  static Optional<MeasuredBy> find(String words) {
    String key = Names.key(words.replace('×', 'x'));
    return Arrays.stream(values()).filter(way -> Names.key(way.words).equals(key)).findFirst();
  }
}
