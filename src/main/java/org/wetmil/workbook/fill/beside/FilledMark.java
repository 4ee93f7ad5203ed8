package org.wetmil.workbook.fill.beside;

import java.nio.file.Path;
import java.util.Optional;
import org.wetmil.workbook.WorkbookException;
import org.wetmil.workbook.opc.Passwords;
import org.wetmil.workbook.stream.CustomProperty;
import org.wetmil.workbook.stream.PackageReader;

/** Tells from outside whether a workbook was filled by this program, and from which file. */
public final class FilledMark {
  private FilledMark() {}

  public static boolean isFilled(Path file, Passwords passwords) {
    return property(file, passwords, Marks.PROPERTY).isPresent();
  }

  /** Name of the file that a filled workbook came from; empty for any other file. */
  public static Optional<String> source(Path file, Passwords passwords) {
    return property(file, passwords, Marks.SOURCE);
  }

  /** The same for a file that no password opens. */
  public static Optional<String> source(Path file) {
    return source(file, Passwords.NONE);
  }

  /** Whether the workbook compares purchases with bids, and so is no bid itself. */
  public static boolean isReconciled(Path file) {
    return property(file, Passwords.NONE, Marks.RECONCILED).isPresent();
  }

  /** Whether the workbook says what past bids came to, and so is no bid itself. */
  public static boolean isAudited(Path file) {
    return property(file, Passwords.NONE, Marks.AUDITED).isPresent();
  }

  /** Whether the workbook compares two versions of a bid, and so is no bid itself. */
  public static boolean isCompared(Path file) {
    return property(file, Passwords.NONE, Marks.COMPARED).isPresent();
  }

  private static Optional<String> property(Path file, Passwords passwords, String name) {
    try (PackageReader reader = PackageReader.open(file, passwords)) {
      return reader.customProperties().stream()
          .filter(property -> property.name().equals(name))
          .map(CustomProperty::value)
          .findFirst();
    } catch (WorkbookException e) {
      // what cannot be read carries no mark; whoever fills it says why it cannot be read
      return Optional.empty();
    }
  }
}
