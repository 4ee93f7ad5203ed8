package org.wetmil.ledger;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.wetmil.quantity.Unit;

/** The words that ledgers use for headings, kinds of line, units and totals, in three languages. */
final class LedgerWords {
  private static final Pattern MARKS = Pattern.compile("\\p{M}+");
  private static final Pattern BRACKETS = Pattern.compile("[(\\[][^)\\]]*[)\\]]");
  private static final Pattern OTHER = Pattern.compile("[^\\p{L}\\p{N}]+");
  private static final Map<String, Map<String, Word>> GROUPS = load();

  private LedgerWords() {}

  /**
   * A word with its meaning.
   *
   * @param order where it stands in the list, from 0
   */
  record Word(String means, String language, int order) {}

  /** A heading with the column that it stands for. */
  record Heading(LedgerColumn column, String language, int order) {}

  /** What spellings of one word have in common: case, accents and punctuation taken away. */
  static String key(String text) {
    String bare = MARKS.matcher(Normalizer.normalize(text, Normalizer.Form.NFD)).replaceAll("");
    String lower = bare.toLowerCase(Locale.ROOT).replace("#", " no ");
    return OTHER.matcher(lower).replaceAll(" ").strip();
  }

  static Optional<Heading> heading(String text) {
    return find("heading", BRACKETS.matcher(text).replaceAll(" "))
        .map(word -> new Heading(column(word.means()), word.language(), word.order()));
  }

  /** The kind of line that a word names: a title of {@link LineKind}, or {@code transfer}. */
  static Optional<String> kind(String text) {
    return find("kind", text).map(Word::means);
  }

  static Optional<Unit> unit(String text) {
    return find("unit", text).flatMap(word -> Unit.find(word.means()));
  }

  static boolean isContainer(String text) {
    return find("container", text).isPresent();
  }

  static boolean isFiller(String text) {
    return find("filler", text).isPresent();
  }

  /** Whether a text is a totals word, or begins with one as in "Total for May". */
  static boolean isTotal(String text) {
    String key = key(text);
    Map<String, Word> words = GROUPS.get("totals");
    int space = key.indexOf(' ');
    return words.containsKey(key) || (space > 0 && words.containsKey(key.substring(0, space)));
  }

  /** Words for what painters buy and is no coating. */
  static Set<String> otherGoods() {
    return GROUPS.get("other").keySet();
  }

  private static LedgerColumn column(String heading) {
    for (LedgerColumn column : LedgerColumn.values()) {
      if (column.heading().equals(heading)) {
        return column;
      }
    }
    throw new IllegalStateException("ledger-words.csv: no column " + heading);
  }

  private static Optional<Word> find(String group, String text) {
    return Optional.ofNullable(GROUPS.get(group).get(key(text)));
  }

  private static Map<String, Map<String, Word>> load() {
    Map<String, Map<String, Word>> groups = new HashMap<>();
    try (InputStream stream = LedgerWords.class.getResourceAsStream("ledger-words.csv");
        InputStreamReader reader = new InputStreamReader(stream, StandardCharsets.UTF_8)) {
      List<CsvText.Row> rows =
          CsvText.rows(reader).stream()
              .filter(row -> !row.fields().get(0).startsWith("#"))
              .skip(1)
              .toList();
      for (CsvText.Row row : rows) {
        List<String> fields = row.fields();
        Map<String, Word> words =
            groups.computeIfAbsent(fields.get(0), group -> new LinkedHashMap<>());
        Word word = new Word(fields.get(1), fields.get(3), words.size());
        if (words.put(key(fields.get(2)), word) != null) {
          throw new IllegalStateException(
              "ledger-words.csv, line "
                  + row.line()
                  + ": "
                  + fields.get(2)
                  + " stands there twice");
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return groups;
  }
}
