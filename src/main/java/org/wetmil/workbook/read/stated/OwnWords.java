package org.wetmil.workbook.read.stated;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.wetmil.catalogue.Names;
import org.wetmil.estimate.InputColumn;
import org.wetmil.workbook.read.grid.Grid;
import org.wetmil.workbook.read.grid.GridRow;
import org.wetmil.workbook.read.heading.HeadingWords;

/** The Headings sheet, on which an estimator writes their own word beside ours. */
public final class OwnWords {
  private static final String SHEET = "Headings";

  private OwnWords() {}

  /** Whether a sheet is the one for the estimator's own words. */
  public static boolean isSheet(String name) {
    return Names.key(name).equals(Names.key(SHEET));
  }

  /** The estimator's words, each with the column it names; either may stand first. */
  public static Map<String, InputColumn> read(Grid grid) {
    Map<String, InputColumn> words = new LinkedHashMap<>();
    for (GridRow row : grid.rows()) {
      List<String> texts =
          row.cells().stream()
              .map(cell -> grid.text(row.row(), cell.column()))
              .filter(text -> !text.isEmpty())
              .toList();
      if (texts.size() < 2) {
        continue;
      }
      Optional<InputColumn> first = HeadingWords.column(texts.get(0));
      if (first.isPresent()) {
        texts.stream().skip(1).forEach(word -> words.put(word, first.get()));
      } else {
        HeadingWords.column(texts.get(1)).ifPresent(column -> words.put(texts.get(0), column));
      }
    }
    return words;
  }
}
