package org.wetmil.workbook.read.heading;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.estimate.InputColumn;
import org.wetmil.quantity.Dimension;
import org.wetmil.quantity.Unit;
import org.wetmil.workbook.read.words.Words;

/** Which columns a heading may name: its declared name, other trade words, the estimator's own. */
public final class HeadingWords {
  private static final int LETTERS_TO_TELL = 3;
  private static final Map<String, InputColumn> DECLARED =
      Arrays.stream(InputColumn.values())
          .collect(Collectors.toMap(column -> Words.key(column.heading()), column -> column));
  private static final Map<String, Set<InputColumn>> BUILT_IN = builtIn();
  private static final Set<String> FILLED =
      Arrays.stream(FilledColumn.values())
          .map(each -> Words.key(each.heading()))
          .collect(Collectors.toSet());
  private static final Pattern AT_GUN = Pattern.compile("(?iu)\\b(?:gun|tip)\\b|pistol");
  private static final Set<String> UNIT_COLUMN =
      Stream.of(
              "Unit",
              "Units",
              "UoM",
              "U/M",
              "Unit of measure",
              "Measure unit",
              "Einheit",
              "ME",
              "Unidad",
              "Unidad de medida")
          .map(Words::key)
          .collect(Collectors.toSet());

  private final Map<String, Set<InputColumn>> words;
  private final Set<String> beginnings;
  private final Map<String, HeadingText> taken = new HashMap<>();
  private final Map<List<String>, Heading> stacked = new HashMap<>();
  private final Map<String, Boolean> known = new HashMap<>();
  private final Map<String, Boolean> filled = new HashMap<>();

  private HeadingWords(Map<String, Set<InputColumn>> words) {
    this.words = words;
    this.beginnings =
        words.keySet().stream().map(HeadingWords::beginning).collect(Collectors.toSet());
  }

  /** The words that come with the program. */
  public static HeadingWords builtIn(Map<String, InputColumn> own) {
    Map<String, Set<InputColumn>> words = new HashMap<>(BUILT_IN);
    own.forEach((word, column) -> words.put(Words.key(word), Set.of(column)));
    return new HeadingWords(words);
  }

  private static Map<String, Set<InputColumn>> builtIn() {
    Map<String, Set<InputColumn>> words = new LinkedHashMap<>();
    for (List<String> row : Words.list("headings.csv", 3)) {
      words
          .computeIfAbsent(Words.key(row.get(1)), any -> new TreeSet<>())
          .add(column(row.get(0)).orElseThrow());
    }
    DECLARED.forEach((key, column) -> words.put(key, Set.of(column)));
    return words;
  }

  /** The column of a declared heading. */
  public static Optional<InputColumn> column(String heading) {
    return Optional.ofNullable(DECLARED.get(Words.key(heading)));
  }

  /** The heading of a column of the sheet, whose stacked texts are given from top to bottom. */
  public Heading heading(int column, List<String> stack) {
    return stacked.computeIfAbsent(List.copyOf(stack), this::heading).at(column);
  }

  private Heading heading(List<String> stack) {
    List<HeadingText> texts = stack.stream().map(this::apart).collect(Collectors.toList());
    Optional<Unit> below = Optional.empty();
    if (texts.size() > 1 && texts.get(texts.size() - 1).bare()) {
      below = texts.remove(texts.size() - 1).unit();
    }
    String shown = texts.stream().map(HeadingText::text).collect(Collectors.joining(" / "));
    Optional<Unit> own = texts.get(texts.size() - 1).unit();
    Set<InputColumn> candidates = candidates(texts, own);
    Optional<Unit> around = below.or(() -> unitAbove(texts));
    Optional<Unit> unit = own.or(() -> around.filter(each -> anyFits(candidates, each)));
    boolean atGun = AT_GUN.matcher(shown).find();
    return new Heading(0, shown, List.copyOf(candidates), unit, atGun);
  }

  /** Whether a heading is that of a column of units. */
  public static boolean isUnitColumn(Heading heading) {
    return UNIT_COLUMN.contains(Words.key(heading.text()));
  }

  /** Whether a single text is known as a heading. */
  boolean isKnown(String text) {
    return beginnings.contains(beginning(text)) && known.computeIfAbsent(text, this::isWord);
  }

  /** Whether a heading is named as a column that a fill writes. */
  boolean isFilled(Heading heading) {
    return filled.computeIfAbsent(
        heading.text(),
        text ->
            HeadingText.of(text).names().stream()
                .anyMatch(name -> FILLED.contains(Words.key(name))));
  }

  private boolean isWord(String text) {
    return apart(text).names().stream().anyMatch(name -> words.containsKey(Words.key(name)));
  }

  /** The first letters of a text: most texts of a long sheet begin as no heading does. */
  private static String beginning(String text) {
    StringBuilder letters = new StringBuilder();
    for (int i = 0; i < text.length() && letters.length() < LETTERS_TO_TELL; i++) {
      char letter = text.charAt(i);
      if (Character.isLetter(letter)) {
        letters.append(Character.toLowerCase(letter));
      } else if (!letters.isEmpty()) {
        break;
      }
    }
    return letters.toString();
  }

  private HeadingText apart(String raw) {
    return taken.computeIfAbsent(raw, HeadingText::of);
  }

  /** The lowest text speaks first, together with those above it: Mask over Edge is a mask edge. */
  private Set<InputColumn> candidates(List<HeadingText> texts, Optional<Unit> unit) {
    int last = texts.size() - 1;
    List<String> names = new ArrayList<>();
    for (int from = 0; from < last; from++) {
      StringBuilder joined = new StringBuilder();
      for (HeadingText text : texts.subList(from, last + 1)) {
        joined.append(text.names().get(text.names().size() - 1)).append(' ');
      }
      names.add(joined.toString());
    }
    for (int i = last; i >= 0; i--) {
      names.addAll(texts.get(i).names());
    }
    for (String name : names) {
      Set<InputColumn> found = fitting(words.getOrDefault(Words.key(name), Set.of()), unit);
      if (!found.isEmpty()) {
        return found;
      }
    }
    return Set.of();
  }

  /**
   * A heading with a unit names no column that is measured in others: Paint (gal) is no coating.
   */
  private static Set<InputColumn> fitting(Set<InputColumn> found, Optional<Unit> unit) {
    if (unit.isEmpty()) {
      return found;
    }
    return found.stream()
        .filter(column -> fits(column, unit.get()))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static boolean fits(InputColumn column, Unit unit) {
    if (!column.quantity().isNumber()) {
      return false;
    }
    Dimension dimension = column.quantity().base().dimension();
    return dimension == unit.dimension();
  }

  private static boolean anyFits(Set<InputColumn> candidates, Unit unit) {
    return candidates.stream().anyMatch(column -> fits(column, unit));
  }

  private static Optional<Unit> unitAbove(List<HeadingText> texts) {
    for (int i = texts.size() - 2; i >= 0; i--) {
      if (texts.get(i).unit().isPresent()) {
        return texts.get(i).unit();
      }
    }
    return Optional.empty();
  }
}
