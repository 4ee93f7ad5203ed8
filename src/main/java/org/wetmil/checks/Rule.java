package org.wetmil.checks;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.wetmil.estimate.FilledBid;

/** How a check looks: at each line by itself, at the bid as a whole, or at ledgers. */
public sealed interface Rule {

  /** Looks at one line and needs no other. */
  record OfLine(Function<Line, List<Fault>> look) implements Rule {}

  /** Looks at lines together, at the settings, the tables or what the reader saw. */
  record OfBid(Function<FilledBid, Stream<Fault>> look) implements Rule {}

  /** Looks at ledgers and at what came of comparing them with bids. */
  record OfBooks(Function<ReconciledBooks, Stream<Fault>> look) implements Rule {}

  /** A rule that finds at most one fault in a line. */
  static Rule ofLine(Function<Line, Optional<Fault>> look) {
    return new OfLine(line -> look.apply(line).map(List::of).orElseGet(List::of));
  }

  /** A rule that may find a fault in each of several cells of a line. */
  static Rule ofCells(Function<Line, Stream<Fault>> look) {
    return new OfLine(line -> look.apply(line).toList());
  }

  static Rule ofBooks(Function<ReconciledBooks, Stream<Fault>> look) {
    return new OfBooks(look);
  }

  static Rule ofBid(Function<FilledBid, Stream<Fault>> look) {
    return new OfBid(look);
  }
}
