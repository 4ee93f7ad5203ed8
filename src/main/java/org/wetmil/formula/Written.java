package org.wetmil.formula;

import java.util.List;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A formula that somebody wrote, with the places in it that may stand elsewhere when it is written
 * again.
 *
 * @param text as found, without an equals sign
 * @param parts what it is made of; none when it cannot be written again
 */
public record Written(String text, List<Part> parts) {
  private static final Pattern ROW = Pattern.compile("\\d+$");

  public Written {
    parts = List.copyOf(parts);
  }

  /** A piece of a formula. */
  public sealed interface Part {}

  /** What stays as it is. */
  public record Text(String text) implements Part {}

  /**
   * A place.
   *
   * @param row as in an address; empty for the row that the formula stands in
   */
  public record At(Place place, String row) implements Part {}

  public boolean canBeWrittenAgain() {
    return !parts.isEmpty();
  }

  public Stream<Place> places() {
    return parts.stream().filter(At.class::isInstance).map(part -> ((At) part).place());
  }

  /** The formula with its places where they are now. */
  public String print(Function<Place, String> names) {
    StringBuilder out = new StringBuilder();
    for (Part part : parts) {
      if (part instanceof At at) {
        String name = names.apply(at.place());
        out.append(at.row().isEmpty() ? name : ROW.matcher(name).replaceFirst(at.row()));
      } else if (part instanceof Text text) {
        out.append(text.text());
      }
    }
    return out.toString();
  }
}
