package org.wetmil.catalogue;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.wetmil.ledger.CsvText;

/** Other trade words for names in the tables, in the languages built in. */
final class OtherWords {
  static final List<String> HEADINGS = List.of("Table", "Word", "Means", "Ambiguous");

  static final String ENGLISH = "en";

  /**
   * Files by the ISO 639 code of their language, English first: a word that two languages share
   * means what it means there.
   */
  static final Map<String, String> FILES = files();

  private static final Pattern MARKS = Pattern.compile("\\p{M}+");
  private static final Map<String, List<Word>> BY_TABLE = load();

  private OtherWords() {}

  /**
   * Another trade word for a name in a table.
   *
   * @param written as its file writes it
   * @param key of one of its spellings, as {@link Names#key} gives it
   * @param ask whether it has meanings so far apart that none is taken; then they are in a list
   * @param language ISO 639 code
   */
  record Word(
      String written, String key, String means, boolean ambiguous, boolean ask, String language) {
    /** Whether it may be offered for a misspelt word, which is of no language known. */
    boolean isEnglish() {
      return language.equals(ENGLISH);
    }

    List<String> meanings() {
      return List.of(means.split(";"));
    }
  }

  /** The words of a table, in the order of the files. */
  static List<Word> of(String table) {
    return BY_TABLE.getOrDefault(table, List.of());
  }

  static Optional<Word> find(String table, String name) {
    String key = Names.key(name);
    return of(table).stream().filter(word -> word.key().equals(key)).findFirst();
  }

  /** What a language calls the row of a table: the first of its words for it that is clear. */
  static Optional<String> first(String table, String means, String language) {
    String key = Names.key(means);
    return of(table).stream()
        .filter(word -> word.language().equals(language) && !word.ambiguous() && !word.ask())
        .filter(word -> Names.key(word.means()).equals(key))
        .map(Word::written)
        .findFirst();
  }

  private static Map<String, String> files() {
    Map<String, String> files = new LinkedHashMap<>();
    files.put(ENGLISH, "other-words.csv");
    files.put("de", "other-words-de.csv");
    files.put("es", "other-words-es.csv");
    return files;
  }

  private static Map<String, List<Word>> load() {
    Map<String, List<Word>> words = new HashMap<>();
    Set<List<String>> known = new HashSet<>();
    FILES.forEach(
        (language, file) -> {
          for (CsvText.Row csv : BuiltIn.plain(file, HEADINGS)) {
            String table = csv.fields().get(0);
            String written = csv.fields().get(1);
            String means = csv.fields().get(2);
            String clear = csv.fields().get(3);
            spellings(written)
                .map(Names::key)
                .filter(key -> known.add(List.of(table, key)))
                .map(
                    key ->
                        new Word(
                            written,
                            key,
                            means,
                            clear.equals("yes"),
                            clear.equals("ask"),
                            language))
                .forEach(word -> words.computeIfAbsent(table, any -> new ArrayList<>()).add(word));
          }
        });
    return words;
  }

  /** As written, and as keyboards without its letters write it: Wände, Waende, Wande. */
  private static Stream<String> spellings(String word) {
    String plain = word.replace("ß", "ss");
    String digraphs =
        plain
            .replace("ä", "ae")
            .replace("ö", "oe")
            .replace("ü", "ue")
            .replace("Ä", "Ae")
            .replace("Ö", "Oe")
            .replace("Ü", "Ue");
    String bare = MARKS.matcher(Normalizer.normalize(plain, Normalizer.Form.NFD)).replaceAll("");
    return Stream.of(word, plain, digraphs, bare).distinct();
  }
}
