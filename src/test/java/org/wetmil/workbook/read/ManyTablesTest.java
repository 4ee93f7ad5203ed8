package org.wetmil.workbook.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetmil.SmallBid;

/** A sheet may hold a table for each room, thousands of them. */
class ManyTablesTest {
  private static final int FEW = 500;
  private static final int TIMES = 12;

  @TempDir private Path folder;

  @Test
  void timeGrowsWithTheTablesAndNotWithTheirSquare() throws IOException {
    Path few = write("few.xlsx", FEW);
    Path many = write("many.xlsx", TIMES * FEW);
    read(few, FEW); // what is slow at the first time alone

    long forFew = read(few, FEW);
    long forMany = read(many, TIMES * FEW);

    assertThat(forMany).isLessThan(forFew * TIMES * 3);
  }

  /** Reads a bid; gives the processor time of it. */
  private static long read(Path file, int tables) {
    long began = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    ReadWorkbook read = BidReader.read(file);
    long took = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - began;
    assertThat(read.layouts().get(0).tables()).hasSize(tables);
    return took;
  }

  /** Tables of one line; each names other columns than the one above it. */
  private Path write(String name, int tables) throws IOException {
    Path file = folder.resolve(name);
    try (XSSFWorkbook book = new XSSFWorkbook();
        OutputStream out = Files.newOutputStream(file)) {
      XSSFSheet bid = book.createSheet("Bid");
      for (int i = 0; i < tables; i++) {
        if (i % 2 == 0) {
          SmallBid.row(bid, 3 * i, "Room", "Surface", "Length (ft)", "Width (ft)", "Height (ft)");
          SmallBid.row(bid, 3 * i + 1, "Room " + i, "walls", 12, 10, 9);
        } else {
          SmallBid.row(bid, 3 * i, "Room", "Surface", "Area (ft²)", "Coating", "Coats");
          SmallBid.row(bid, 3 * i + 1, "Room " + i, "walls", 200, "latex", 2);
        }
      }
      book.write(out);
    }
    return file;
  }
}
