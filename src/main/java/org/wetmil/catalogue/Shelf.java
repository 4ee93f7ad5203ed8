package org.wetmil.catalogue;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.stream.Stream;

/** Typed views of one table's rows, made once, and found by a name or another word for it. */
final class Shelf<T> {
  private final Table table;
  private final String title;
  private final Map<String, T> byKey = new HashMap<>();
  private final Map<String, Lookup<T>> known = new ConcurrentHashMap<>();

  Shelf(Table table, Function<Row, T> view) {
    this.table = table;
    this.title = table.spec().name();
    table.rows().forEach(row -> byKey.put(Names.key(row.name()), view.apply(row)));
  }

  Lookup<T> look(String name) {
    if (name.isEmpty()) {
      return new Lookup.Blank<>();
    }
    Lookup<T> before = known.get(name);
    return before != null ? before : known.computeIfAbsent(name, this::find);
  }

  private Lookup<T> find(String name) {
    String key = Names.key(name);
    if (key.isEmpty()) {
      // a dash or a fixed space stands for nothing
      return new Lookup.Blank<>();
    }
    T direct = byKey.get(key);
    if (direct != null) {
      return new Lookup.Found<>(direct, false);
    }
    Optional<OtherWords.Word> word = OtherWords.find(title, name);
    if (word.isPresent() && byKey.get(Names.key(word.get().means())) != null) {
      T meant = byKey.get(Names.key(word.get().means()));
      return new Lookup.Found<>(meant, word.get().ambiguous());
    }
    if (word.isPresent() && word.get().ask()) {
      return new Lookup.Unknown<>(name, word.get().meanings());
    }
    List<String> near = Names.nearest(name, names(true));
    return new Lookup.Unknown<>(
        name, apart(near.isEmpty() ? Names.nearest(name, names(false)) : near));
  }

  /** English names and words, or those of other languages, which only their speakers misspell. */
  private Stream<String> names(boolean english) {
    Stream<String> words =
        OtherWords.of(title).stream()
            .filter(word -> word.isEnglish() == english)
            .map(OtherWords.Word::key);
    return english ? Stream.concat(table.rows().stream().map(Row::name), words) : words;
  }

  /** Of names that mean one row only the nearest. */
  private List<String> apart(List<String> nearest) {
    Set<String> seen = new HashSet<>();
    return nearest.stream()
        .filter(
            each ->
                seen.add(
                    OtherWords.find(title, each)
                        .map(OtherWords.Word::means)
                        .orElse(Names.key(each))))
        .toList();
  }
}
