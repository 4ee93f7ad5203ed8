package org.wetmil.catalogue;

import java.util.Arrays;
import java.util.List;

/** The state of a surface before work, and the preparation it asks for. */
public record Condition(Row row, String name, List<Task> preparation, State state, boolean rough) {

  /** What the preparation rules tell apart. */
  public enum State {
    NEW,
    PRIMED,
    BARE,
    PAINTED,
    PEELING
  }

  static Condition of(Row row) {
    List<Task> tasks =
        Arrays.stream(row.text("Preparation").split(";"))
            .map(String::strip)
            .map(Condition::task)
            .toList();
    State state = State.valueOf(row.text("State").toUpperCase(java.util.Locale.ROOT));
    return new Condition(row, row.name(), tasks, state, row.isYes("Rough"));
  }

  private static Task task(String title) {
    return Arrays.stream(Task.values())
        .filter(task -> task.title().equals(title))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no task " + title));
  }
}
