package org.wetmil.estimate.compare;

import org.wetmil.estimate.BidLine;

/** A line of one version and the line of the other that it became. */
public record LinePair(BidLine a, BidLine b, How how) {

  /** How the two were found to be one line, the surest first. */
  public enum How {
    ALIKE("alike in every input"),
    NAMES("by floor, room, surface, coating and colour"),
    SURFACE("by floor, room and surface"),
    SIMILAR("by being most alike in their room"),
    ELSEWHERE("by all but their room and floor"),
    ORDER("by their order among lines that are as much alike (look at these)");

    private final String words;

    How(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }
}
