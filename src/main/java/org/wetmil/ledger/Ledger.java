package org.wetmil.ledger;

import java.io.IOException;
import java.io.Reader;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/**
 * A purchase ledger as an accounting program or a supplier exports it. Its conventions are found
 * from the whole file first; its lines are then read as a stream.
 */
public final class Ledger {
  /** Judgement that the reading of ledgers rests on. */
  public static final List<HouseFigure> HOUSE =
      List.of(LineMaker.AMOUNT_TOLERANCE, LineMaker.LEAST_DIFFERENCE, DateColumn.FIRST_YEAR);

  private final String file;
  private final LedgerSource source;
  private final TextEncoding encoding;
  private final LedgerLayout layout;

  private Ledger(String file, LedgerSource source, TextEncoding encoding, LedgerLayout layout) {
    this.file = file;
    this.source = source;
    this.encoding = encoding;
    this.layout = layout;
  }

  /**
   * Finds out how a ledger is written.
   *
   * @param file the name to show
   * @param statedOrder the order of day and month; null to find it from the dates
   * @throws UnusableLedgerException when there are no headings that make a ledger
   */
  public static Ledger open(String file, LedgerSource source, DateOrder statedOrder)
      throws IOException, UnusableLedgerException {
    TextEncoding encoding = TextEncoding.of(source);
    LedgerLayout layout = new LayoutFinder(file, source, encoding).find(statedOrder);
    return new Ledger(file, source, encoding, layout);
  }

  public LedgerLayout layout() {
    return layout;
  }

  /** A ledger with all its lines in memory. */
  public record Book(
      String file, LedgerLayout layout, List<LedgerLine> lines, LedgerCounts counts) {
    public Book {
      lines = List.copyOf(lines);
    }
  }

  /** Reads all lines at once. */
  public Book readAll() throws IOException {
    List<LedgerLine> lines = new ArrayList<>();
    LedgerCounts counts = read(lines::add);
    return new Book(file, layout, lines, counts);
  }

  /** Hands over every ledger line once, in the file's order. */
  public LedgerCounts read(Consumer<LedgerLine> sink) throws IOException {
    LedgerReader reader = new LedgerReader(file, layout, sink);
    try (Reader text = encoding.open(source)) {
      CsvText.forEach(text, layout.delimiter(), layout.quotes(), reader::take);
    }
    return reader.counts();
  }
}
