package org.wetmil.workbook.fill.beside;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.wetmil.workbook.WorkbookException;
import org.wetmil.workbook.opc.Passwords;
import org.wetmil.workbook.stream.CustomProperty;
import org.wetmil.workbook.stream.PackageReader;

/** Tells from outside whether a workbook was filled by this program, and from which file. */
public final class FilledMark {
  /** By the property that marks it, what a workbook of ours does that is no bid. */
  private static final Map<String, String> NO_BIDS =
      Map.of(
          Marks.RECONCILED, "it compares purchases with bids",
          Marks.COMPARED, "it compares two versions of a bid",
          Marks.AUDITED, "it says how past bids came out");

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

  /** What a workbook is that we made and that is no bid; empty for all others. */
  public static Optional<String> otherThanABid(Path file) {
    return properties(file, Passwords.NONE).stream()
        .map(property -> NO_BIDS.get(property.name()))
        .filter(Objects::nonNull)
        .findFirst();
  }

  private static Optional<String> property(Path file, Passwords passwords, String name) {
    return properties(file, passwords).stream()
        .filter(property -> property.name().equals(name))
        .map(CustomProperty::value)
        .findFirst();
  }

  private static List<CustomProperty> properties(Path file, Passwords passwords) {
    try (PackageReader reader = PackageReader.open(file, passwords)) {
      return reader.customProperties();
    } catch (WorkbookException e) {
      // what cannot be read carries no mark; whoever fills it says why it cannot be read
      return List.of();
    }
  }
}
