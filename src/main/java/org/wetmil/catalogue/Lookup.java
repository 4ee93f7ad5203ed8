package org.wetmil.catalogue;

import java.util.List;

/** What came of looking a name up in a table. */
public sealed interface Lookup<T> {

  /**
   * Found.
   *
   * @param ambiguous whether the word has more than one meaning in the trade
   */
  record Found<T>(T value, boolean ambiguous) implements Lookup<T> {}

  /** Not found; the nearest names, best first. */
  record Unknown<T>(String name, List<String> nearest) implements Lookup<T> {}

  /** Nothing was written. */
  record Blank<T>() implements Lookup<T> {}

  default T orNull() {
    return this instanceof Found<T> found ? found.value() : null;
  }
}
