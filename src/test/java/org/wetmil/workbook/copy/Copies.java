package org.wetmil.workbook.copy;

import java.nio.file.Path;
import java.util.List;
import org.wetmil.workbook.opc.Passwords;

/** Copies that are begun and written at once. */
public final class Copies {
  private Copies() {}

  /** Writes a copy to a file that is not there yet. */
  public static void write(Path input, Path output, Shaper shaper) {
    write(input, output, false, shaper);
  }

  /** Writes a copy, over an older one or not. */
  public static void write(Path input, Path output, boolean overwrite, Shaper shaper) {
    write(input, Passwords.NONE, output, overwrite, shaper);
  }

  /** Writes a copy of a workbook that may be protected. */
  public static void write(
      Path input, Passwords passwords, Path output, boolean overwrite, Shaper shaper) {
    try (LightCopy copy = LightCopy.begin(input, passwords, List.of(), output, overwrite)) {
      copy.write(shaper);
    }
  }
}
