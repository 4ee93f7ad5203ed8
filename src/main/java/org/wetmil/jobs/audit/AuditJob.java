package org.wetmil.jobs.audit;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.wetmil.audit.Audit;
import org.wetmil.audit.past.Measure;
import org.wetmil.audit.past.PastBid;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Quoted;
import org.wetmil.catalogue.TableProblem;
import org.wetmil.jobs.FillRun;
import org.wetmil.jobs.ResultName;
import org.wetmil.ledger.Actuals;
import org.wetmil.ledger.UnusableLedgerException;
import org.wetmil.quantity.UnitSystem;
import org.wetmil.workbook.WorkbookException;
import org.wetmil.workbook.audit.AuditBook;
import org.wetmil.workbook.audit.AuditFinding;
import org.wetmil.workbook.audit.AuditStamp;
import org.wetmil.workbook.audit.AuditWriter;
import org.wetmil.workbook.audit.AuditedJob;
import org.wetmil.workbook.audit.LeftOut;
import org.wetmil.workbook.audit.TablesWriter;
import org.wetmil.workbook.copy.OutputFile;
import org.wetmil.workbook.copy.SpreadsheetClasses;
import org.wetmil.workbook.opc.FileName;
import org.wetmil.workbook.opc.Passwords;
import org.wetmil.workbook.read.BidReader;

/** Audits a folder of past bids: read, compare, write. */
public final class AuditJob {
  private final AuditOptions options;
  private final AuditListener listener;
  private final Reader reader;

  /** Reads one bid, as {@link PastBook} does. */
  @FunctionalInterface
  interface Reader {
    PastBook read(Path file, UnitSystem system, Catalogue today);
  }

  public AuditJob(AuditOptions options, AuditListener listener) {
    this(options, listener, PastBook::read);
  }

  AuditJob(AuditOptions options, AuditListener listener, Reader reader) {
    this.options = options;
    this.listener = listener;
    this.reader = reader;
  }

  /** A bid as read, or the reason why it could not be. */
  private record Attempt(PastBook book, LeftOut failure) {}

  /** Where the result goes when no other place is named: in the folder above, also of "." */
  public static Path usualName(Path folder) {
    Path named = folder.normalize();
    boolean bare = named.toString().isEmpty() || named.endsWith("..");
    return (bare ? folder.toAbsolutePath().normalize() : named).resolveSibling("audit.xlsx");
  }

  private static void requireTwoFiles(Path output, Path tables) {
    if (tables.toAbsolutePath().normalize().equals(output.toAbsolutePath().normalize())) {
      throw new WorkbookException.Unwritable(
          tables, "this is the file of the audit itself; name another with --write-tables.", null);
    }
  }

  /**
   * Audits the bids directly in a folder into a new workbook.
   *
   * @throws WorkbookException when the folder or the list of actuals cannot be used, no bid can be
   *     read, or the result cannot be written
   */
  public AuditReport audit(Path folder, Path output) {
    ResultName.requireWorkbook(output);
    if (options.tables() != null) {
      ResultName.requireWorkbook(options.tables());
      requireTwoFiles(output, options.tables());
    }
    Actuals actuals = actuals();
    List<AuditFinding> findings = new ArrayList<>();
    Catalogue today = today(findings);
    BidFolder found = BidFolder.of(folder);
    List<Attempt> attempts = attempts(found.bids(), today);
    List<PastBook> books =
        attempts.stream().filter(each -> each.book() != null).map(Attempt::book).toList();
    List<LeftOut> leftOut = new ArrayList<>(found.leftOut());
    attempts.stream().filter(a -> a.failure() != null).map(Attempt::failure).forEach(leftOut::add);
    leftOut.sort(Comparator.comparing(LeftOut::readable).thenComparing(LeftOut::file));
    if (books.isEmpty()) {
      throw new WorkbookException.Unreadable(
          folder,
          leftOut.isEmpty()
              ? "no bid workbook (.xlsx or .xls) is in this folder."
              : "no bid in this folder can be read; " + leftOut.get(0).reason(),
          null);
    }
    String actualsName = options.actuals() == null ? "" : FileName.of(options.actuals());
    Outcomes outcomes = new Outcomes(actualsName, actuals, books);
    List<PastBid> bids = outcomes.bids();
    Audit audit = Audit.of(bids, today, options.paintTable(), options.system());
    findings.addAll(outcomes.findings());
    books.forEach(book -> Mistakes.of(book).forEach(findings::add));
    List<AuditedJob> jobs =
        IntStream.range(0, books.size()).mapToObj(i -> job(books.get(i), bids.get(i))).toList();
    AuditStamp stamp =
        new AuditStamp(FileName.of(folder), actualsName, options.date(), options.version());
    AuditBook book = new AuditBook(audit, jobs, findings, leftOut, options.system(), stamp);
    List<Path> inputs = new ArrayList<>(found.bids());
    Stream.of(options.actuals(), options.today()).filter(Objects::nonNull).forEach(inputs::add);
    if (options.tables() != null) {
      // what keeps the second file away is said before the first is in place
      OutputFile.claim(inputs, options.tables(), options.overwrite()).close();
    }
    AuditWriter.write(book, inputs, output, options.overwrite());
    int figures =
        options.tables() == null
            ? 0
            : TablesWriter.write(
                audit.suggestions(),
                options.system(),
                inputs,
                options.tables(),
                options.overwrite());
    return new AuditReport(bids.size(), findings.size(), figures, leftOut, audit.verdict());
  }

