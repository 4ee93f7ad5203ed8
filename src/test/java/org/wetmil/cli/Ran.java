package org.wetmil.cli;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import java.util.stream.Stream;

/** What a command line gave: its exit code and the lines it printed. */
record Ran(int code, List<String> out, List<String> err) {

  /** Runs a command line with a fixed date, so that nothing depends on the day. */
  static Ran fill(Object... args) {
    return of(Stream.concat(Stream.of("fill", "--date", "2026-01-05"), Stream.of(args)).toArray());
  }

  /** Runs any command line. */
  static Ran of(Object... args) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int code =
        WetmilCommand.commandLine()
            .setOut(new PrintWriter(out, true))
            .setErr(new PrintWriter(err, true))
            .execute(Stream.of(args).map(Object::toString).toArray(String[]::new));
    return new Ran(code, out.toString().lines().toList(), err.toString().lines().toList());
  }
}
