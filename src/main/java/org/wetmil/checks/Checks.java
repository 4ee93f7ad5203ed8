package org.wetmil.checks;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.wetmil.estimate.FilledBid;

/** Every check, in the order in which its findings stand within a row. */
public final class Checks {
  public static final List<Check> ALL =
      Stream.of(
              ReaderChecks.ALL,
              ReadingChecks.ALL,
              NameChecks.ALL,
              SheetChecks.ALL,
              AreaChecks.ALL,
              OpeningChecks.ALL,
              CoatChecks.ALL,
              TipChecks.ALL,
              OnHandChecks.ALL,
              FilmChecks.ALL,
              PressureChecks.ALL,
              PumpChecks.ALL,
              PaintChecks.ALL,
              MoneyChecks.ALL,
              SafetyChecks.ALL,
              LimitChecks.ALL,
              RefillChecks.ALL,
              LedgerChecks.ALL,
              UseChecks.ALL,
              BookChecks.ALL)
          .flatMap(List::stream)
          .toList();

  private static final List<Check> OF_LINES =
      ALL.stream().filter(check -> check.rule() instanceof Rule.OfLine).toList();

  private static final Map<String, Integer> PLACES = places();

  private Checks() {}

  /** The check of an id, which must be one of {@link #ALL}. */
  public static Check get(String id) {
    Integer place = PLACES.get(id);
    if (place == null) {
      throw new IllegalArgumentException("no check has the id " + id);
    }
    return ALL.get(place);
  }

  /** The check of an id; empty when none has it. */
  public static Optional<Check> find(String id) {
    return Optional.ofNullable(PLACES.get(id)).map(ALL::get);
  }

  /**
   * What all checks find: first about the job, then sheet by sheet in the bid's order, about the
   * sheet and then row by row, last about the estimator's table sheets.
   */
  public static List<Finding> run(FilledBid bid) {
    bid.bid().remarks().forEach(remark -> get(remark.check()));
    List<Finding> findings = new ArrayList<>();
    Line.all(bid).forEach(line -> look(line, findings));
    for (Check check : ALL) {
      if (check.rule() instanceof Rule.OfBid rule) {
        rule.look().apply(bid).map(check::finding).forEach(findings::add);
      }
    }
    Map<String, Integer> sheets = new HashMap<>(Map.of("", -1));
    bid.sheets().forEach(sheet -> sheets.putIfAbsent(sheet.sheet().name(), sheets.size()));
    findings.sort(
        Comparator.comparingInt((Finding f) -> sheets.getOrDefault(f.spot().sheet(), sheets.size()))
            .thenComparingInt(f -> f.spot().row())
            .thenComparingInt(f -> PLACES.get(f.check())));
    return List.copyOf(findings);
  }

  /** What all checks find in ledgers and in what came of comparing them with bids. */
  public static List<Finding> run(ReconciledBooks books) {
    List<Finding> findings = new ArrayList<>();
    for (Check check : ALL) {
      if (check.rule() instanceof Rule.OfBooks rule) {
        rule.look().apply(books).map(check::finding).forEach(findings::add);
      }
    }
    return List.copyOf(findings);
  }

  private static void look(Line line, List<Finding> findings) {
    for (Check check : OF_LINES) {
      for (Fault fault : ((Rule.OfLine) check.rule()).look().apply(line)) {
        findings.add(check.finding(fault));
      }
    }
  }

  private static Map<String, Integer> places() {
    Map<String, Integer> places = new HashMap<>();
    for (int i = 0; i < ALL.size(); i++) {
      if (places.put(ALL.get(i).id(), i) != null) {
        throw new IllegalStateException("two checks have the id " + ALL.get(i).id());
      }
    }
    return places;
  }
}
