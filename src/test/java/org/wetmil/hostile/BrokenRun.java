package org.wetmil.hostile;

import com.sun.management.OperatingSystemMXBean;
import java.io.ByteArrayOutputStream;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.wetmil.cli.WetmilCommand;

/**
 * Runs commands on broken files one after another and holds each to what was promised, in a process
 * of its own, whose memory is bounded. What is not kept is a line that begins with {@code PROBLEM};
 * counts of outcomes follow.
 */
public final class BrokenRun {
  /** Seconds of processor that a file may take, and again for each megabyte. */
  private static final long LIMIT_S = 10;

  /** A machine that does other things, too, may take as long as this. */
  private static final long PATIENCE_S = 600;

  private static final OperatingSystemMXBean MACHINE =
      ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class);

  private final Path folder;
  private final Map<String, Integer> outcomes = new TreeMap<>();
  private final Consumer<String> report;
  private final PrintStream usualOut = System.out;
  private final PrintStream usualErr = System.err;
  private long slowestMs;
  private String slowest = "";
  private final ExecutorService worker =
      Executors.newSingleThreadExecutor(
          task -> {
            Thread thread = new Thread(task);
            thread.setDaemon(true);
            return thread;
          });

  private BrokenRun(Path folder, Consumer<String> report) throws IOException {
    this.folder = Files.createDirectory(folder.resolve("now"));
    this.report = report;
  }

  /**
   * Runs it.
   *
   * @param args an empty folder; sources, the first seed and how many, or the folder of a corpus
   */
  public static void main(String[] args) throws Exception {
    Path folder = Path.of(args[0]);
    // in one encoding, whatever the session's
    PrintStream out =
        new PrintStream(new FileOutputStream(FileDescriptor.out), true, StandardCharsets.UTF_8);
    Consumer<String> report = out::println;
    if (args.length == 2) {
      BrokenRun run = new BrokenRun(folder, report);
      run.corpus(Path.of(args[1]));
      run.count();
    } else {
      Sources sources = Sources.valueOf(args[1]);
      seeds(folder, sources, Long.parseLong(args[2]), Integer.parseInt(args[3]), report);
    }
  }

  /**
   * Runs on files made from seeds.
   *
   * @param folder an empty one
   * @param first the first seed
   */
  private static void seeds(
      Path folder, Sources sources, long first, int count, Consumer<String> report)
      throws Exception {
    BrokenRun run = new BrokenRun(folder, report);
    Wholes wholes = new Wholes(Files.createDirectory(folder.resolve("whole")), sources);
    for (long seed = first; seed < first + count; seed++) {
      try {
        run.one("seed " + seed, Broken.of(seed, wholes, run.folder));
      } catch (RuntimeException e) {
        throw new IllegalStateException("at seed " + seed, e);
      }
    }
    run.count();
  }

  private void count() {
    outcomes.forEach((outcome, count) -> report.accept(count + "\t" + outcome));
    report.accept(slowestMs + "\tms of processor for the slowest, " + slowest);
  }

  /** Each file of a corpus as a bid, as a list of rooms and as one of past bids. */
  private void corpus(Path corpus) throws Exception {
    List<Path> files;
    try (Stream<Path> all = Files.walk(corpus)) {
      files = all.filter(Files::isRegularFile).sorted().toList();
    }
    for (Path file : files) {
      String name = file.getFileName().toString();
      Path output = folder.resolve("out" + (name.matches(".*\\.(xls|xlt)m") ? ".xlsm" : ".xlsx"));
      Path bid = Files.copy(file, folder.resolve(name));
      one(name, new Broken("fill", List.of("fill", "--out", "" + output, "" + bid), output));
      Path rooms = Files.copy(file, folder.resolve(name));
      Path list = folder.resolve("out.xlsx");
      one(name, new Broken("start", List.of("start", "--out", "" + list, "" + rooms), list));
      Path bids = Files.createDirectory(folder.resolve("bids"));
      Files.copy(file, bids.resolve(name));
      one(name, new Broken("audit", List.of("audit", "--out", "" + list, "" + bids), list));
    }
  }

  private void one(String name, Broken broken) throws Exception {
    Map<Path, String> before = contents();
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    System.setOut(new PrintStream(out, true, StandardCharsets.UTF_8));
    System.setErr(new PrintStream(err, true, StandardCharsets.UTF_8));
    long bytes = 0;
    for (Path file : before.keySet()) {
      bytes += Files.size(file);
    }
    String[] args = broken.args().toArray(String[]::new);
    long start = MACHINE.getProcessCpuTime();
    int code;
    try {
      code = worker.submit(() -> WetmilCommand.execute(args)).get(PATIENCE_S, TimeUnit.SECONDS);
    } catch (TimeoutException e) {
      report.accept("PROBLEM " + name + ": " + broken.what() + ": no end in sight");
      throw e;
    } catch (ExecutionException e) {
      code = -1;
      err.writeBytes(("escaped: " + e.getCause()).getBytes(StandardCharsets.UTF_8));
    }
    System.setOut(usualOut);
    System.setErr(usualErr);
    long tookMs = TimeUnit.NANOSECONDS.toMillis(MACHINE.getProcessCpuTime() - start);
    outcomes.merge(
        "ms by " + broken.what().replaceAll("[\\[\\]].*", ""), (int) tookMs, Integer::sum);
    if (tookMs > slowestMs) {
      slowestMs = tookMs;
      slowest = name + ": " + broken.what();
    }
    List<String> said = err.toString(StandardCharsets.UTF_8).lines().toList();
    Map<Path, String> after = contents();
    List<Path> written =
        after.keySet().stream().filter(file -> file.startsWith(broken.output())).toList();
    List<String> problems =
        Promises.broken(broken, code, written, said, out.toString(StandardCharsets.UTF_8));
    if (tookMs > TimeUnit.SECONDS.toMillis(LIMIT_S * (broken.files() + (bytes >> 20)))) {
      problems.add("it takes " + tookMs + " ms of processor");
    }
    written.forEach(after::remove);
    if (!after.equals(before)) {
      problems.add("the folder is not as it was: " + after.keySet());
    }
    problems.forEach(each -> report.accept("PROBLEM " + name + ": " + broken.what() + ": " + each));
    String command = broken.args().get(0);
    String folders = broken.files() > 1 ? " folder" : "";
    String results = written.isEmpty() ? "" : ", written";
    outcomes.merge(command + folders + ", code " + code + results, 1, Integer::sum);
    if (code == 3) {
      said.stream()
          .map(Promises::kind)
          .distinct()
          .forEach(kind -> outcomes.merge(kind, 1, Integer::sum));
    }
    clear();
  }

  private Map<Path, String> contents() throws Exception {
    Map<Path, String> contents = new TreeMap<>();
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        contents.put(file, sha256(file));
      }
    }
    return contents;
  }

  private static String sha256(Path file) throws Exception {
    var digest = java.security.MessageDigest.getInstance("SHA-256");
    return HexFormat.of().formatHex(digest.digest(Files.readAllBytes(file)));
  }

  private void clear() throws IOException {
    List<Path> files;
    try (Stream<Path> all = Files.walk(folder)) {
      files = new ArrayList<>(all.toList());
    }
    Collections.reverse(files);
    for (Path file : files) {
      if (!file.equals(folder)) {
        Files.delete(file);
      }
    }
  }
}
