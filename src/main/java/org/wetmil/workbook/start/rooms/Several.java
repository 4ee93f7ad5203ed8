package org.wetmil.workbook.start.rooms;

import java.util.List;

/** Names in a sentence: the first of them, and how many more there are. */
public final class Several {
  private static final int NAMED = 8;

  private Several() {}

  public static String of(List<String> names) {
    String named = String.join(", ", names.subList(0, Math.min(NAMED, names.size())));
    return names.size() > NAMED ? named + " and " + (names.size() - NAMED) + " more" : named;
  }
}
