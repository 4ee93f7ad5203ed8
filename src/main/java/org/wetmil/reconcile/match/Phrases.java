package org.wetmil.reconcile.match;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import org.wetmil.catalogue.Names;

/**
 * Finds known names in a text, word by word. Of names that lie inside one another the longest is
 * found; of names that overlap, the last one, since that is what the text is about: an interior
 * latex primer is a primer.
 */
final class Phrases {
  private static final Pattern MARKS = Pattern.compile("\\p{M}+");
  private static final Pattern OTHER = Pattern.compile("[^\\p{L}\\p{N}]+");

  private final Map<String, List<Phrase>> byFirstWord = new HashMap<>();
  private final Set<String> known = new HashSet<>();

  private record Phrase(List<String> words, String name) {}

  private record Span(int from, int to, Phrase phrase) {}

  void add(String name) {
    List<String> words = words(name);
    if (!words.isEmpty() && known.add(String.join(" ", words))) {
      byFirstWord
          .computeIfAbsent(words.get(0), first -> new ArrayList<>())
          .add(new Phrase(words, String.join(" ", words)));
    }
  }

  /** Keys of the names found, in the text's order. */
  Set<String> find(String text) {
    List<String> words = words(text);
    List<Span> spans = new ArrayList<>();
    for (int i = 0; i < words.size(); i++) {
      for (Phrase phrase : byFirstWord.getOrDefault(words.get(i), List.of())) {
        int end = i + phrase.words().size();
        if (end <= words.size() && words.subList(i, end).equals(phrase.words())) {
          spans.add(new Span(i, end, phrase));
        }
      }
    }
    Set<String> found = new LinkedHashSet<>();
    for (Span span : spans) {
      if (spans.stream().noneMatch(other -> hides(other, span))) {
        found.add(span.phrase().name());
      }
    }
    return found;
  }

  private static boolean hides(Span other, Span span) {
    boolean longer = other.to - other.from > span.to - span.from;
    boolean contains = longer && other.from <= span.from && span.to <= other.to;
    boolean overlapsLater = span.from < other.from && other.from < span.to && span.to < other.to;
    return contains || overlapsLater;
  }

  /** What spellings of one name have in common; accents go, punctuation counts as a space. */
  static String key(String text) {
    return String.join(" ", words(text));
  }

  private static List<String> words(String text) {
    String bare = MARKS.matcher(Normalizer.normalize(text, Normalizer.Form.NFD)).replaceAll("");
    String plain = Names.key(OTHER.matcher(bare).replaceAll(" "));
    return plain.isEmpty() ? List.of() : List.of(plain.split(" "));
  }
}
