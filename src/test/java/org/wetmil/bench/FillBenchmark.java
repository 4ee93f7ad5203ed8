package org.wetmil.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How long a fill takes and how much memory, beside what cannot be done without and beside a script
 * of openpyxl: invented bids are filled by the jar in processes of their own, with the flags of the
 * launcher. Run by hand; DEVELOPERS.md says how.
 */
public final class FillBenchmark {
  private static final Path FOLDER = Path.of("target", "fill-benchmark");
  private static final Path JAR = Path.of("target", "wetmil.jar");
  private static final Path LAUNCHER = Path.of("src", "main", "launcher", "wetmil");
  private static final Path SCRIPT = Path.of("src", "test", "python", "fill_with_openpyxl.py");
  private static final String LINE = "%,10d %10.2f %10.2f %8.2f %13s %13s %9.3f %8d%n";
  private static final int BATCH_ROWS = 100;

  private final Optional<String> python;
  private final int repeats;
  private final String heap;

  private FillBenchmark(Optional<String> python, int repeats, String heap) {
    this.python = python;
    this.repeats = repeats;
    this.heap = heap;
  }

  /**
   * Prints the table. The properties fill.rows (numbers of rows), fill.repeats, fill.batch
   * (workbooks; 0 for none), fill.heap (as in 3g) and fill.python say what is measured.
   */
  public static void main(String[] args) throws IOException {
    Files.createDirectories(FOLDER);
    Optional<String> python = python();
    FillBenchmark benchmark =
        new FillBenchmark(
            python, Integer.getInteger("fill.repeats", 3), System.getProperty("fill.heap", ""));
    System.out.println(
        "Best of each. cpu: seconds of processor, all threads together. Ratios: by processor, then"
            + " by the clock. floor: inflating the input and deflating the output at level 6.");
    System.out.printf(
        "%10s %10s %10s %8s %13s %13s %9s %8s%n",
        "rows", "wall s", "cpu s", "floor s", "x floor", "x openpyxl", "ms a row", "peak MB");
    String rows = System.getProperty("fill.rows", "200,2000,20000,100000");
    for (String each : rows.split(",", -1)) {
      benchmark.size(Integer.parseInt(each.trim()));
    }
    benchmark.batch(Integer.getInteger("fill.batch", 1_000));
    if (python.isEmpty()) {
      System.out.println(
          "openpyxl was left out: no python3 with the package openpyxl was found; name one with"
              + " -Dfill.python=PATH.");
    }
  }

  /** One size of bid; the programs take turns, so that a busy machine is busy for each. */
  private void size(int rows) throws IOException {
    Path bid = BigBid.write(FOLDER.resolve("bid-" + rows + ".xlsx"), rows);
    Path filled = FOLDER.resolve("bid-" + rows + "-filled.xlsx");
    Path scripted = FOLDER.resolve("bid-" + rows + "-openpyxl.xlsx");
    Measured fill = null;
    Measured script = null;
    double floor = Double.MAX_VALUE;
    for (int i = 0; i < repeats; i++) {
      fill = Measured.run(fill(bid, filled)).best(fill);
      floor = Math.min(floor, Floor.seconds(bid, filled));
      if (python.isPresent()) {
        List<String> command =
            List.of(
                python.get(),
                "-W",
                "ignore",
                SCRIPT.toString(),
                bid.toString(),
                scripted.toString());
        script = Measured.run(command).best(script);
      }
    }
    System.out.printf(
        Locale.ROOT,
        LINE,
        rows,
        fill.seconds(),
        fill.processor(),
        floor,
        ratios(fill.processor() / floor, fill.seconds() / floor),
        script == null
            ? "-"
            : ratios(fill.processor() / script.processor(), fill.seconds() / script.seconds()),
        fill.processor() * 1e3 / rows,
        fill.peakMb());
  }

  private static String ratios(double byProcessor, double byClock) {
    return String.format(Locale.ROOT, "%.2f %.2f", byProcessor, byClock);
  }

  private void batch(int workbooks) throws IOException {
    if (workbooks == 0) {
      return;
    }
    Path folder = FOLDER.resolve("batch-" + workbooks);
    Files.createDirectories(folder);
    for (int i = 1; i <= workbooks; i++) {
      BigBid.write(folder.resolve("bid-%05d.xlsx".formatted(i)), BATCH_ROWS);
    }
    Measured took = Measured.run(fill(folder, FOLDER.resolve("batch-filled")));
    System.out.printf(
        Locale.ROOT,
        "%,d workbooks of %d rows in one run: %.1f s, %.1f s of processor, %.1f ms of it a"
            + " workbook, peak %d MB%n",
        workbooks,
        BATCH_ROWS,
        took.seconds(),
        took.processor(),
        took.processor() * 1e3 / workbooks,
        took.peakMb());
  }

  private List<String> fill(Path input, Path output) throws IOException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(flags());
    if (!heap.isEmpty()) {
      command.add("-Xmx" + heap);
    }
    command.addAll(List.of("-jar", JAR.toString(), "fill", input.toString(), "--quiet", "--force"));
    command.addAll(List.of("--date", "2027-01-04", "--out", output.toString()));
    return command;
  }

  /** The flags with which the launcher starts Java. */
  private static List<String> flags() throws IOException {
    Matcher flags = Pattern.compile("(?m)^flags='(.*)'$").matcher(Files.readString(LAUNCHER));
    if (!flags.find()) {
      throw new IllegalStateException(LAUNCHER + " has no line of flags");
    }
    return List.of(flags.group(1).split(" ", -1));
  }

  /** A Python that has openpyxl. */
  private static Optional<String> python() {
    String named = System.getProperty("fill.python", "");
    List<String> candidates =
        named.isEmpty() ? List.of("python3", "/usr/bin/python3", "python") : List.of(named);
    return candidates.stream().filter(FillBenchmark::hasOpenpyxl).findFirst();
  }

  private static boolean hasOpenpyxl(String python) {
    try {
      Process asked =
          new ProcessBuilder(python, "-c", "import openpyxl")
              .redirectErrorStream(true)
              .redirectOutput(ProcessBuilder.Redirect.DISCARD)
              .start();
      return asked.waitFor() == 0;
    } catch (IOException | InterruptedException e) {
      return false;
    }
  }
}
