package org.wetmil.catalogue;

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

  static Narrowest of(String text) {
    return switch (Names.key(text)) {
      case "height" -> Of.HEIGHT;
      case "width" -> Of.WIDTH;
      case "lesser" -> Of.LESSER;
      case "girth" -> Of.GIRTH;
      case "half girth" -> Of.HALF_GIRTH;
      default -> new Fixed(Double.parseDouble(text));
    };
  }
}
