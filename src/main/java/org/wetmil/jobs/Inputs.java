package org.wetmil.jobs;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import org.wetmil.workbook.WorkbookException;
import org.wetmil.workbook.fill.FilledMark;

/**
 * The workbooks that a command line names: files as they stand, and of a folder the spreadsheets
 * directly in it.
 *
 * @param files in the order named, those of a folder by name, each once
 * @param passedOver files of a folder that were left alone, with the reason
 * @param fromFolder whether any of them came from a folder
 */
public record Inputs(List<Path> files, List<PassedOver> passedOver, boolean fromFolder) {
  private static final Set<String> TAKEN = Set.of("xlsx", "xlsm", "xltx", "xltm");
  private static final Set<String> OTHER = Set.of("xls", "xlsb", "ods", "csv");

  /** A file of a folder that was left alone. */
  public record PassedOver(Path file, String why) {}

  public static Inputs of(List<Path> named) {
    Set<Path> files = new LinkedHashSet<>();
    List<PassedOver> passedOver = new ArrayList<>();
    boolean fromFolder = false;
    for (Path path : named) {
      if (Files.isDirectory(path)) {
        fromFolder = true;
        listed(path).forEach(file -> take(file, files, passedOver));
      } else {
        files.add(path);
      }
    }
    return new Inputs(List.copyOf(files), List.copyOf(passedOver), fromFolder);
  }

  static List<Path> listed(Path folder) {
    try (Stream<Path> entries = Files.list(folder)) {
      return entries
          .filter(file -> !Files.isDirectory(file))
          .filter(file -> !isHidden(file))
          .sorted()
          .toList();
    } catch (IOException e) {
      throw new WorkbookException.Unreadable(folder, "the folder cannot be read.", e);
    }
  }

  private static void take(Path file, Set<Path> files, List<PassedOver> passedOver) {
    String ending = ending(file);
    if (OTHER.contains(ending)) {
      passedOver.add(new PassedOver(file, "save it as .xlsx in a spreadsheet program first"));
    } else if (TAKEN.contains(ending)) {
      if (FilledMark.isReconciled(file)) {
        passedOver.add(new PassedOver(file, "it compares purchases with bids"));
      } else if (FilledMark.source(file)
          .map(file::resolveSibling)
          .filter(Files::exists)
          .isPresent()) {
        passedOver.add(new PassedOver(file, "it was filled from a workbook beside it"));
      } else {
        files.add(file);
      }
    }
  }

  static boolean isWorkbook(Path file) {
    return TAKEN.contains(ending(file));
  }

  private static boolean isHidden(Path file) {
    String name = file.getFileName().toString();
    return name.startsWith("~$") || name.startsWith(".");
  }

  static String ending(Path file) {
    String name = file.getFileName().toString();
    int dot = name.lastIndexOf('.');
    return dot < 0 ? "" : name.substring(dot + 1).toLowerCase(Locale.ROOT);
  }
}
