package org.wetmil.ledger;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** Ledgers written by hand for tests, read whole. */
public final class Ledgers {
  private Ledgers() {}

  /** A ledger with all its lines. */
  public record Read(LedgerLayout layout, List<LedgerLine> lines, LedgerCounts counts) {
    public LedgerLine only() {
      if (lines.size() != 1) {
        throw new IllegalStateException(lines.size() + " lines");
      }
      return lines.get(0);
    }
  }

  /** A ledger with all its lines, as the reconciliation takes it. */
  public static Ledger.Book book(String... lines) {
    Read read = read(lines);
    return new Ledger.Book("may.csv", read.layout(), read.lines(), read.counts());
  }

  public static Read read(String... lines) {
    return read(String.join("\n", lines) + "\n", StandardCharsets.UTF_8);
  }

  public static Read read(String text, Charset charset) {
    return read(text.getBytes(charset), null);
  }

  public static Read read(byte[] bytes, DateOrder order) {
    try {
      Ledger ledger = Ledger.open("may.csv", () -> new ByteArrayInputStream(bytes), order);
      List<LedgerLine> lines = new ArrayList<>();
      LedgerCounts counts = ledger.read(lines::add);
      return new Read(ledger.layout(), lines, counts);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (UnusableLedgerException e) {
      throw new IllegalArgumentException(e.getMessage(), e);
    }
  }
}
