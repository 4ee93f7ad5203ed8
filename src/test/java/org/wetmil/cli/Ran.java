package org.wetmil.cli;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;

/** What a command line gave: its exit code and the lines it printed. */
record Ran(int code, List<String> out, List<String> err) {

  /** Runs a command line with a fixed date, so that nothing depends on the day. */
  static Ran fill(Object... args) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    String[] words = new String[args.length + 3];
    words[0] = "fill";
    words[1] = "--date";
    words[2] = "2026-01-05";
    for (int i = 0; i < args.length; i++) {
      words[i + 3] = args[i].toString();
    }
    int code =
        WetmilCommand.commandLine()
            .setOut(new PrintWriter(out, true))
            .setErr(new PrintWriter(err, true))
            .execute(words);
    return new Ran(code, out.toString().lines().toList(), err.toString().lines().toList());
  }
}
