package org.wetmil.cli;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import picocli.CommandLine;

/** Workbooks and folders named without a command, as the desktop does, are filled. */
final class Dropped {
  /**
   * The line with which Windows started the launcher. Java itself gets names in the code page of
   * the machine, which lacks most of the world's letters; the environment keeps them.
   */
  static final String WINDOWS_LINE = "WETMIL_DROPPED";

  private Dropped() {}

  /**
   * The command line that is meant.
   *
   * @param windowsLine value of {@link #WINDOWS_LINE}; null elsewhere
   */
  static String[] meant(CommandLine commandLine, String[] args, String windowsLine) {
    List<String> words = windowsLine == null ? List.of(args) : afterLauncher(windowsLine);
    if (words.isEmpty()
        || commandLine.getSubcommands().containsKey(words.get(0))
        || !isThere(words.get(0))) {
      return words.toArray(String[]::new);
    }
    // nobody is there to add an option, and what was filled before may have been worked on since
    return Stream.concat(Stream.of("fill", FillCommand.NUMBER), words.stream())
        .toArray(String[]::new);
  }

  /** The words after the launcher's own name in a line such as cmd.exe /c ""launcher" file". */
  private static List<String> afterLauncher(String line) {
    int command = line.toLowerCase(Locale.ROOT).indexOf("/c ");
    String rest = line.substring(command < 0 ? 0 : command + 3).strip();
    boolean wrapped = rest.startsWith("\"\"") && rest.endsWith("\"");
    List<String> words = words(wrapped ? rest.substring(1, rest.length() - 1) : rest);
    return words.subList(Math.min(1, words.size()), words.size());
  }

  /** Words between spaces; in quotes a space belongs to the word. A name holds no quote itself. */
  private static List<String> words(String line) {
    List<String> words = new ArrayList<>();
    StringBuilder word = new StringBuilder();
    boolean quoted = false;
    for (char each : (line + " ").toCharArray()) {
      if (each == '"') {
        quoted = !quoted;
      } else if (each != ' ' || quoted) {
        word.append(each);
      } else if (!word.isEmpty()) {
        words.add(word.toString());
        word.setLength(0);
      }
    }
    return words;
  }

  private static boolean isThere(String word) {
    try {
      return Files.exists(Path.of(word));
    } catch (InvalidPathException e) {
      return false;
    }
  }
}
