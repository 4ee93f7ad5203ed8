package org.wetmil.reconcile.match;

import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.wetmil.catalogue.Names;

/**
 * Finds a job by its number or name. A job may be written as number and name in one, and a ledger
 * may write a customer before the job and a kind of cost after it, with colons between.
 */
public final class JobFinder {
  private static final Pattern NUMBER_AND_NAME =
      Pattern.compile("(\\S*\\d\\S*?)[ :,/–-]+(\\S.*)", Pattern.DOTALL);

  private static final Pattern BRACKETS = Pattern.compile("[(\\[][^)\\]]*[)\\]]");

  private final Map<String, Set<String>> byKey = new HashMap<>();
  private final Map<String, Optional<String>> known = new HashMap<>();
  private final Map<String, List<String>> nearest = new HashMap<>();

  public JobFinder(List<String> jobs) {
    for (String job : jobs) {
      add(job, job);
      String bare = bare(job);
      add(bare, job);
      Matcher both = NUMBER_AND_NAME.matcher(bare);
      if (both.matches()) {
        add(both.group(1), job);
        add(both.group(2), job);
      }
    }
  }

  private void add(String spelling, String job) {
    String key = Phrases.key(spelling);
    if (!key.isEmpty()) {
      byKey.computeIfAbsent(key, k -> new LinkedHashSet<>()).add(job);
    }
  }

  /** The job that a ledger names; empty when it names none, or more than one. */
  public Optional<String> find(String text) {
    return known.computeIfAbsent(text, this::look);
  }

  /** Up to three jobs that may have been meant, nearest first. */
  public List<String> nearest(String text) {
    return nearest.computeIfAbsent(
        text,
        name ->
            Names.nearest(name, byKey.keySet().stream()).stream()
                .flatMap(key -> byKey.get(key).stream())
                .distinct()
                .limit(3)
                .toList());
  }

  private Optional<String> look(String text) {
    Optional<String> whole = only(text);
    if (whole.isPresent()) {
      return whole;
    }
    // a customer may stand before the job, and a kind of cost after it
    List<String> parts = List.of(text.split(":"));
    return IntStream.rangeClosed(1, parts.size())
        .mapToObj(i -> part(parts.get(parts.size() - i)))
        .flatMap(Optional::stream)
        .findFirst();
  }

  private Optional<String> part(String text) {
    Optional<String> found = only(text).or(() -> only(bare(text)));
    Matcher both = NUMBER_AND_NAME.matcher(bare(text));
    return found.isPresent() || !both.matches()
        ? found
        : only(both.group(1)).or(() -> only(both.group(2)));
  }

  /** Without a remark in brackets. */
  private static String bare(String job) {
    return BRACKETS.matcher(job).replaceAll(" ").strip();
  }

  private Optional<String> only(String spelling) {
    Set<String> found = byKey.getOrDefault(Phrases.key(spelling), Set.of());
    return found.size() == 1 ? Optional.of(found.iterator().next()) : Optional.empty();
  }
}
