package org.wetmil.catalogue;

import java.util.Optional;

/** The narrowest dimension of the work on a surface: one of the line's dimensions, or fixed. */
public sealed interface Narrowest {
  /** One of the dimensions that the line states. */
  enum Of implements Narrowest {
    HEIGHT,
    WIDTH,
    LESSER,
    GIRTH,
    HALF_GIRTH
  }

  /** The same for every piece. */
  record Fixed(double inches) implements Narrowest {}

  /** One of the dimensions by its name. */
  static Optional<Narrowest> find(String text) {
    return switch (Names.key(text)) {
      case "height" -> Optional.of(Of.HEIGHT);
      case "width" -> Optional.of(Of.WIDTH);
      case "lesser" -> Optional.of(Of.LESSER);
      case "girth" -> Optional.of(Of.GIRTH);
      case "half girth" -> Optional.of(Of.HALF_GIRTH);
      default -> Optional.empty();
    };
  }

  /** What a table's cell says, where a width is a number of inches. */
  static Narrowest of(String text) {
    return find(text).orElseGet(() -> new Fixed(Double.parseDouble(text)));
  }
}
