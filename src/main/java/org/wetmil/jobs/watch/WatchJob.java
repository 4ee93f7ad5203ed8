package org.wetmil.jobs.watch;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.wetmil.jobs.FillListener;
import org.wetmil.jobs.FillReport;
import org.wetmil.jobs.FillRun;
import org.wetmil.jobs.Inputs;
import org.wetmil.jobs.Outputs;
import org.wetmil.workbook.WorkbookException;
import org.wetmil.workbook.stream.PackageReader;

/**
 * Fills the workbooks of a folder as they are saved there. It looks at the folder again and again,
 * as disks of a network tell nobody of a change.
 */
public final class WatchJob {
  private final Path folder;
  private final FillRun.Filler filler;
  private final List<FillListener> listeners;
  private final Consumer<Inputs.PassedOver> passedOver;
  private final Settling settling;
  private final Map<Path, Stamp> written = new HashMap<>();

  /**
   * Begins to watch; what is in the folder now is left as it is until it is saved again.
   *
   * @param filler fills one workbook, over the result it is given
   * @param passedOver is told of spreadsheets of another kind that are saved there
   * @throws WorkbookException when it is a file, or the folder cannot be read
   */
  public WatchJob(
      Path folder,
      FillRun.Filler filler,
      FillListener listener,
      Consumer<Inputs.PassedOver> passedOver) {
    requireFolder(folder);
    this.folder = folder;
    this.filler = filler;
    this.listeners = List.of(listener, new Written());
    this.passedOver = passedOver;
    this.settling = new Settling(stamps());
  }

  private static void requireFolder(Path folder) {
    if (Files.isRegularFile(folder)) {
      throw new WorkbookException.Unreadable(
          folder,
          "this is a file, and watch takes a folder; name the folder that it is in, or use the"
              + " command fill for the file alone.",
          null);
    }
    if (Files.notExists(folder)) {
      throw new WorkbookException.Unreadable(
          folder, "there is no such folder; check its name.", null);
    }
  }

  /** How many workbooks are in the folder. */
  public int workbooks() {
    return (int) stamps().keySet().stream().filter(Inputs::isWorkbook).count();
  }

  /**
   * Looks at the folder once and fills what was saved and has come to rest.
   *
   * @param now time since the watch began
   * @throws WorkbookException when the folder cannot be read, as one of a network that is away
   */
  public void look(Duration now) {
    List<Path> settled = settling.settled(stamps(), now, WatchJob::isWhole);
    if (!settled.isEmpty()) {
      Inputs all = Inputs.of(List.of(folder));
      settled.stream().filter(all::contains).forEach(this::fill);
      all.passedOver().stream()
          .filter(other -> settled.contains(other.file()) && !Inputs.isWorkbook(other.file()))
          .forEach(passedOver);
    }
  }

  private void fill(Path bid) {
    Inputs one = Inputs.of(List.of(bid));
    new FillRun(filler, listeners).fill(one, new Outputs(null, one, this::isToBeKept));
  }

  /** A result stands as long as somebody else may have worked on it, or has it open. */
  private boolean isToBeKept(Path output) {
    boolean ours = Stamp.of(output).filter(now -> now.equals(written.get(output))).isPresent();
    return Files.exists(output) && (!ours || isOpen(output));
  }

  /** Spreadsheet programs lay a lock file of such a name beside a file that they have open. */
  private static boolean isOpen(Path file) {
    String name = file.getFileName().toString();
    return Files.exists(file.resolveSibling("~$" + name))
        || Files.exists(file.resolveSibling(".~lock." + name + "#"));
  }

  private static boolean isWhole(Path file) {
    try {
      PackageReader.open(file).close();
      return true;
    } catch (OutOfMemoryError | StackOverflowError e) {
      // waiting mends nothing; whoever fills it says why it cannot be read
      return true;
    } catch (WorkbookException e) {
      return false;
    }
  }

  private Map<Path, Stamp> stamps() {
    Map<Path, Stamp> stamps = new LinkedHashMap<>();
    for (Path file : Inputs.listed(folder)) {
      Stamp.of(file).ifPresent(stamp -> stamps.put(file, stamp));
    }
    return stamps;
  }

  /** Remembers the results, so that they are taken for no bids and may be written over. */
  private final class Written implements FillListener {
    @Override
    public void filled(FillReport report) {
      Stamp.of(report.output())
          .ifPresent(
              stamp -> {
                written.put(report.output(), stamp);
                settling.know(report.output(), stamp);
              });
    }

    @Override
    public void refused(Path input, String sentence) {}

    @Override
    public void fault(Path input, Throwable fault) {}
  }
}
