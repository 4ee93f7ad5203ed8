package org.wetmil.jobs;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import java.util.function.Predicate;
import org.wetmil.workbook.WorkbookException;
import org.wetmil.workbook.fill.beside.FilledMark;
import org.wetmil.workbook.stream.PackageReader;

/** Names the outputs of one run: beside the input or where the user says, each once. */
public final class Outputs {
  private static final String FILLED = "-filled";

  private final Path out;
  private final Inputs inputs;
  private final Predicate<Path> taken;
  private final Set<String> given = new HashSet<>();

  /**
   * @param out what the user named; null for beside each input
   * @param inputs the inputs of this run
   */
  public Outputs(Path out, Inputs inputs) {
    this(out, inputs, file -> false);
  }

  /**
   * @param taken the files that are to be left alone, so that the next number is used
   */
  public Outputs(Path out, Inputs inputs, Predicate<Path> taken) {
    this.out = out;
    this.inputs = inputs;
    this.taken = taken;
  }

  /** The output for an input: none that this run reads, and none that it has named before. */
  public Path of(Path input) {
    if (out != null && inputs.isOneFile() && isWorkbookName(out)) {
      return named();
    }
    String stem = ResultName.stem(input);
    boolean again = FilledMark.isFilled(input, inputs.passwords());
    String base = again ? stem : stem + FILLED;
    String ending = ending(input);
    int number = again ? 2 : 1;
    Path path;
    do {
      String output = base + (number == 1 ? "" : "-" + number) + ending;
      path = out == null ? input.resolveSibling(output) : out.resolve(output);
      number++;
    } while (inputs.contains(path) || taken.test(path) || !given.add(key(path)));
    return path;
  }

  /** The file that the user named, or the next number after it; an input is refused later. */
  private Path named() {
    Path path = out;
    for (int number = 2; taken.test(path) && !inputs.contains(path); number++) {
      path = out.resolveSibling(ResultName.stem(out) + "-" + number + "." + Inputs.ending(out));
    }
    return path;
  }

  /** The file for the customer, beside an output of this run. */
  public Path customer(Path output) {
    String stem = ResultName.stem(output);
    String base = stem.endsWith(FILLED) ? stem.substring(0, stem.length() - FILLED.length()) : stem;
    Path path;
    int number = 1;
    do {
      String copy = base + "-customer" + (number == 1 ? "" : "-" + number) + ".xlsx";
      path = output.resolveSibling(copy);
      number++;
    } while (inputs.contains(path) || taken.test(path) || !given.add(key(path)));
    return path;
  }

  /** On some file systems names that differ in case are one. */
  private static String key(Path path) {
    return path.toAbsolutePath().normalize().toUri().toString().toLowerCase(Locale.ROOT);
  }

  private static boolean isWorkbookName(Path path) {
    String ending = Inputs.ending(path);
    return ending.equals("xlsx") || ending.equals("xlsm");
  }

  /** What suits the content, whatever the input is called; a template becomes a workbook. */
  private String ending(Path input) {
    try (PackageReader reader = PackageReader.open(input, inputs.passwords())) {
      return reader.kind().outputExtension();
    } catch (WorkbookException e) {
      // whoever fills it says why it cannot be read
      return ".xlsx";
    }
  }
}
