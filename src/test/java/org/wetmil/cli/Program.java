package org.wetmil.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/**
 * The program as a process of its own.
 *
 * @param process the process, started
 * @param logs the folder that holds what it prints
 */
record Program(Process process, Path logs) {
  private static final long PATIENCE_S = 180;

  /** What it came to. */
  record Ended(int code, List<String> out, List<String> err) {}

  /**
   * Starts it in a session of UTF-8.
   *
   * @param logs a folder for what it prints, outside of those that it works on
   */
  static Program start(Path logs, Object... args) throws IOException {
    return start(logs, List.of(), "", args);
  }

  /**
   * @param options of the Java machine
   * @param charset the session's; "" for that of the tests
   */
  static Program start(Path logs, List<String> options, String charset, Object... args)
      throws IOException {
    List<String> command = java(options);
    for (Object each : args) {
      command.add(each.toString());
    }
    return started(logs, charset, command);
  }

  /**
   * Starts it from a shell.
   *
   * @param words what follows the name of the program, as it is typed
   */
  static Program shell(Path logs, String charset, String words) throws IOException {
    String line = String.join(" ", java(List.of())) + " " + words;
    return started(logs, charset, List.of("sh", "-c", line));
  }

  /**
   * Starts another class of the tests.
   *
   * @param folder its first argument
   * @param args the others
   */
  static Program main(String name, Path logs, List<String> options, Path folder, String... args)
      throws IOException {
    List<String> command = java(options);
    command.set(command.size() - 1, name);
    command.add(folder.toString());
    command.addAll(List.of(args));
    return started(logs, "", command);
  }

  private static List<String> java(List<String> options) {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(
        List.of(
            "-XX:TieredStopAtLevel=1",
            "-XX:+UseSerialGC",
            "-Xshare:auto",
            "-XX:MetaspaceSize=64m"));
    command.addAll(options);
    command.addAll(List.of("-cp", System.getProperty("java.class.path"), "org.wetmil.Main"));
    return command;
  }

  private static Program started(Path logs, String charset, List<String> command)
      throws IOException {
    Path own = Files.createTempDirectory(logs, "run");
    ProcessBuilder builder = new ProcessBuilder(command);
    if (!charset.isEmpty()) {
      builder.environment().put("LC_ALL", charset);
    }
    builder.redirectOutput(own.resolve("out").toFile());
    builder.redirectError(own.resolve("err").toFile());
    return new Program(builder.start(), own);
  }

  /** Waits until a text is in what it has printed. */
  void await(String stream, String text) throws IOException, InterruptedException {
    long until = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE_S);
    while (lines(stream).stream().noneMatch(line -> line.contains(text))) {
      assertThat(System.nanoTime()).as("waiting for: " + text).isLessThan(until);
      Thread.sleep(100);
    }
  }

  Ended end() throws IOException, InterruptedException {
    return end(PATIENCE_S);
  }

  /**
   * @param patience seconds to wait for it
   */
  Ended end(long patience) throws IOException, InterruptedException {
    assertThat(process.waitFor(patience, TimeUnit.SECONDS)).isTrue();
    return new Ended(process.exitValue(), lines("out"), lines("err"));
  }

  private List<String> lines(String name) throws IOException {
    return Files.readAllLines(logs.resolve(name), StandardCharsets.UTF_8);
  }
}
