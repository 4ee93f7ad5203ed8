package org.wetmil.audit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.wetmil.audit.change.Suggestion;
import org.wetmil.quantity.Count;
import org.wetmil.quantity.Quantity;
import org.wetmil.quantity.UnitSystem;

/** What to change, in sentences: the largest few, the rest as a count. */
final class Changes {
  private static final int MOST = 3;

  /** Factors nearer to 1 than this are not worth a sentence (house rule). */
  private static final double SMALL = 0.02;

  private final List<Suggestion> suggestions;

  private final UnitSystem system;

  Changes(List<Suggestion> suggestions, UnitSystem system) {
    this.suggestions = suggestions;
    this.system = system;
  }

  List<String> sentences() {
    List<Suggestion> largest =
        suggestions.stream()
            .filter(suggestion -> Math.abs(Math.log(suggestion.factor())) >= SMALL)
            // What luck may explain is on the list, but no advice.
            .filter(suggestion -> suggestion.likely().excludes(1))
            .sorted(
                Comparator.comparingDouble(suggestion -> -Math.abs(Math.log(suggestion.factor()))))
            .limit(MOST)
            .toList();
    if (suggestions.isEmpty()) {
      return List.of("Do not change anything yet.");
    }
    List<String> sentences = new ArrayList<>(largest.stream().map(this::sentence).toList());
    int more = suggestions.size() - largest.size();
    if (more > 0) {
      String others = largest.isEmpty() ? "" : "more ";
      sentences.add(
          Count.of(more, others + "figure", others + "figures")
              + (more == 1 ? " stands" : " stand")
              + " on Suggested tables.");
    }
    return sentences;
  }

  private String sentence(Suggestion suggestion) {
    String change =
        suggestion.isByHand()
            ? String.format(
                Locale.ROOT,
                "multiply %s by %.2f by hand, since no table carries it",
                suggestion.measure().word(),
                suggestion.suggested())
            : String.format(
                Locale.ROOT,
                "%s %s instead of %s (%s x %.2f)",
                suggestion.column().toLowerCase(Locale.ROOT),
                figure(suggestion, suggestion.suggested()),
                figure(suggestion, suggestion.now()),
                suggestion.measure().word(),
                suggestion.factor());
    return Words.capital(subject(suggestion))
        + ": "
        + change
        + (suggestion.held()
            ? "; that is as far as makes sense, so something else is wrong too."
            : ".");
  }

  private String figure(Suggestion suggestion, double kept) {
    Quantity quantity = suggestion.quantity();
    return String.format(
            Locale.ROOT, "%.2f %s", quantity.shown(kept, system), quantity.unit(system).symbol())
        .strip();
  }

  private static String subject(Suggestion suggestion) {
    if (!suggestion.crew().isEmpty()) {
      return "crew " + suggestion.crew();
    }
    if (suggestion.coating().isEmpty()) {
      return suggestion.surface();
    }
    return suggestion.surface().isEmpty()
        ? suggestion.coating()
        : suggestion.coating() + " on " + suggestion.surface();
  }
}
