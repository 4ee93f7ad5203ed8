package org.wetmil.jobs;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import org.wetmil.workbook.fill.FilledMark;

/** Names the outputs of one run: beside the input or where the user says, each once. */
public final class Outputs {
  private final Path out;
  private final boolean single;
  private final Set<String> given = new HashSet<>();

  /**
   * @param out what the user named; null for beside each input
   * @param inputs the inputs of this run
   */
  public Outputs(Path out, Inputs inputs) {
    this.out = out;
    this.single = inputs.files().size() == 1 && !inputs.fromFolder();
  }

  /** The output for an input; made unique among the outputs of this run. */
  public Path of(Path input) {
    if (out != null && single && isWorkbookName(out) && !Files.isDirectory(out)) {
      return out;
    }
    String name = input.getFileName().toString();
    int dot = name.lastIndexOf('.');
    String stem = dot < 0 ? name : name.substring(0, dot);
    boolean again = FilledMark.isFilled(input);
    String base = again ? stem : stem + "-filled";
    String ending = ending(input);
    int number = again ? 2 : 1;
    Path path;
    do {
      String output = base + (number == 1 ? "" : "-" + number) + ending;
      path = out == null ? input.resolveSibling(output) : out.resolve(output);
      number++;
    } while (!given.add(path.toAbsolutePath().normalize().toString().toLowerCase(Locale.ROOT)));
    return path;
  }

  /** The file for the customer, beside an output. */
  public static Path customer(Path output) {
    String name = output.getFileName().toString();
    String stem = name.substring(0, name.lastIndexOf('.'));
    String base = stem.endsWith("-filled") ? stem.substring(0, stem.length() - 7) : stem;
    return output.resolveSibling(base + "-customer.xlsx");
  }

  private static boolean isWorkbookName(Path path) {
    String ending = Inputs.ending(path);
    return ending.equals("xlsx") || ending.equals("xlsm");
  }

  /** A template becomes a workbook; everything else keeps its ending. */
  private static String ending(Path input) {
    return switch (Inputs.ending(input)) {
      case "xlsm", "xltm" -> ".xlsm";
      default -> ".xlsx";
    };
  }
}
