package org.wetmil.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * What a process took.
 *
 * @param seconds by the clock
 * @param processor seconds of it, all threads together; other programs have little part in it
 * @param peakMb the most memory that it held; 0 where the system does not tell
 */
record Measured(double seconds, double processor, long peakMb) {
  private static final long POLL_MS = 20;

  /** Fields of /proc/self/stat after the name: ticks of the processes that ended, user, system. */
  private static final int ENDED_USER = 13;

  private static final double TICKS_A_SECOND = 100;

  /**
   * Runs a command to its end; what it prints is dropped, what it says is wrong is shown.
   *
   * @throws IllegalStateException when it fails
   */
  static Measured run(List<String> command) {
    try {
      double before = ended();
      long start = System.nanoTime();
      Process process =
          new ProcessBuilder(command)
              .redirectOutput(ProcessBuilder.Redirect.DISCARD)
              .redirectError(ProcessBuilder.Redirect.INHERIT)
              .start();
      long peak = 0;
      double polled = 0;
      while (process.isAlive()) {
        peak = Math.max(peak, peakKb(process.pid()));
        polled =
            process.info().totalCpuDuration().map(used -> used.toMillis() / 1e3).orElse(polled);
        Thread.sleep(POLL_MS);
      }
      double seconds = (System.nanoTime() - start) / 1e9;
      if (process.exitValue() != 0) {
        throw new IllegalStateException(command + " ended with " + process.exitValue());
      }
      double after = ended();
      return new Measured(seconds, after > before ? after - before : polled, peak / 1024);
    } catch (IOException | InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }

  /** The least of each. */
  Measured best(Measured other) {
    return other == null
        ? this
        : new Measured(
            Math.min(seconds, other.seconds),
            Math.min(processor, other.processor),
            Math.min(peakMb, other.peakMb));
  }

  /** Seconds of processor of all processes that this one started and that ended; 0 where untold. */
  private static double ended() throws IOException {
    Path stat = Path.of("/proc/self/stat");
    if (!Files.exists(stat)) {
      return 0;
    }
    String line = Files.readString(stat);
    String[] fields = line.substring(line.lastIndexOf(')') + 2).split(" ", -1);
    return (Long.parseLong(fields[ENDED_USER]) + Long.parseLong(fields[ENDED_USER + 1]))
        / TICKS_A_SECOND;
  }

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
