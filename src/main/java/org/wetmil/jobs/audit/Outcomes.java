package org.wetmil.jobs.audit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import org.wetmil.audit.past.Actual;
import org.wetmil.audit.past.Measure;
import org.wetmil.audit.past.PastBid;
import org.wetmil.audit.past.StatedActuals;
import org.wetmil.catalogue.Names;
import org.wetmil.catalogue.Quoted;
import org.wetmil.ledger.Actuals;
import org.wetmil.ledger.ActualsLine;
import org.wetmil.workbook.audit.AuditFinding;

/** Brings bids and the list of how jobs came out together; says what does not fit. */
final class Outcomes {
  /** Lines against the job, and the bid against the list, past which it is said (house rule). */
  private static final double AGREE = 0.02;

  private final String actualsName;
  private final Actuals actuals;
  private final List<PastBook> books;
  private final List<AuditFinding> findings = new ArrayList<>();
  private final Map<PastBook, List<ActualsLine>> linesOf = new HashMap<>();

  /**
   * @param actualsName the list's name to show
   */
  Outcomes(String actualsName, Actuals actuals, List<PastBook> books) {
    this.actualsName = actualsName;
    this.actuals = actuals;
    this.books = books;
  }

  /** The bids with their outcomes, in the order of the books. */
  List<PastBid> bids() {
    actuals.problems().forEach(this::problem);
    actuals.doubtfulDate().ifPresent(this::doubtful);
    Map<String, List<PastBook>> byJob = new TreeMap<>();
    for (PastBook book : books) {
      byJob.computeIfAbsent(Names.key(book.job()), job -> new ArrayList<>()).add(book);
      String stem = book.name().replaceFirst("\\.[^.]*$", "");
      List<PastBook> ofStem = byJob.computeIfAbsent(Names.key(stem), job -> new ArrayList<>());
      if (!ofStem.contains(book)) {
        ofStem.add(book);
      }
    }
    actuals.lines().forEach(line -> assign(line, byJob));
    Map<String, Integer> names = new HashMap<>();
    books.forEach(book -> names.merge(book.job(), 1, Integer::sum));
    return books.stream()
        .map(
            book ->
                bid(
                    book,
                    names.get(book.job()) == 1
                        ? book.job()
                        : book.job() + " (" + book.name() + ")"))
        .toList();
  }

  /** What did not fit, after {@link #bids}. */
  List<AuditFinding> findings() {
    return List.copyOf(findings);
  }

  private void problem(Actuals.Problem problem) {
    say(
        problem.line(),
        "cannot be read",
        "%s stands under %s; expected %s."
            .formatted(Quoted.of(problem.raw()), problem.heading(), problem.expected()));
  }

  private void doubtful(Actuals.DoubtfulDate doubtful) {
    say(
        doubtful.line(),
        "day or month",
        "%s is read as %s, but %s; write such dates as %s, or Year and Drift may be wrong."
            .formatted(
                Quoted.of(doubtful.raw()),
                doubtful.date(),
                doubtful.mixed()
                    ? "some dates of the column have the day first and some the month"
                    : "no date of the column tells whether the day or the month comes first",
                doubtful.date()));
  }

  private void assign(ActualsLine line, Map<String, List<PastBook>> byJob) {
    List<PastBook> found = byJob.getOrDefault(Names.key(line.job()), List.of());
    if (found.size() == 1) {
      linesOf.computeIfAbsent(found.get(0), book -> new ArrayList<>()).add(line);
    } else if (found.isEmpty()) {
      say(
          line.line(),
          "no such bid",
          "No bid of the folder is the job \"%s\"; write its name as the bid or its file has it."
              .formatted(line.job()));
    } else {
      say(
          line.line(),
          "several such bids",
          "\"%s\" names %d bids; write the name of the file instead."
              .formatted(line.job(), found.size()));
    }
  }

  private PastBid bid(PastBook book, String id) {
    List<ActualsLine> lines = linesOf.getOrDefault(book, List.of());
    List<Actual> outcomes = new ArrayList<>();
    for (Measure measure : Measure.values()) {
      outcomes.addAll(outcomes(book, measure, lines));
    }
    return new PastBid(
        id,
        last(lines, ActualsLine::date, book.date()),
        last(lines, line -> blankToNull(line.crew()), book.crew()),
        last(lines, line -> blankToNull(line.estimator()), book.estimator()),
        book.lines(),
        outcomes,
        book.costs(),
        book.likely());
  }

  private List<Actual> outcomes(PastBook book, Measure measure, List<ActualsLine> lines) {
    Map<String, Double> byCoating = new LinkedHashMap<>();
    double whole = book.whole().get(measure);
    double listed = Double.NaN;
    Set<List<Object>> seen = new HashSet<>();
    for (ActualsLine line : lines) {
      double amount = measure == Measure.PAINT ? line.gallons() : line.hours();
      if (Double.isNaN(amount)) {
        continue;
      }
      if (!seen.add(List.of(line.coating(), amount, Objects.toString(line.date())))) {
        say(
            line.line(),
            "stands twice",
            "%s of \"%s\" stands there twice with the same date and amount; it is counted once."
                .formatted(measure.word(), line.job()));
      } else if (line.coating().isBlank()) {
        listed = Double.isNaN(listed) ? amount : listed + amount;
      } else {
        String coating = book.coatings().get(Names.key(line.coating()));
        if (coating == null) {
          say(
              line.line(),
              "no such coating",
              "The bid \"%s\" has no coating \"%s\"; write it as the bid does."
                  .formatted(book.job(), line.coating()));
        } else {
          byCoating.merge(coating, amount, Double::sum);
        }
      }
    }
    if (!Double.isNaN(listed)) {
      differ(book, measure, "The settings of the bid", whole, listed);
      whole = listed;
    }
    StatedActuals stated =
        new StatedActuals(measure, book.lines(), book.taken().get(measure), byCoating, whole);
    double ratio = stated.linesOverJob();
    if (Math.abs(ratio - 1) > AGREE) {
      differ(book, measure, "The lines of the bid", ratio * whole, whole);
    }
    return stated.actuals();
  }

  private void differ(PastBook book, Measure measure, String first, double one, double other) {
    if (Math.abs(one / other - 1) > AGREE) {
      findings.add(
          new AuditFinding(
              book.name(),
              "",
              "actuals differ",
              String.format(
                  Locale.ROOT,
                  "%s state %.1f %s of %s, the job's figure is %.1f; find out which is right.",
                  first,
                  one,
                  measure.quantity().base().symbol(),
                  measure.word(),
                  other)));
    }
  }

  private void say(long line, String kind, String message) {
    findings.add(new AuditFinding(actualsName, "line " + line, kind, message));
  }

  private static String blankToNull(String text) {
    return text.isBlank() ? null : text;
  }

  private static <T> T last(List<ActualsLine> lines, Function<ActualsLine, T> what, T otherwise) {
    return lines.stream()
        .map(what)
        .filter(Objects::nonNull)
        .reduce((first, second) -> second)
        .orElse(otherwise);
  }
}