  /** The tables to bid with now: the built-in ones with the owner's laid over them. */
  private Catalogue today(List<AuditFinding> findings) {
    if (options.today() == null) {
      return Catalogue.builtIn();
    }
    List<TableProblem> problems = new ArrayList<>();
    Catalogue today =
        Catalogue.builtIn()
            .with(BidReader.tables(options.today(), Passwords.NONE), options.system(), problems);
    problems.forEach(
        problem ->
            findings.add(
                new AuditFinding(
                    FileName.of(options.today()),
                    problem.sheet() + "!" + problem.address(),
                    "cannot be used",
                    "%s stands there; expected %s."
                        .formatted(Quoted.of(problem.raw()), problem.expected()))));
    return today;
  }

  private Actuals actuals() {
    Path file = options.actuals();
    if (file == null) {
      return Actuals.none();
    }
    try {
      return Actuals.read(FileName.of(file), () -> Files.newInputStream(file));
    } catch (UnusableLedgerException e) {
      throw new WorkbookException.Unreadable(file, e.getMessage(), e);
    } catch (IOException e) {
      throw new WorkbookException.Unreadable(
          file, Files.exists(file) ? "the file cannot be read." : "the file is not there.", e);
    }
  }

  /** On all cores, in the order of the files. */
  private List<Attempt> attempts(List<Path> files, Catalogue today) {
    SpreadsheetClasses.load();
    AtomicInteger done = new AtomicInteger();
    return files.parallelStream()
        .map(
            file -> {
              Attempt attempt = attempt(file, today);
              listener.read(done.incrementAndGet(), files.size());
              return attempt;
            })
        .toList();
  }

  private Attempt attempt(Path file, Catalogue today) {
    try {
      return new Attempt(reader.read(file, options.system(), today), null);
    } catch (WorkbookException e) {
      String reason = e.getMessage();
      String path = file + ": ";
      String bare = reason.startsWith(path) ? reason.substring(path.length()) : reason;
      return new Attempt(null, new LeftOut(FileName.of(file), false, bare));
    } catch (OutOfMemoryError e) {
      return new Attempt(null, new LeftOut(FileName.of(file), false, FillRun.OUT_OF_MEMORY));
    } catch (RuntimeException | StackOverflowError e) {
      // a fault of the program on one bid must not cost the owner the other thousand
      return new Attempt(
          null,
          new LeftOut(
              FileName.of(file), false, "A fault of the program (" + e + "); please report it."));
    }
  }

  private static AuditedJob job(PastBook book, PastBid bid) {
    return new AuditedJob(
        book.name(),
        bid,
        book.read(),
        book.notFilled(),
        book.estimated().get(Measure.PAINT),
        book.estimated().get(Measure.HOURS),
        book.moves(),
        book.checks());
  }
}
