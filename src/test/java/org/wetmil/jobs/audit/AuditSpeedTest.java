package org.wetmil.jobs.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetmil.audit.change.PaintTable;
import org.wetmil.audit.past.Measure;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.quantity.UnitSystem;

/**
 * How long an audit of many bids takes, and how much memory. An everyday build audits a few; {@code
 * JAVA_TOOL_OPTIONS=-Xmx768m mvn test -Dtest=AuditSpeedTest -Daudit.bids=1000 -Daudit.lines=100} a
 * thousand.
 */
class AuditSpeedTest {
  private static final int BIDS = Integer.getInteger("audit.bids", 12);
  private static final int LINES = Integer.getInteger("audit.lines", 10);
  private static final int KINDS = 20;
  private static final List<String> COATINGS =
      List.of("latex", "primer", "oil-based", "dry fall", "stain", "two-part");
  private static final List<String> SURFACES =
      List.of("walls", "ceiling", "siding", "floor", "exterior walls");
  private static final List<String> CREWS = List.of("Alder", "Birch", "Cedar", "Elder");

  @TempDir Path temporary;

  @Test
  void manyBidsAreAuditedInTimeAndMemory() throws IOException {
    Path folder = Files.createDirectory(temporary.resolve("bids"));
    List<Path> kinds = new ArrayList<>();
    for (int kind = 0; kind < Math.min(KINDS, BIDS); kind++) {
      kinds.add(book(kind));
    }
    List<PastBook> books =
        kinds.stream()
            .map(file -> PastBook.read(file, UnitSystem.US, Catalogue.builtIn()))
            .toList();
    StringBuilder actuals = new StringBuilder("Job,Gallons,Hours,Date,Crew\n");
    Random random = new Random(7);
    for (int bid = 0; bid < BIDS; bid++) {
      String name = String.format(Locale.ROOT, "bid-%04d", bid);
      Files.copy(kinds.get(bid % kinds.size()), folder.resolve(name + ".xlsx"));
      Map<Measure, Double> estimated = books.get(bid % kinds.size()).estimated();
      actuals.append(
          String.format(
              Locale.ROOT,
              "%s,%.2f,%.2f,%s,%s%n",
              name,
              estimated.get(Measure.PAINT) * Math.exp(0.1 + 0.08 * random.nextGaussian()),
              estimated.get(Measure.HOURS) * Math.exp(0.05 + 0.08 * random.nextGaussian()),
              LocalDate.of(2021, 1, 4).plusDays(bid),
              CREWS.get(random.nextInt(CREWS.size()))));
    }
    Path list = Files.writeString(temporary.resolve("actuals.csv"), actuals);
    System.gc();
    pools().forEach(MemoryPoolMXBean::resetPeakUsage);

    long start = System.nanoTime();
    long cpu = cpuNanos();
    AuditOptions options =
        new AuditOptions(
            list,
            null,
            UnitSystem.US,
            PaintTable.LOSS,
            null,
            LocalDate.of(2026, 1, 5),
            "test",
            false);
    AuditReport report =
        new AuditJob(options, (done, all) -> {}).audit(folder, temporary.resolve("audit.xlsx"));
    double seconds = (System.nanoTime() - start) / 1e9;
    double cpuSeconds = (cpuNanos() - cpu) / 1e9;

    assertThat(report.bids()).isEqualTo(BIDS);
    assertThat(report.verdict().right()).isNotEmpty();
    System.out.printf(
        Locale.ROOT,
        "%d bids of %d lines: %.1f s (%.1f s of processor), peak heap %d MB of %d MB%n",
        BIDS,
        LINES,
        seconds,
        cpuSeconds,
        pools().stream().mapToLong(pool -> pool.getPeakUsage().getUsed()).sum() >> 20,
        Runtime.getRuntime().maxMemory() >> 20);
  }

  private static long cpuNanos() {
    return ManagementFactory.getOperatingSystemMXBean()
            instanceof com.sun.management.OperatingSystemMXBean system
        ? system.getProcessCpuTime()
        : 0;
  }

  private static List<MemoryPoolMXBean> pools() {
    return ManagementFactory.getMemoryPoolMXBeans().stream()
        .filter(pool -> pool.getType() == MemoryType.HEAP)
        .toList();
  }

  private Path book(int kind) throws IOException {
    Random random = new Random(kind);
    Path file = temporary.resolve("kind-" + kind + ".xlsx");
    try (SXSSFWorkbook book = new SXSSFWorkbook();
        OutputStream out = Files.newOutputStream(file)) {
      Sheet sheet = book.createSheet("Bid");
      text(sheet.createRow(0), "Room", "Surface", "Condition", "Coating", "Tip");
      for (String heading : List.of("Length (ft)", "Width (ft)", "Height (ft)", "Coats")) {
        sheet.getRow(0).createCell(sheet.getRow(0).getLastCellNum()).setCellValue(heading);
      }
      for (int line = 1; line <= LINES; line++) {
        Row row = sheet.createRow(line);
        text(
            row,
            "Room " + line,
            SURFACES.get(random.nextInt(SURFACES.size())),
            "painted",
            COATINGS.get(random.nextInt(COATINGS.size())),
            "517");
        row.createCell(5).setCellValue(10 + random.nextInt(40));
        row.createCell(6).setCellValue(8 + random.nextInt(20));
        row.createCell(7).setCellValue(8 + random.nextInt(14));
        row.createCell(8).setCellValue(1 + random.nextInt(2));
      }
      book.write(out);
    }
    return file;
  }

  private static void text(Row row, String... texts) {
    for (int i = 0; i < texts.length; i++) {
      row.createCell(i).setCellValue(texts[i]);
    }
  }
}
