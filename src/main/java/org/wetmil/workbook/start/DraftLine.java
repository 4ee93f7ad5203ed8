package org.wetmil.workbook.start;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.wetmil.estimate.InputColumn;

/** A bid line being drafted: what is known of it, what is missing, and why it stands as it does. */
final class DraftLine {
  /** Begins the notes of a line that lacks something; what marks its cells looks for it. */
  static final String TO_FILL_IN = "To fill in: ";

  /** Stands in a cell that must not be taken as blank; what marks cells looks for it, too. */
  static final String ASKED = "fill in";

  private final Map<InputColumn, Double> numbers = new EnumMap<>(InputColumn.class);
  private final Map<InputColumn, String> words = new EnumMap<>(InputColumn.class);
  private final Set<InputColumn> needed = new LinkedHashSet<>();
  private final Set<InputColumn> asked = new LinkedHashSet<>();
  private final List<String> notes = new ArrayList<>();

  DraftLine(String room, String surface) {
    put(InputColumn.ROOM, room);
    put(InputColumn.SURFACE, surface);
  }

  /** Sets a size in the kept unit of its column; one that is not known stays blank. */
  DraftLine put(InputColumn column, double base) {
    if (!Double.isNaN(base)) {
      numbers.put(column, base);
    }
    return this;
  }

  DraftLine put(InputColumn column, String word) {
    if (!word.isEmpty()) {
      words.put(column, word);
    }
    return this;
  }

  /** Keeps the line out of the totals until somebody decides. */
  void leaveOut() {
    put(InputColumn.INCLUDE, "no");
  }

  boolean isLeftOut() {
    return words.containsKey(InputColumn.INCLUDE);
  }

  void count(int count) {
    numbers.put(InputColumn.COUNT, (double) count);
  }

  /** Leaves a cell blank after all. */
  void empty(InputColumn column) {
    numbers.remove(column);
  }

  /** Requires a column where a blank cell would be taken for another measure: the cell says so. */
  void ask(InputColumn column) {
    require(column);
    asked.add(column);
  }

  /** Says that the line cannot be computed without a column. */
  void require(InputColumn column) {
    needed.add(column);
  }

  void note(String sentence) {
    if (!sentence.isEmpty()) {
      notes.add(sentence);
    }
  }

  Map<InputColumn, Double> numbers() {
    return numbers;
  }

  /** The words, the notes among them. */
  Map<InputColumn, String> words() {
    Map<InputColumn, String> all = new EnumMap<>(words);
    asked.forEach(column -> all.put(column, ASKED));
    List<String> said = new ArrayList<>();
    List<InputColumn> missing = missing();
    if (!missing.isEmpty()) {
      said.add(TO_FILL_IN + headings(missing));
    }
    said.addAll(notes);
    if (isLeftOut()) {
      said.add("Left out; to have it painted, fill in " + headings(blank()) + " and empty Include");
    }
    if (!said.isEmpty()) {
      all.put(InputColumn.NOTES, String.join(". ", said) + ".");
    }
    return all;
  }

  /** Columns that the line needs and the list does not tell; none as long as it is left out. */
  List<InputColumn> missing() {
    return isLeftOut() ? List.of() : blank();
  }

  private static String headings(List<InputColumn> columns) {
    return String.join(", ", columns.stream().map(InputColumn::heading).toList());
  }

  private List<InputColumn> blank() {
    return needed.stream()
        .filter(column -> !numbers.containsKey(column) && !words.containsKey(column))
        .toList();
  }
}
