package org.wetmil.cli;

import java.util.Locale;
import org.wetmil.checks.Severity;
import picocli.CommandLine.Help.Ansi;

/** The word for a severity, on a terminal in a colour besides; the word alone says it all. */
final class SeverityWord {
  private SeverityWord() {}

  static String of(Severity severity, Ansi ansi) {
    String word = severity.name().toLowerCase(Locale.ROOT);
    if (!ansi.enabled()) {
      return word;
    }
    return switch (severity) {
      case STOP -> ansi.string("@|bold,red " + word + "|@");
      case WARNING -> ansi.string("@|bold,yellow " + word + "|@");
      case NOTE -> word;
    };
  }
}
