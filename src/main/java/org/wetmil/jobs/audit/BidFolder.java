package org.wetmil.jobs.audit;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.wetmil.jobs.Inputs;
import org.wetmil.workbook.WorkbookException;
import org.wetmil.workbook.audit.LeftOut;
import org.wetmil.workbook.fill.beside.FilledMark;
import org.wetmil.workbook.opc.FileName;

/**
 * The bids of a folder, each once: where both a bid and its filled workbook are there, the filled
 * one counts, since it says what was bid with.
 *
 * @param bids by name
 * @param leftOut other spreadsheets, with the reason
 */
record BidFolder(List<Path> bids, List<LeftOut> leftOut) {
  static BidFolder of(Path folder) {
    List<Path> files = spreadsheets(folder);
    Map<String, Path> byName =
        files.stream().collect(Collectors.toMap(FileName::of, Function.identity()));
    Set<Path> sources = new HashSet<>();
    List<LeftOut> leftOut = new ArrayList<>();
    List<Path> bids = new ArrayList<>();
    for (Path file : files) {
      if (!Inputs.isWorkbook(file) && !Inputs.isOld(file)) {
        leftOut.add(
            new LeftOut(
                FileName.of(file),
                false,
                "This format is not read; open it in a spreadsheet program and save it as .xlsx."));
      } else if (Inputs.isSavedAnew(file, files)) {
        leftOut.add(
            new LeftOut(
                FileName.of(file),
                true,
                "A newer workbook of the same name is here too and counts once."));
      } else if (FilledMark.otherThanABid(file).isPresent()) {
        leftOut.add(new LeftOut(FileName.of(file), true, "This is a result of Wetmil and no bid."));
      } else {
        Optional<Path> source =
            FilledMark.source(file).map(byName::get).filter(path -> !path.equals(file));
        if (source.isPresent() && !sources.add(source.get())) {
          leftOut.add(
              new LeftOut(
                  FileName.of(file),
                  true,
                  "Another workbook filled from " + FileName.of(source.get()) + " counts."));
        } else {
          bids.add(file);
        }
      }
    }
    bids.removeIf(sources::contains);
    sources.stream()
        .map(FileName::of)
        .sorted()
        .forEach(
            name ->
                leftOut.add(
                    new LeftOut(name, true, "Its filled workbook is here too and counts once.")));
    leftOut.sort(Comparator.comparing(LeftOut::file));
    return new BidFolder(List.copyOf(bids), List.copyOf(leftOut));
  }

  private static List<Path> spreadsheets(Path folder) {
    if (!Files.isDirectory(folder)) {
      throw new WorkbookException.Unreadable(
          folder, "this is no folder; name the folder that holds the bids.", null);
    }
    // a list of purchases or outcomes is no bid and nothing that was left out
    return Inputs.listed(folder).stream()
        .filter(file -> !Inputs.ending(file).equals("csv"))
        .toList();
  }
}
