package org.wetmil.jobs.explain;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.wetmil.catalogue.Kind;
import org.wetmil.estimate.explain.Ingredient;
import org.wetmil.formula.Place;

/** Words what constants rest on: in full where one enters first, later by that step. */
final class Sources {
  private final Map<Place, Integer> told = new HashMap<>();

  /** One line for each constant of a step that has not been told, and one for all that have. */
  List<String> of(List<Ingredient> ingredients, int step) {
    List<String> lines = new ArrayList<>();
    Map<Integer, List<String>> before = new LinkedHashMap<>();
    for (Ingredient each : ingredients) {
      if (each.constant().isEmpty()) {
        continue;
      }
      Integer at = told.putIfAbsent(each.place(), step);
      if (at == null) {
        Ingredient.Said said = each.constant().get();
        String owner = each.owner().isEmpty() ? "" : " (" + each.owner() + ")";
        lines.add(
            each.name()
                + " "
                + Numbers.of(each)
                + owner
                + " - "
                + said(said.kind(), said.source(), said.where()));
      } else {
        before.computeIfAbsent(at, any -> new ArrayList<>()).add(each.name());
      }
    }
    before.forEach(
        (at, names) -> lines.add(String.join(", ", names) + ": as in step" + Numbers.TIED + at));
    return lines;
  }

  /** Kind, source and where it was stated; what the estimator states rests on that cell alone. */
  static String said(Kind kind, String source, String where) {
    if (kind == Kind.YOURS) {
      return where.startsWith("Basis") ? "yours, typed on Basis" : "yours, " + where;
    }
    if (source.startsWith(kind.word())) {
      return source + "; " + where;
    }
    return kind.word() + (source.isEmpty() ? "" : ": " + source) + "; " + where;
  }
}
