package org.wetmil.jobs.explain;

import java.util.ArrayList;
import java.util.List;

/** Lines of text for a terminal of 100 columns. */
final class Page {
  static final int WIDTH = 100;

  private final List<String> lines = new ArrayList<>();

  List<String> lines() {
    return List.copyOf(lines);
  }

  Page gap() {
    lines.add("");
    return this;
  }

  Page line(String text) {
    return line(0, 0, text);
  }

  /** A text that is wrapped at its spaces; what follows the first line is indented further. */
  Page line(int indent, int hanging, String text) {
    StringBuilder line = new StringBuilder(" ".repeat(indent));
    boolean begun = false;
    for (String word : text.split(" ", -1)) {
      if (begun && line.length() + 1 + word.length() > WIDTH) {
        add(line);
        line = new StringBuilder(" ".repeat(indent + hanging));
        begun = false;
      }
      line.append(begun ? " " : "").append(word);
      begun = true;
    }
    add(line);
    return this;
  }

  /** Rows whose columns stand under each other; the last column is wrapped. */
  Page table(int indent, List<List<String>> rows) {
    if (rows.isEmpty()) {
      return this;
    }
    int last = rows.get(0).size() - 1;
    int[] widths = new int[last];
    for (List<String> row : rows) {
      for (int i = 0; i < last; i++) {
        widths[i] = Math.max(widths[i], row.get(i).length());
      }
    }
    for (List<String> row : rows) {
      StringBuilder head = new StringBuilder();
      for (int i = 0; i < last; i++) {
        head.append(row.get(i)).append(" ".repeat(widths[i] - row.get(i).length() + 2));
      }
      String tied = head.toString().replace(" ", Numbers.TIED);
      line(indent, head.length(), tied + row.get(last));
    }
    return this;
  }

  private void add(StringBuilder line) {
    lines.add(line.toString().replace(Numbers.TIED, " ").stripTrailing());
  }
}
