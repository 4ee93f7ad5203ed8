package org.wetmil.jobs;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.wetmil.catalogue.Names;
import org.wetmil.catalogue.TableProblem;
import org.wetmil.catalogue.Tables;
import org.wetmil.checks.Checks;
import org.wetmil.checks.Finding;
import org.wetmil.checks.ReconciledBooks;
import org.wetmil.estimate.Estimator;
import org.wetmil.estimate.FilledBid;
import org.wetmil.ledger.ItemName;
import org.wetmil.ledger.Ledger;
import org.wetmil.ledger.LedgerCounts;
import org.wetmil.ledger.UnusableLedgerException;
import org.wetmil.quantity.Count;
import org.wetmil.quantity.UnitSystem;
import org.wetmil.reconcile.Reconciler;
import org.wetmil.reconcile.Reconciliation;
import org.wetmil.reconcile.SettingsTaken;
import org.wetmil.reconcile.bid.BidJob;
import org.wetmil.reconcile.bid.BidUses;
import org.wetmil.workbook.WorkbookException;
import org.wetmil.workbook.fill.beside.StoredFigures;
import org.wetmil.workbook.read.BidReader;
import org.wetmil.workbook.read.ReadWorkbook;
import org.wetmil.workbook.read.ReadableCopy;
import org.wetmil.workbook.read.items.ItemSheets;
import org.wetmil.workbook.reconcile.ReconcileStamp;
import org.wetmil.workbook.reconcile.ReconcileWriter;

/** Compares purchases with bids: read, compare, check, write. */
public final class ReconcileJob {
  private final ReconcileRequest request;
  private final List<BidJob> jobs = new ArrayList<>();
  private final Map<String, String> names = new HashMap<>();
  private final List<ReconciledBooks.BidRead> bids = new ArrayList<>();
  private final List<Ledger.Book> ledgers = new ArrayList<>();
  private final List<SettingsTaken.Stated> stated = new ArrayList<>();
  private final List<List<ItemName>> tables = new ArrayList<>();
  private final List<ReconciledBooks.RefusedCell> refused = new ArrayList<>();
  private final List<ReconcileStamp.Input> inputs = new ArrayList<>();
  private final List<Path> files = new ArrayList<>();
  private final List<String> refusals = new ArrayList<>();

  private ReconcileJob(ReconcileRequest request) {
    this.request = request;
  }

  /**
   * Compares purchases with bids into a new workbook. What cannot be used is refused, and the rest
   * is compared.
   *
   * @throws WorkbookException when the output cannot be written; its message is one sentence for
   *     the user
   */
  public static ReconcileReport run(ReconcileRequest request) {
    return new ReconcileJob(request).run();
  }

  private ReconcileReport run() {
    if (request.out() != null) {
      ResultName.requireWorkbook(request.out());
    }
    BidFiles found = BidFiles.of(request.bids());
    found.files().forEach(this::bid);
    Inputs.once(request.purchases()).forEach(this::ledger);
    List<ItemName> items = request.items() == null ? List.of() : items(request.items());
    if (jobs.isEmpty()) {
      refusals.add("no bid could be read, so nothing was compared.");
    } else if (ledgers.isEmpty()) {
      refusals.add("no ledger could be read, so nothing was compared.");
    }
    if (jobs.isEmpty() || ledgers.isEmpty()) {
      return new ReconcileReport(null, null, List.of(), found.notices(), refusals);
    }
    SettingsTaken settings = SettingsTaken.of(stated);
    Reconciliation result =
        Reconciler.reconcile(jobs, ledgers, items, settings.over(request.from(), request.to()));
    UnitSystem system = bids.get(0).system();
    ReconciledBooks.OwnWords own = new ReconciledBooks.OwnWords(settings, tables, refused);
    List<Finding> findings = Checks.run(new ReconciledBooks(result, ledgers, bids, system, own));
    Path output = request.out() == null ? usualName(files.get(0)) : request.out();
    ReconcileStamp stamp = new ReconcileStamp(request.date(), request.version(), inputs, settings);
    new ReconcileWriter(result, findings, system, stamp).write(files, output, request.overwrite());
    return new ReconcileReport(output, result, findings, found.notices(), refusals);
  }

