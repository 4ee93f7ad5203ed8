package org.wetmil.estimate.compare;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Setting;
import org.wetmil.catalogue.Tables;
import org.wetmil.estimate.Bid;
import org.wetmil.estimate.BidLine;
import org.wetmil.estimate.Estimator;
import org.wetmil.estimate.FilledBid;
import org.wetmil.estimate.FilledLine;
import org.wetmil.quantity.UnitSystem;

/**
 * Two versions of a bid. What the difference comes from is told in steps: the first version's lines
 * with the second's settings and tables, then with its openings too, then the second's lines. Where
 * settings and lines changed together, the order of these steps decides what is put down to which.
 *
 * @param a the first version
 * @param b the second
 * @param system units that figures are shown in: the second version's
 * @param first what the first comes to
 * @param retabled its lines with the second's settings and tables, and its own openings
 * @param reopened its lines with the second's openings, too
 * @param second what the second comes to
 * @param matching which line became which
 * @param tables settings and table values that are others
 * @param lines lines that are not the same, in the order of the second version, then those taken
 *     out
 * @param moved lines that stand in another order among the others
 */
public record BidComparison(
    Bid a,
    Bid b,
    UnitSystem system,
    JobTotals first,
    JobTotals retabled,
    JobTotals reopened,
    JobTotals second,
    LineMatching matching,
    List<TableChange> tables,
    List<LineChange> lines,
    int moved) {

  public BidComparison {
    tables = List.copyOf(tables);
    lines = List.copyOf(lines);
  }

  public static BidComparison of(Bid a, Bid b) {
    Catalogue retabledWith =
        b.catalogue().withRows(Map.of(Tables.OPENINGS, a.catalogue().rows(Tables.OPENINGS)));
    FilledBid reopened = fill(a, b.system(), b.catalogue());
    FilledBid second = Estimator.fill(b);
    LineMatching matching = LineMatching.of(lines(a), lines(b));
    return new BidComparison(
        a,
        b,
        b.system(),
        JobTotals.of(Estimator.fill(a)),
        JobTotals.of(fill(a, b.system(), retabledWith)),
        JobTotals.of(reopened),
        JobTotals.of(second),
        matching,
        TableChange.of(a.catalogue(), a.system(), b.catalogue(), b.system()),
        changes(matching, byLine(a, reopened), byLine(b, second)),
        moved(matching, lines(a)));
  }

  private static FilledBid fill(Bid bid, UnitSystem system, Catalogue tables) {
    return Estimator.fill(
        new Bid(bid.job(), system, tables, bid.sheets(), bid.problems(), bid.remarks()));
  }

  private static List<BidLine> lines(Bid bid) {
    return bid.sheets().stream().flatMap(sheet -> sheet.lines().stream()).toList();
  }

  /** By the line itself: a row holds two lines where tables stand side by side. */
  private static Map<BidLine, FilledLine> byLine(Bid bid, FilledBid filled) {
    Map<BidLine, FilledLine> byLine = new IdentityHashMap<>();
    Iterator<BidLine> lines = lines(bid).iterator();
    filled.lines().forEach(line -> byLine.put(lines.next(), line));
    return byLine;
  }

  private static List<LineChange> changes(
      LineMatching matching, Map<BidLine, FilledLine> before, Map<BidLine, FilledLine> after) {
    List<LineChange> changes = new ArrayList<>();
    for (LinePair pair : matching.pairs()) {
      LineChange change =
          new LineChange(
              pair.a(),
              pair.b(),
              pair.how(),
              InputChange.of(before.get(pair.a()), after.get(pair.b())),
              Amounts.of(before.get(pair.a())),
              Amounts.of(after.get(pair.b())));
      if (!change.inputs().isEmpty() || !change.effect().isNothing()) {
        changes.add(change);
      }
    }
    for (BidLine line : matching.onlyB()) {
      Amounts amounts = Amounts.of(after.get(line));
      changes.add(new LineChange(null, line, null, List.of(), Amounts.NONE, amounts));
    }
    for (BidLine line : matching.onlyA()) {
      Amounts amounts = Amounts.of(before.get(line));
      changes.add(new LineChange(line, null, null, List.of(), amounts, Amounts.NONE));
    }
    return changes;
  }

  /** Pairs that are not in the longest run of pairs whose order is the same in both. */
  private static int moved(LineMatching matching, List<BidLine> linesOfA) {
    Map<BidLine, Integer> placesA = new IdentityHashMap<>();
    linesOfA.forEach(line -> placesA.put(line, placesA.size()));
    List<Integer> ends = new ArrayList<>();
    for (LinePair pair : matching.pairs()) {
      int at = placesA.get(pair.a());
      int found = Collections.binarySearch(ends, at);
      int slot = found < 0 ? -found - 1 : found;
      if (slot == ends.size()) {
        ends.add(at);
      } else {
        ends.set(slot, at);
      }
    }
    return matching.pairs().size() - ends.size();
  }

  /** Lines that state something otherwise, or were changed by others. */
  public List<LineChange> changed() {
    return only(line -> line.a() != null && line.b() != null);
  }

  public List<LineChange> onlyA() {
    return only(line -> line.b() == null);
  }

  public List<LineChange> onlyB() {
    return only(line -> line.a() == null);
  }

  private List<LineChange> only(Predicate<LineChange> wanted) {
    return lines.stream().filter(wanted).toList();
  }

  /** What several lines make together. */
  public static Amounts effect(List<LineChange> lines) {
    return lines.stream().map(LineChange::effect).reduce(Amounts.NONE, Amounts::plus);
  }

  /** How many of the table values are openings listed. */
  public int openings() {
    return (int) tables.stream().filter(each -> each.table() == Tables.OPENINGS).count();
  }

  /** Whether prices of the two are in one currency; what one does not name is the other's. */
  public boolean oneCurrency() {
    String one = a.catalogue().text(Setting.CURRENCY);
    String other = b.catalogue().text(Setting.CURRENCY);
    return one.isBlank() || other.isBlank() || one.equalsIgnoreCase(other);
  }

  /** Whether both have a price, in one currency. */
  public boolean isPriced() {
    return oneCurrency() && first.price().isPresent() && second.price().isPresent();
  }

  public String currency() {
    String own = b.catalogue().text(Setting.CURRENCY);
    return own.isBlank() ? a.catalogue().text(Setting.CURRENCY) : own;
  }

  /** Whether nothing at all is different. */
  public boolean isSame() {
    return tables.isEmpty() && lines.isEmpty();
  }
}
