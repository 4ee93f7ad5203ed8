package org.wetmil.jobs;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.wetmil.workbook.fill.beside.FilledMark;

/**
 * The bids to compare: of a bid and what was filled from it, the filled one alone.
 *
 * @param files in the order named
 * @param notices what was passed over, and why
 */
record BidFiles(List<Path> files, List<String> notices) {

  static BidFiles of(List<Path> named) {
    Map<Path, Path> byPlace = new LinkedHashMap<>();
    List<String> notices = new ArrayList<>();
    for (Path path : named) {
      List<Path> files = Files.isDirectory(path) ? workbooks(path, notices) : List.of(path);
      files.forEach(file -> byPlace.putIfAbsent(Inputs.place(file), file));
    }
    Map<Path, Path> filledFrom = new HashMap<>();
    List<Path> kept = new ArrayList<>(byPlace.values());
    for (Path file : byPlace.values()) {
      Optional<Path> source = FilledMark.source(file).flatMap(name -> beside(file, name));
      if (source.isEmpty() || source.get().equals(Inputs.place(file))) {
        continue;
      }
      Path other = filledFrom.putIfAbsent(source.get(), file);
      if (other != null) {
        kept.remove(file);
        notices.add(file + ": passed over, " + other + " is filled from the same bid and counts");
      }
    }
    filledFrom.forEach(
        (source, filled) -> {
          Path bid = byPlace.get(source);
          if (bid != null && kept.remove(bid)) {
            notices.add(bid + ": passed over, " + filled + " is filled from it and counts once");
          }
        });
    return new BidFiles(List.copyOf(kept), notices.stream().sorted().toList());
  }

  private static List<Path> workbooks(Path folder, List<String> notices) {
    List<Path> files = new ArrayList<>();
    List<Path> listed = Inputs.listed(folder);
    for (Path file : listed) {
      if (!Inputs.isWorkbook(file) && !Inputs.isOld(file)) {
        continue;
      }
      Optional<String> other = FilledMark.otherThanABid(file);
      if (other.isPresent()) {
        notices.add(file + ": passed over, " + other.get());
      } else if (Inputs.isSavedAnew(file, listed)) {
        notices.add(file + ": passed over, a newer workbook of the same name counts");
      } else {
        files.add(file);
      }
    }
    return files;
  }

  /** Empty for a name from elsewhere that no file can have here. */
  private static Optional<Path> beside(Path file, String name) {
    try {
      return Optional.of(Inputs.place(file.resolveSibling(name)));
    } catch (InvalidPathException e) {
      return Optional.empty();
    }
  }
}
