package org.wetmil.jobs;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.wetmil.catalogue.Names;
import org.wetmil.checks.Checks;
import org.wetmil.checks.Finding;
import org.wetmil.checks.ReconciledBooks;
import org.wetmil.estimate.Estimator;
import org.wetmil.estimate.FilledBid;
import org.wetmil.ledger.ItemName;
import org.wetmil.ledger.Ledger;
import org.wetmil.ledger.LedgerCounts;
import org.wetmil.ledger.UnusableLedgerException;
import org.wetmil.quantity.UnitSystem;
import org.wetmil.reconcile.ReconcileSettings;
import org.wetmil.reconcile.Reconciler;
import org.wetmil.reconcile.Reconciliation;
import org.wetmil.reconcile.bid.BidJob;
import org.wetmil.reconcile.bid.BidUses;
import org.wetmil.workbook.WorkbookException;
import org.wetmil.workbook.fill.StoredFigures;
import org.wetmil.workbook.opc.Passwords;
import org.wetmil.workbook.read.BidReader;
import org.wetmil.workbook.read.ReadWorkbook;
import org.wetmil.workbook.reconcile.ReconcileStamp;
import org.wetmil.workbook.reconcile.ReconcileWriter;

/** Compares purchases with bids: read, compare, check, write. */
public final class ReconcileJob {
  private final ReconcileRequest request;
  private final List<BidJob> jobs = new ArrayList<>();
  private final List<ReconciledBooks.BidRead> bids = new ArrayList<>();
  private final List<Ledger.Book> ledgers = new ArrayList<>();
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
    BidFiles found = BidFiles.of(request.bids());
    found.files().forEach(this::bid);
    request.purchases().forEach(this::ledger);
    List<ItemName> items = request.items() == null ? List.of() : items(request.items());
    if (jobs.isEmpty()) {
      refusals.add("no bid could be read, so nothing was compared.");
    } else if (ledgers.isEmpty()) {
      refusals.add("no ledger could be read, so nothing was compared.");
    }
    if (jobs.isEmpty() || ledgers.isEmpty()) {
      return new ReconcileReport(null, null, List.of(), found.notices(), refusals);
    }
    ReconcileSettings usual = ReconcileSettings.DEFAULT;
    ReconcileSettings settings =
        new ReconcileSettings(
            usual.toleranceShare(),
            usual.toleranceContainers(),
            usual.dropDuplicates(),
            request.from(),
            request.to());
    Reconciliation result = Reconciler.reconcile(jobs, ledgers, items, settings);
    UnitSystem system = bids.get(0).system();
    List<Finding> findings = Checks.run(new ReconciledBooks(result, ledgers, bids, system));
    Path output = request.out() == null ? usualName(files.get(0)) : request.out();
    ReconcileStamp stamp = new ReconcileStamp(request.date(), request.version(), inputs);
    new ReconcileWriter(result, findings, system, stamp).write(files, output, request.overwrite());
    return new ReconcileReport(output, result, findings, found.notices(), refusals);
  }

  private void bid(Path file) {
    try {
      String sha256 = Fingerprint.of(file).sha256();
      ReadWorkbook read = BidReader.read(file);
      FilledBid filled = Estimator.fill(read.bid());
      List<String> missing = List.of();
      if (read.filledBefore()) {
        StoredFigures.Result stored = StoredFigures.over(file, Passwords.NONE, read, filled);
        filled = stored.bid();
        missing = stored.missing();
      }
      BidJob job = BidUses.of(filled);
      jobs.add(job);
      String name = file.getFileName().toString();
      bids.add(
          new ReconciledBooks.BidRead(
              name, jobName(job), read.bid().system(), read.filledBefore(), missing));
      String how = read.filledBefore() ? "filled, taken as it stands" : "not filled, computed here";
      input(file, "bid of " + job.name() + ", " + how, sha256);
    } catch (WorkbookException e) {
      refusals.add(e.getMessage());
    }
  }

  /** The name under which bids of one job are taken together. */
  private String jobName(BidJob job) {
    return jobs.stream()
        .map(BidJob::name)
        .filter(name -> Names.key(name).equals(Names.key(job.name())))
        .findFirst()
        .orElseThrow();
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
          "ledger: %d lines; not counted: %d title, %d blank, %d totals lines"
              .formatted(counts.lines(), counts.titles(), counts.blanks(), counts.totals().size()),
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
      requireText(file);
      List<ItemName> items =
          ItemName.read(file.getFileName().toString(), () -> Files.newInputStream(file));
      input(file, "table of items: " + items.size() + " rows", sha256);
      return items;
    } catch (UnusableLedgerException | WorkbookException e) {
      refusals.add(e.getMessage());
    } catch (IOException e) {
      refusals.add(file + ": the file cannot be read.");
    }
    return List.of();
  }

  private void input(Path file, String what, String sha256) {
    files.add(file);
    inputs.add(new ReconcileStamp.Input(file.getFileName().toString(), what, sha256));
  }

  /** A workbook in the place of a text file is told from its first letters. */
  private static void requireText(Path file) throws IOException {
    try (var in = Files.newInputStream(file)) {
      byte[] first = in.readNBytes(2);
      if (first.length == 2 && first[0] == 'P' && first[1] == 'K') {
        throw new WorkbookException.Unreadable(
            file, "this is a workbook; save its sheet as CSV first.", null);
      }
    }
  }

  /** BID-reconciled.xlsx beside BID.xlsx or BID-filled.xlsx. */
  static Path usualName(Path bid) {
    String name = bid.getFileName().toString();
    int dot = name.lastIndexOf('.');
    String stem = dot < 0 ? name : name.substring(0, dot);
    return bid.resolveSibling(stem.replaceFirst("-filled(-\\d+)?$", "") + "-reconciled.xlsx");
  }
}
