package org.wetmil.hostile;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Where an element stands in the text of a part, from its start tag to past its end tag. */
record Span(int from, int to) {
  private static final Pattern TAG = Pattern.compile("<(/?)[A-Za-z][^<>]*?(/?)>");

  /** Any element; all of the text when there is none. */
  static Span any(String xml, Random random) {
    List<Integer> starts = new ArrayList<>();
    Matcher tag = TAG.matcher(xml);
    while (tag.find()) {
      if (tag.group(1).isEmpty()) {
        starts.add(tag.start());
      }
    }
    return starts.isEmpty()
        ? new Span(0, xml.length())
        : at(xml, starts.get(random.nextInt(starts.size())));
  }

  private static Span at(String xml, int start) {
    int depth = 0;
    Matcher tag = TAG.matcher(xml);
    for (int from = start; tag.find(from); from = tag.end()) {
      if (tag.group(2).isEmpty()) {
        depth += tag.group(1).isEmpty() ? 1 : -1;
      }
      if (depth <= 0) {
        return new Span(start, tag.end());
      }
    }
    return new Span(start, xml.length());
  }

  /** Where the root element begins. */
  static int root(String xml) {
    Matcher tag = TAG.matcher(xml);
    return tag.find() ? tag.start() : 0;
  }
}
