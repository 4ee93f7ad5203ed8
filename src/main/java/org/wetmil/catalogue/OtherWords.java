package org.wetmil.catalogue;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
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

  /** English first: a word that two languages share means what it means there. */
  static final List<String> FILES =
      List.of("other-words.csv", "other-words-de.csv", "other-words-es.csv");

  private static final Pattern MARKS = Pattern.compile("\\p{M}+");
  private static final Map<String, List<Word>> BY_TABLE = load();

  private OtherWords() {}

  /**
   * Another trade word for a name in a table.
   *
   * @param key as {@link Names#key} gives it
   * @param english whether it may be offered for a misspelt word that is of no language known
   */
  record Word(String key, String means, boolean ambiguous, boolean english) {}

  /** The words of a table, in the order of the files. */
  static List<Word> of(String table) {
    return BY_TABLE.getOrDefault(table, List.of());
  }

  static Optional<Word> find(String table, String name) {
    String key = Names.key(name);
    return of(table).stream().filter(word -> word.key().equals(key)).findFirst();
  }

  private static Map<String, List<Word>> load() {
    Map<String, List<Word>> words = new HashMap<>();
    Set<List<String>> known = new HashSet<>();
    for (String file : FILES) {
      for (CsvText.Row csv : BuiltIn.plain(file, HEADINGS)) {
        String table = csv.fields().get(0);
        spellings(csv.fields().get(1))
            .map(Names::key)
            .filter(key -> known.add(List.of(table, key)))
            .map(
                key ->
                    new Word(
                        key,
                        csv.fields().get(2),
                        csv.fields().get(3).equals("yes"),
                        file.equals(FILES.get(0))))
            .forEach(word -> words.computeIfAbsent(table, any -> new ArrayList<>()).add(word));
      }
    }
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
