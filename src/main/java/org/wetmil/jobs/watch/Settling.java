package org.wetmil.jobs.watch;

import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/**
 * Tells which files were written to and have come to rest since. It is shown a folder again and
 * again, and asks no clock and no disk itself.
 */
final class Settling {
  /**
   * How long a file must stay the same. A program saves within less; and as some disks keep times
   * to two seconds, a file that is written twice within them could look the same.
   */
  static final Duration REST = Duration.ofSeconds(2);

  /** How long a file that is not whole may yet become so, as one that is copied over a network. */
  static final Duration PATIENCE = Duration.ofSeconds(20);

  private record Changed(Stamp stamp, Duration since) {}

  private final Map<Path, Stamp> known;
  private final Map<Path, Changed> changed = new HashMap<>();

  /**
   * @param known files that are as they should be
   */
  Settling(Map<Path, Stamp> known) {
    this.known = new HashMap<>(known);
  }

  /** From now on a file is as it should be, until it is written to again. */
  void know(Path file, Stamp stamp) {
    known.put(file, stamp);
    changed.remove(file);
  }

  /**
   * The files that have come to rest, in the order seen; each once, until it is written to again.
   *
   * @param seen all files of the folder as they are now
   * @param now time since the watch began
   * @param whole whether a file can be opened; one that cannot is given more time
   */
  List<Path> settled(Map<Path, Stamp> seen, Duration now, Predicate<Path> whole) {
    known.keySet().retainAll(seen.keySet());
    changed.keySet().retainAll(seen.keySet());
    List<Path> settled = new ArrayList<>();
    seen.forEach(
        (file, stamp) -> {
          if (stamp.equals(known.get(file))) {
            changed.remove(file);
            return;
          }
          Changed before = changed.get(file);
          if (before == null || !before.stamp().equals(stamp)) {
            changed.put(file, new Changed(stamp, now));
            return;
          }
          Duration rest = now.minus(before.since());
          if (rest.compareTo(REST) >= 0 && (rest.compareTo(PATIENCE) >= 0 || whole.test(file))) {
            know(file, stamp);
            settled.add(file);
          }
        });
    return settled;
  }
}
