package org.wetmil.workbook.fill.beside;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.wetmil.workbook.WorkbookException;
import org.wetmil.workbook.opc.Passwords;
import org.wetmil.workbook.stream.CustomProperty;
import org.wetmil.workbook.stream.PackageReader;

/** Tells from outside whether a workbook was filled by this program, and from which file. */
public final class FilledMark {
  private static final Pattern FOR_CUSTOMER = Pattern.compile("(.+)-customer(-\\d+)?\\.xlsx");

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
    if (isForCustomer(file)) {
      return Optional.of("it is a copy for a customer");
    }
    return properties(file, Passwords.NONE).stream()
        .map(property -> NO_BIDS.get(property.name()))
        .filter(Objects::nonNull)
        .findFirst();
  }

  /** By its name beside a filled bid: nothing in what a customer gets says where it came from. */
  private static boolean isForCustomer(Path file) {
    Matcher name = FOR_CUSTOMER.matcher(file.getFileName().toString());
    return name.matches()
        && (Files.exists(file.resolveSibling(name.group(1) + "-filled.xlsx"))
            || Files.exists(file.resolveSibling(name.group(1) + "-filled.xlsm")));
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
    } catch (WorkbookException | OutOfMemoryError | StackOverflowError e) {
      // what cannot be read carries no mark; whoever fills it says why it cannot be read
      return List.of();
    }
  }
}
