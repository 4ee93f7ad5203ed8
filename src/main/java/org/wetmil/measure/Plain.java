package org.wetmil.measure;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.wetmil.quantity.Unit;

/** Brings the many characters for one mark down to the one on a keyboard. */
final class Plain {
  /** In English, German and Spanish. */
  private static final Set<String> NOT_KNOWN =
      Set.of(
          "",
          "-",
          "--",
          "---",
          "?",
          "n/a",
          "na",
          "n.a.",
          "tbd",
          "tba",
          "unknown",
          "k.a.",
          "k. a.",
          "offen",
          "unbekannt",
          "n/d",
          "s/d",
          "pendiente",
          "desconocido",
          "por definir");

  /** No number is longer; a remark pasted into the cell is not worth taking apart. */
  private static final int LONGEST = 64;

  private Plain() {}

  /** Every space becomes a single plain one, every dash a hyphen, every quote straight. */
  static String text(String raw) {
    return raw == null
        ? ""
        : raw.replaceAll("[\\s\\u00A0\\u2000-\\u200A\\u202F\\u205F\\u3000]+", " ")
            .replaceAll("[\\u2010-\\u2015\\u2212]", "-")
            .replaceAll("[\\u2018-\\u201B\\u2032\\u00B4`]", "'")
            .replaceAll("[\\u201C-\\u201F\\u2033]|''", "\"")
            .strip();
  }

  static boolean isTooLong(String text) {
    return text.length() > LONGEST;
  }

  static boolean isNotKnown(String text) {
    return NOT_KNOWN.contains(text.toLowerCase(Locale.ROOT));
  }

  /** The unit that a word names, also with the full stop of an abbreviation: "ft.". */
  static Optional<Unit> unit(String word) {
    Optional<Unit> unit = Unit.find(word);
    return unit.isEmpty() && word.endsWith(".")
        ? Unit.find(word.substring(0, word.length() - 1))
        : unit;
  }
}
