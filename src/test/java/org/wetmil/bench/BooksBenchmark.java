package org.wetmil.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/**
 * How long a reconciliation takes and how much memory: an invented year is written, then compared
 * by the jar in a process of its own. Run by hand; DEVELOPERS.md says how.
 */
public final class BooksBenchmark {
  private static final Path FOLDER = Path.of("target", "books-benchmark");
  private static final Path JAR = Path.of("target", "wetmil.jar");
  private static final long POLL_MS = 50;

  private BooksBenchmark() {}

  /** Runs it; the properties books.lines and books.jobs say how large. */
  public static void main(String[] args) throws IOException, InterruptedException {
    int lines = Integer.getInteger("books.lines", 100_000);
    int jobs = Integer.getInteger("books.jobs", 1_000);
    Path bids = FOLDER.resolve("bids-" + jobs);
    if (!Files.exists(bids)) {
      Files.createDirectories(bids);
      BigBooks.bids(bids, jobs);
    }
    Path ledger = FOLDER.resolve("ledger-%d-%d.csv".formatted(lines, jobs));
    BigBooks.ledger(ledger, jobs, lines);
    List<String> command =
        List.of(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-jar",
            JAR.toString(),
            "reconcile",
            bids.toString(),
            "--purchases",
            ledger.toString(),
            "--quiet",
            "--force",
            "--date",
            "2027-01-04",
            "--out",
            FOLDER.resolve("reconciled.xlsx").toString());
    long start = System.nanoTime();
    Process process = new ProcessBuilder(command).inheritIO().start();
    long peak = 0;
    double cpu = 0;
    while (process.isAlive()) {
      peak = Math.max(peak, peakKb(process.pid()));
      cpu = process.info().totalCpuDuration().map(used -> used.toMillis() / 1e3).orElse(cpu);
      Thread.sleep(POLL_MS);
    }
    double seconds = (System.nanoTime() - start) / 1e9;
    System.out.printf(
        Locale.ROOT,
        "%d lines over %d jobs: %.1f s, %.1f s of processor, %.2f ms of it a line, peak %d MB%n",
        lines,
        jobs,
        seconds,
        cpu,
        cpu * 1000 / lines,
        peak / 1024);
  }

  /** The most memory that a process has held so far, in KB; 0 where the system does not tell. */
  private static long peakKb(long pid) {
    try {
      return Files.readAllLines(Path.of("/proc", String.valueOf(pid), "status")).stream()
          .filter(line -> line.startsWith("VmHWM:"))
          .map(line -> line.replaceAll("\\D", ""))
          .mapToLong(Long::parseLong)
          .findFirst()
          .orElse(0);
    } catch (IOException e) {
      return 0;
    }
  }
}
