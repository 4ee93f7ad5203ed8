package org.wetmil.workbook.read.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.wetmil.measure.DecimalMark;
import org.wetmil.measure.LengthText;
import org.wetmil.measure.Typed;
import org.wetmil.quantity.Unit;

/** Two or three lengths in one cell: {@code 7.5 x 6 m}, {@code 12'6" x 9'}. */
public final class SizeText {
  private static final Pattern TIMES =
      Pattern.compile("(?<=[\\d\\s\"'”″’′a-z.])\\s*[xX×*]\\s*(?=[\\d.])");

  private SizeText() {}

  /** Whether a text is several lengths. */
  public static boolean isSize(String text) {
    return read(text, DecimalMark.UNKNOWN).isPresent();
  }

  /** The lengths, each with its unit; a unit behind the last holds for those without one. */
  public static Optional<List<Typed.Value>> read(String text, DecimalMark mark) {
    String[] parts = TIMES.split(text.strip(), -1);
    if (parts.length < 2 || parts.length > 3) {
      return Optional.empty();
    }
    List<Typed.Value> sizes = new ArrayList<>();
    for (String part : parts) {
      if (!(LengthText.read(part, mark) instanceof Typed.Value value) || value.value() <= 0) {
        return Optional.empty();
      }
      sizes.add(value);
    }
    Optional<Unit> last = sizes.get(sizes.size() - 1).unit();
    sizes.replaceAll(each -> each.unit().isPresent() ? each : new Typed.Value(each.value(), last));
    return Optional.of(sizes);
  }
}
