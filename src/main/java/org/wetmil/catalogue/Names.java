package org.wetmil.catalogue;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Compares names as estimators write them: any case, singular or plural, hyphen or space. */
public final class Names {
  /** Spaces, hyphens and the dashes that programs make of hyphens. */
  private static final Pattern GAPS =
      Pattern.compile("[\\s\\u00a0\\u2007\\u202f_\\-\\u2010-\\u2015\\u2212]+");

  /** What is longer is a remark, not a misspelt name. */
  private static final int LONGEST = 60;

  private Names() {}

  /** What two spellings of one name have in common. */
  public static String key(String name) {
    String lower = name.toLowerCase(Locale.ROOT);
    String plain = isSpaced(lower) ? lower : GAPS.matcher(lower).replaceAll(" ").strip();
    if (plain.indexOf(' ') < 0) {
      return singular(plain);
    }
    StringBuilder key = new StringBuilder(plain.length());
    for (String word : plain.split(" ")) {
      key.append(key.isEmpty() ? "" : " ").append(singular(word));
    }
    return key.toString();
  }

  /**
   * Whether a name is of ASCII without hyphens and has single spaces between words, as most are.
   */
  private static boolean isSpaced(String name) {
    boolean before = false;
    for (int i = 0; i < name.length(); i++) {
      char c = name.charAt(i);
      boolean sign = c > ' ' && c < 0x7F && c != '-' && c != '_';
      if (!sign && (c != ' ' || !before)) {
        return false;
      }
      before = sign;
    }
    return before || name.isEmpty();
  }

  /** Doors are a door, sashes a sash, varnishes a varnish and epoxies an epoxy; gloss is gloss. */
  private static String singular(String word) {
    String stem =
        word.length() > 3 && word.endsWith("s") && !word.endsWith("ss")
            ? word.substring(0, word.length() - 1)
            : word;
    if (stem.length() > 3 && stem.endsWith("ie")) {
      return stem.substring(0, stem.length() - 2) + "y";
    }
    // the e goes in the singular too (niche), so that both numbers have one key
    return stem.endsWith("she")
            || stem.endsWith("che")
            || stem.endsWith("xe")
            || stem.endsWith("sse")
        ? stem.substring(0, stem.length() - 1)
        : stem;
  }

  /**
   * Up to three names that another may have meant, nearest first: those it is a misspelling of, of
   * whose own letters a third may differ; else those that it says among other words, as a concrete
   * block wall says wall and a latex eggshell latex; else those that share a word and half of all
   * letters.
   */
  public static List<String> nearest(String name, Stream<String> known) {
    String key = key(name);
    if (key.length() > LONGEST) {
      return List.of();
    }
    List<Near> all =
        known
            .map(other -> Near.of(key, other))
            .sorted(Comparator.comparingInt(Near::distance).thenComparing(Near::name))
            .toList();
    // of names that are said in it the longest says most, and differs in the fewest letters
    return Stream.<Predicate<Near>>of(Near::isMisspelt, Near::isSaid, Near::isHalfAlike)
        .map(kind -> all.stream().filter(kind).limit(3).map(Near::name).toList())
        .filter(found -> !found.isEmpty())
        .findFirst()
        .orElse(List.of());
  }

  /**
   * A known name beside the one that was written.
   *
   * @param shared letters of whole words that both have
   */
  private record Near(String name, String key, String wanted, int distance, int shared) {
    static Near of(String wanted, String name) {
      String key = Names.key(name);
      List<String> words = List.of(key.split(" "));
      int shared =
          Stream.of(wanted.split(" ")).filter(words::contains).mapToInt(String::length).sum();
      return new Near(name, key, wanted, Names.distance(wanted, key), shared);
    }

    boolean isMisspelt() {
      return distance <= Math.max(2, (wanted.length() - shared) / 3);
    }

    /** Whether the name is said by whole words of the one that was written. */
    boolean isSaid() {
      return !key.isEmpty() && (" " + wanted + " ").contains(" " + key + " ");
    }

    boolean isHalfAlike() {
      return shared > 0 && distance <= wanted.length() / 2;
    }
  }

  /** Levenshtein distance: letters to change, add or leave out. */
  static int distance(String a, String b) {
    int[] row = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      row[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      int diagonal = row[0];
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int above = row[j];
        int change = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        row[j] = Math.min(change, 1 + Math.min(above, row[j - 1]));
        diagonal = above;
      }
    }
    return row[b.length()];
  }
}
