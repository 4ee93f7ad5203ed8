package org.wetmil.catalogue;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The state of a surface before work, and the preparation it asks for.
 *
 * @param rough whether it suggests a texture
 * @param oldPaint whether paint from before, or what is left of it, may be on the surface
 */
public record Condition(
    Row row, String name, List<Task> preparation, State state, boolean rough, boolean oldPaint) {

  /** What the preparation rules tell apart. */
  public enum State {
    NEW,
    PRIMED,
    BARE,
    PAINTED,
    PEELING
  }

  /** Preparation goes over the area, so only tasks with a rate of area can be named. */
  private static final Set<Task> PREPARATION =
      EnumSet.of(Task.DUST, Task.DUST_AND_WIPE, Task.LIGHT_SAND, Task.SCRAPE);

  static Condition of(Row row) {
    State state = State.valueOf(row.text("State").toUpperCase(Locale.ROOT));
    boolean painted = state == State.PAINTED || state == State.PEELING;
    return new Condition(
        row,
        row.name(),
        tasks(row.text("Preparation"))
            .orElseThrow(() -> new IllegalArgumentException(row.text("Preparation"))),
        state,
        row.isYes("Rough"),
        row.get("Old paint").isStated() ? row.isYes("Old paint") : painted);
  }

  /** Tasks as written, separated by semicolons; empty when one is not known as preparation. */
  static Optional<List<Task>> tasks(String text) {
    List<Task> tasks = new ArrayList<>();
    for (String part : text.split(";")) {
      Optional<Task> task = task(part);
      task.ifPresent(tasks::add);
      if (task.isEmpty() && !Names.key(part).equals("none")) {
        return Optional.empty();
      }
    }
    return Optional.of(List.copyOf(tasks));
  }

  /** What a cell under Preparation may say. */
  static String expected() {
    return "none, or some of "
        + PREPARATION.stream().map(Task::title).collect(Collectors.joining(", "))
        + ", separated by semicolons";
  }

  private static Optional<Task> task(String title) {
    return PREPARATION.stream()
        .filter(task -> Names.key(task.title()).equals(Names.key(title)))
        .findFirst();
  }
}
