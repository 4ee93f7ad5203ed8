package org.wetmil.catalogue;

import java.util.Locale;

/** How surely a figure is known, from the surest down. */
public enum Kind {
  PUBLISHED,
  DERIVED,
  PRACTICE,
  HOUSE,
  YOURS;

  /** The word printed on Basis. */
  public String word() {
    return switch (this) {
      case PRACTICE -> "common practice";
      case YOURS -> "yours";
      default -> name().toLowerCase(Locale.ROOT);
    };
  }

  /** The word with the source; a source that begins with the word says it alone. */
  public String with(String source) {
    if (source.startsWith(word())) {
      return source;
    }
    return source.isEmpty() ? word() : word() + ": " + source;
  }

  static Kind of(String word) {
    return valueOf(word.strip().toUpperCase(Locale.ROOT));
  }
}
