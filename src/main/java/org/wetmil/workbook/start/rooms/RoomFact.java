package org.wetmil.workbook.start.rooms;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.wetmil.estimate.InputColumn;
import org.wetmil.quantity.Dimension;
import org.wetmil.workbook.read.heading.Heading;
import org.wetmil.workbook.read.heading.HeadingWords;
import org.wetmil.workbook.read.words.Words;

/** What a room list can say of a room. */
public enum RoomFact {
  ROOM(null, InputColumn.ROOM),
  NUMBER(null, null),
  STOREY(null, InputColumn.FLOOR),
  LENGTH(Dimension.LENGTH, InputColumn.LENGTH),
  WIDTH(Dimension.LENGTH, InputColumn.WIDTH),
  HEIGHT(Dimension.LENGTH, InputColumn.HEIGHT),
  PERIMETER(Dimension.LENGTH, null),
  AREA(Dimension.AREA, InputColumn.AREA),
  GROSS_AREA(Dimension.AREA, null),
  WALL_AREA(Dimension.AREA, null),
  VOLUME(null, null),
  WALL_FINISH(null, null),
  CEILING_FINISH(null, null),
  FLOOR_FINISH(null, null),
  NOTES(null, InputColumn.NOTES);

  private static final Map<String, RoomFact> WORDS = words();
  private static final HeadingWords OF_BIDS = HeadingWords.builtIn(Map.of());

  private final Dimension dimension;
  private final InputColumn column;

  RoomFact(Dimension dimension, InputColumn column) {
    this.dimension = dimension;
    this.column = column;
  }

  private static Map<String, RoomFact> words() {
    Map<String, RoomFact> words = new HashMap<>();
    for (List<String> row : Words.list("room-words.csv", 3)) {
      words.put(Words.key(row.get(1)), valueOf(row.get(0)));
    }
    return words;
  }

  /** Whether it is a length or an area, which are read with a unit. */
  public boolean isMeasure() {
    return dimension != null;
  }

  public Dimension dimension() {
    return dimension;
  }

  /** The fact that a word alone stands for, as attributes are named. */
  public static Optional<RoomFact> find(String word) {
    return Optional.ofNullable(WORDS.get(Words.key(word)));
  }

  /**
   * The fact that a heading of a table names: by the words of room lists, then by those of bids.
   */
  public static Optional<RoomFact> of(Heading heading, List<String> names) {
    return names.stream()
        .flatMap(name -> find(name).stream())
        .findFirst()
        .or(
            () ->
                Stream.of(values())
                    .filter(
                        fact -> fact.column != null && heading.candidates().contains(fact.column))
                    .findFirst());
  }

  /** A heading taken apart by the words of bids. */
  public static Heading heading(int column, String text) {
    return OF_BIDS.heading(column, List.of(text));
  }
}
