package org.wetmil.workbook.opc;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.wetmil.workbook.WorkbookException;

/**
 * Passwords that open workbooks. They come from a file, since what is typed on a command line can
 * be seen by others and is kept in its history.
 *
 * @param words tried one after another
 */
public record Passwords(List<String> words) {
  public static final Passwords NONE = new Passwords(List.of());

  /** Bytes of the longest file; more than one line for each workbook of a year. */
  private static final long MOST_BYTES = 1 << 20;

  public Passwords {
    words = List.copyOf(words);
  }

  /**
   * Reads a file with one password a line; blank lines are passed over.
   *
   * @throws WorkbookException when it cannot be read or holds none
   */
  public static Passwords in(Path file) {
    try {
      byte[] bytes = Files.readAllBytes(requireShort(file));
      String text = new String(bytes, StandardCharsets.UTF_8);
      String plain = text.startsWith("\uFEFF") ? text.substring(1) : text;
      List<String> words = plain.lines().filter(line -> !line.isBlank()).toList();
      if (words.isEmpty()) {
        throw new WorkbookException.Unreadable(
            file, "no password is in this file; write one on a line of its own.", null);
      }
      return new Passwords(words);
    } catch (IOException e) {
      throw WorkbookException.Unreadable.of(file, e);
    }
  }

  private static Path requireShort(Path file) throws IOException {
    if (Files.size(file) > MOST_BYTES) {
      throw new WorkbookException.Unreadable(
          file, "this is no file of passwords; write one password on a line.", null);
    }
    return file;
  }

  /** Passwords are in no message and no log. */
  @Override
  public String toString() {
    return words.size() + " passwords";
  }
}
