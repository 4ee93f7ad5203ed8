package org.wetmil.jobs;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.wetmil.workbook.WorkbookException;
import org.wetmil.workbook.fill.beside.FilledMark;
import org.wetmil.workbook.opc.FileName;
import org.wetmil.workbook.opc.Passwords;

/**
 * The workbooks that a command line names: files as they stand, and of a folder the spreadsheets
 * directly in it. A file that is named twice, in whatever spelling, is taken once.
 */
public final class Inputs {
  private static final Set<String> TAKEN = Set.of("xlsx", "xlsm", "xltx", "xltm");
  private static final Set<String> OTHER = Set.of("xls", "xlsb", "ods", "csv");

  /** What stands for bytes of a name that are no characters of the session's set. */
  private static final char UNKNOWN = '\uFFFD';

  private final Map<Path, Path> files = new LinkedHashMap<>();
  private final List<PassedOver> passedOver = new ArrayList<>();
  private final List<Refused> refused = new ArrayList<>();
  private final Passwords passwords;
  private boolean fromFolder;

  /** A file of a folder that was left alone. */
  public record PassedOver(Path file, String why) {}

  /** What gives no workbook, such as an empty folder, with the sentence that says so. */
  public record Refused(Path file, String sentence) {}

  private Inputs(Passwords passwords) {
    this.passwords = passwords;
  }

  public static Inputs of(List<Path> named) {
    return of(named, Passwords.NONE);
  }

  /** The same, with passwords that may open them. */
  public static Inputs of(List<Path> named, Passwords passwords) {
    Inputs inputs = new Inputs(passwords);
    for (Path path : named) {
      if (Files.isDirectory(path)) {
        inputs.addFolder(path);
      } else {
        inputs.add(path);
      }
    }
    return inputs;
  }

  /** In the order named, those of a folder by name. */
  public List<Path> files() {
    return List.copyOf(files.values());
  }

  /** Files of a folder that were left alone, with the reason. */
  public List<PassedOver> passedOver() {
    return List.copyOf(passedOver);
  }

  /** Folders and other things that give no workbook. */
  public List<Refused> refused() {
    return List.copyOf(refused);
  }

  Passwords passwords() {
    return passwords;
  }

  /** Whether one file was named and nothing else. */
  public boolean isOneFile() {
    return files.size() == 1 && !fromFolder;
  }

  /** Whether a path leads to one of the files. */
  public boolean contains(Path path) {
    return files.containsKey(place(path));
  }

  /** Files as named, without those that are named again in whatever spelling. */
  static List<Path> once(List<Path> named) {
    Map<Path, Path> files = new LinkedHashMap<>();
    named.forEach(file -> files.putIfAbsent(place(file), file));
    return List.copyOf(files.values());
  }

  private void add(Path file) {
    if (file.toString().indexOf(UNKNOWN) >= 0) {
      refuse(
          file,
          "the name has characters that this session does not know; set LC_ALL=C.UTF-8, or rename"
              + " the file or its folder, and run again.");
    } else if (Files.exists(file) && !Files.isRegularFile(file)) {
      // a pipe or a device may never end
      refuse(file, "this is no file on a disk; save the workbook in one.");
    } else {
      files.putIfAbsent(place(file), file);
    }
  }

  private void addFolder(Path folder) {
    fromFolder = true;
    try {
      List<Path> spreadsheets = listed(folder);
      spreadsheets.forEach(this::take);
      if (spreadsheets.stream().noneMatch(Inputs::isWorkbook)) {
        refuse(folder, "no workbook (.xlsx, .xlsm, .xltx or .xltm) is in this folder.");
      }
    } catch (WorkbookException e) {
      refused.add(new Refused(folder, e.getMessage()));
    }
  }

  /** The spreadsheets directly in a folder, by name; hidden ones and lock files left out. */
  public static List<Path> listed(Path folder) {
    try (Stream<Path> entries = Files.list(folder)) {
      return entries
          .filter(file -> !isHidden(file) && Files.isRegularFile(file))
          .filter(file -> isWorkbook(file) || OTHER.contains(ending(file)))
          .sorted(Comparator.comparing(FileName::of))
          .toList();
    } catch (IOException | UncheckedIOException e) {
      throw new WorkbookException.Unreadable(
          folder, "the folder cannot be read; check its permissions.", e);
    }
  }

  /** Whether a file is a workbook by the ending of its name. */
  public static boolean isWorkbook(Path file) {
    return TAKEN.contains(ending(file));
  }

  private void refuse(Path folder, String why) {
    refused.add(new Refused(folder, folder + ": " + why));
  }

  private void take(Path file) {
    if (OTHER.contains(ending(file))) {
      passedOver.add(new PassedOver(file, "save it as .xlsx in a spreadsheet program first"));
      return;
    }
    Optional<String> other = FilledMark.otherThanABid(file);
    if (other.isPresent()) {
      passedOver.add(new PassedOver(file, other.get()));
    } else if (isBesideItsSource(file)) {
      passedOver.add(new PassedOver(file, "it was filled from a workbook beside it"));
    } else {
      add(file);
    }
  }

  private boolean isBesideItsSource(Path file) {
    return FilledMark.source(file, passwords).filter(source -> isBeside(file, source)).isPresent();
  }

  /** Whether another file of the source's name is there; a filled one may have taken the name. */
  private static boolean isBeside(Path file, String source) {
    try {
      Path beside = file.resolveSibling(source);
      return Files.exists(beside) && !place(beside).equals(place(file));
    } catch (InvalidPathException e) {
      return false;
    }
  }

  /** Whether a workbook of Excel 97-2003 was saved in a newer format beside itself. */
  public static boolean isSavedAnew(Path file, List<Path> listed) {
    return isOld(file)
        && listed.stream()
            .anyMatch(
                other -> isWorkbook(other) && withoutEnding(other).equals(withoutEnding(file)));
  }

  private static String withoutEnding(Path file) {
    String name = FileName.of(file);
    return name.substring(0, name.length() - ending(file).length());
  }

  /** Whether a file is a workbook of Excel 97-2003 by the ending of its name. */
  public static boolean isOld(Path file) {
    return ending(file).equals("xls");
  }

  /** Whether a file is hidden, or the lock of a workbook that is open in another program. */
  private static boolean isHidden(Path file) {
    String name = file.getFileName().toString();
    try {
      return name.startsWith("~$") || name.startsWith(".") || Files.isHidden(file);
    } catch (IOException e) {
      return false;
    }
  }

  /** One path for all spellings of a file. */
  static Path place(Path file) {
    try {
      return file.toRealPath();
    } catch (IOException e) {
      return file.toAbsolutePath().normalize();
    }
  }

  public static String ending(Path file) {
    String name = FileName.of(file);
    int dot = name.lastIndexOf('.');
    return dot < 0 ? "" : name.substring(dot + 1).toLowerCase(Locale.ROOT);
  }
}
