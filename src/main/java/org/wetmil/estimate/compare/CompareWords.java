package org.wetmil.estimate.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.wetmil.catalogue.Setting;

/** What is to be said of a comparison beside its figures. */
public final class CompareWords {
  private CompareWords() {}

  /** How lines were found again, in which units figures are, and how the difference is split. */
  public static List<String> notes(BidComparison compared) {
    List<String> notes = new ArrayList<>();
    String found =
        compared.matching().counts().entrySet().stream()
            .map(each -> each.getValue() + " " + each.getKey().words())
            .collect(Collectors.joining(", "));
    notes.add(
        "Lines of B found in A: "
            + (found.isEmpty() ? "none" : found)
            + "; "
            + compared.moved()
            + " of them stand in another order.");
    if (compared.a().system() != compared.b().system()) {
      notes.add(
          "A is in %s units and B in %s; figures are in those of B, and inputs that agree where they are rounded count as the same."
              .formatted(compared.a().system().word(), compared.b().system().word()));
    }
    if (!compared.oneCurrency()) {
      notes.add(
          "A is in %s and B in %s, so that prices and costs are not compared."
              .formatted(
                  compared.a().catalogue().text(Setting.CURRENCY),
                  compared.b().catalogue().text(Setting.CURRENCY)));
    } else if (compared.first().price().isPresent() != compared.second().price().isPresent()) {
      notes.add(
          "Only %s states all that a price needs, so that prices are not compared."
              .formatted(compared.first().price().isPresent() ? "A" : "B"));
    }
    boolean both = !compared.tables().isEmpty() && !compared.lines().isEmpty();
    notes.add(
        compared.isSame()
            ? "Nothing is different: every line, setting and table value is the same."
            : both
                ? "Settings, tables and lines changed together. The lines of A are computed with"
                    + " the settings and tables of B first, then the lines of B; another order"
                    + " would split the difference in another way."
                : "Before is what the lines of A come to with the settings and tables of B.");
    if (!compared.isSame()) {
      notes.add(
          "Each figure is rounded by itself where it is shown, so that shown parts can miss what"
              + " they add up to by a hundredth or two.");
    }
    return notes;
  }

  /** A part of the difference, with how many it is of. */
  public static String label(Split part) {
    String words = part.kind().words();
    return switch (part.kind()) {
      case JOB, PRICE -> words;
      default -> words + " (" + part.count() + ")";
    };
  }

  /** The currency, or a word for it where none is named. */
  public static String currency(BidComparison compared) {
    return compared.currency().isBlank() ? "as stated" : compared.currency();
  }
}