  private void bid(Path file) {
    try {
      ReadableCopy copy = ReadableCopy.of(file);
      String sha256 = Fingerprint.of(file).sha256();
      ReadWorkbook read = BidReader.read(copy);
      FilledBid filled = Estimator.fill(read.bid());
      List<String> missing = List.of();
      if (read.filledBefore()) {
        StoredFigures.Result stored = StoredFigures.over(copy, read, filled);
        filled = stored.bid();
        missing = stored.missing();
      }
      List<ItemName> items = ItemSheets.of(copy);
      BidJob job = BidUses.of(filled, items);
      jobs.add(job);
      String name = file.getFileName().toString();
      tables.add(items);
      stated.add(SettingsTaken.Stated.in(name, read.bid().catalogue()));
      refuse(name, read.bid().problems());
      bids.add(
          new ReconciledBooks.BidRead(
              name,
              jobName(job),
              read.bid().system(),
              job.currency(),
              read.filledBefore(),
              missing));
      String how = read.filledBefore() ? "filled, taken as it stands" : "not filled, computed here";
      input(file, "bid of " + job.name() + ", " + how, sha256);
    } catch (WorkbookException e) {
      refusals.add(e.getMessage());
    }
  }

  /** The name under which bids of one job are taken together: that of the first. */
  private String jobName(BidJob job) {
    return names.computeIfAbsent(Names.key(job.name()), key -> job.name());
  }

  private void ledger(Path file) {
    try {
      String sha256 = Fingerprint.of(file).sha256();
      requireText(file);
      Ledger.Book book =
          Ledger.open(
                  file.getFileName().toString(), () -> Files.newInputStream(file), request.order())
              .readAll();
      ledgers.add(book);
      LedgerCounts counts = book.counts();
      input(
          file,
          "ledger: %s; not counted: %d title, %d blank, %d totals"
              .formatted(
                  Count.of(counts.lines(), "line"),
                  counts.titles(),
                  counts.blanks(),
                  counts.totals().size()),
          sha256);
    } catch (UnusableLedgerException | WorkbookException e) {
      refusals.add(e.getMessage());
    } catch (IOException e) {
      refusals.add(file + ": the file cannot be read.");
    }
  }

  private List<ItemName> items(Path file) {
    try {
      String sha256 = Fingerprint.of(file).sha256();
      List<ItemName> items = isWorkbook(file) ? ownWorkbook(file) : ownText(file);
      tables.add(items);
      input(file, "table of items: " + Count.of(items.size(), "row"), sha256);
      return items;
    } catch (UnusableLedgerException | WorkbookException e) {
      refusals.add(e.getMessage());
    } catch (IOException e) {
      refusals.add(file + ": the file cannot be read.");
    }
    return List.of();
  }

  private static List<ItemName> ownText(Path file) throws IOException, UnusableLedgerException {
    return ItemName.read(file.getFileName().toString(), () -> Files.newInputStream(file));
  }

  /** The bookkeeper's own statements come before those of the bids. */
  private List<ItemName> ownWorkbook(Path file) {
    String name = file.getFileName().toString();
    ItemSheets.OwnBook own = ItemSheets.own(file);
    stated.add(0, SettingsTaken.Stated.in(name, own.settings()));
    refuse(name, own.problems());
    return own.items();
  }

  /** Only settings: what is amiss with other tables is for the estimator to know. */
  private void refuse(String file, List<TableProblem> problems) {
    problems.stream()
        .filter(problem -> problem.table().equals(Tables.SETTINGS.title()))
        .forEach(problem -> refused.add(new ReconciledBooks.RefusedCell(file, problem)));
  }

  private void input(Path file, String what, String sha256) {
    files.add(file);
    inputs.add(new ReconcileStamp.Input(file.getFileName().toString(), what, sha256));
  }

  private static void requireText(Path file) throws IOException {
    if (isWorkbook(file)) {
      throw new WorkbookException.Unreadable(
          file, "this is a workbook; save its sheet as CSV first.", null);
    }
  }

  /** A workbook in the place of a text file is told from its first letters, an old one too. */
  private static boolean isWorkbook(Path file) throws IOException {
    try (var in = Files.newInputStream(file)) {
      byte[] first = in.readNBytes(2);
      return Arrays.equals(first, new byte[] {'P', 'K'})
          || Arrays.equals(first, new byte[] {(byte) 0xD0, (byte) 0xCF});
    }
  }

  /** BID-reconciled.xlsx beside BID.xlsx or BID-filled.xlsx. */
  static Path usualName(Path bid) {
    String stem = ResultName.stem(bid).replaceFirst("-filled(-\\d+)?$", "");
    return bid.resolveSibling(stem + "-reconciled.xlsx");
  }
}
