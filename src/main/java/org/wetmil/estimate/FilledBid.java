package org.wetmil.estimate;

import java.util.List;
import java.util.stream.Stream;

/** A bid with its filled lines, sheet by sheet in the bid's order. */
public record FilledBid(Bid bid, List<FilledSheet> sheets) {
  public FilledBid {
    sheets = List.copyOf(sheets);
  }

  /** The filled lines of one sheet. */
  public record FilledSheet(BidSheet sheet, List<FilledLine> lines) {
    public FilledSheet {
      lines = List.copyOf(lines);
    }
  }

  public Stream<FilledLine> lines() {
    return sheets.stream().flatMap(sheet -> sheet.lines().stream());
  }

  /** A figure over all lines that count, in the kept unit of its column. */
  public double total(FilledColumn column) {
    return lines().filter(FilledLine::isCounted).mapToDouble(line -> line.base(column)).sum();
  }
}
