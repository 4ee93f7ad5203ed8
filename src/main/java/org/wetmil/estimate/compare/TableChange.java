package org.wetmil.estimate.compare;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Entry;
import org.wetmil.catalogue.Names;
import org.wetmil.catalogue.Row;
import org.wetmil.catalogue.Setting;
import org.wetmil.catalogue.Tables;
import org.wetmil.quantity.Quantity;
import org.wetmil.quantity.UnitSystem;

/**
 * A setting or a value of a table that is another in the second version.
 *
 * @param figure heading of the value; empty where the whole row is only in one
 * @param from in the units of the first version
 * @param whereFrom the cell that states it, or whose it is
 */
public record TableChange(
    Tables table,
    String row,
    String figure,
    String from,
    String to,
    String whereFrom,
    String whereTo) {
  private static final String ABSENT = "no such row";

  /** Settings first, then the tables in their order, the openings listed last. */
  static List<TableChange> of(Catalogue a, UnitSystem systemA, Catalogue b, UnitSystem systemB) {
    List<TableChange> changes = new ArrayList<>();
    List<Tables> order = new ArrayList<>(List.of(Tables.values()));
    order.remove(Tables.SETTINGS);
    order.remove(Tables.OPENINGS);
    order.add(0, Tables.SETTINGS);
    order.add(Tables.OPENINGS);
    for (Tables table : order) {
      Map<String, Row> ones = named(table, a.rows(table));
      Map<String, Row> others = named(table, b.rows(table));
      Set<String> names = new LinkedHashSet<>(ones.keySet());
      names.addAll(others.keySet());
      for (String name : names) {
        compare(table, ones.get(name), systemA, others.get(name), systemB, changes);
      }
    }
    return changes;
  }

  /** Rows by name; of a table in which a name may stand twice, by what is first stated in them. */
  private static Map<String, Row> named(Tables table, List<Row> rows) {
    Map<String, Row> named = new LinkedHashMap<>();
    Map<String, Integer> seen = new LinkedHashMap<>();
    for (Row row : rows) {
      String name = Names.key(row.name());
      if (table.isList()) {
        name = Names.key(title(row));
        name += " " + seen.merge(name, 1, Integer::sum);
      }
      named.put(name, row);
    }
    return named;
  }

  /** Words by which a reader knows a row: those of its leading entries that are words. */
  private static String title(Row row) {
    StringBuilder title = new StringBuilder(row.name());
    for (Entry entry : row.entries()) {
      if (!entry.quantity().isNumber() && entry.isStated() && !entry.text().equals(row.name())) {
        title.append(", ").append(entry.text());
      }
    }
    return title.toString();
  }

  private static void compare(
      Tables table,
      Row a,
      UnitSystem systemA,
      Row b,
      UnitSystem systemB,
      List<TableChange> changes) {
    if (a == null || b == null) {
      Row there = a == null ? b : a;
      changes.add(
          new TableChange(
              table,
              title(there),
              "",
              a == null ? ABSENT : "a row",
              b == null ? ABSENT : "a row",
              a == null ? "" : where(a),
              b == null ? "" : where(b)));
      return;
    }
    for (int i = 0; i < a.entries().size(); i++) {
      Entry from = a.entries().get(i);
      Entry to = b.entries().get(i);
      if (!Same.same(from, to) && !isName(table, a)) {
        changes.add(
            new TableChange(
                table,
                table.isList() ? title(b) : a.name(),
                table == Tables.SETTINGS ? "" : a.spec().fields().get(i).heading(),
                said(from, systemA),
                said(to, systemB),
                from.origin().text(),
                to.origin().text()));
      }
    }
  }

  /** What the job is called makes nothing. */
  private static boolean isName(Tables table, Row row) {
    return table == Tables.SETTINGS && Names.key(row.name()).equals(Names.key(Setting.JOB.title()));
  }

  private static String where(Row row) {
    return row.entries().stream()
        .filter(Entry::isStated)
        .findFirst()
        .map(entry -> entry.origin().text())
        .orElse("");
  }

  private static String said(Entry entry, UnitSystem system) {
    if (!entry.isStated()) {
      return "blank";
    }
    if (Double.isNaN(entry.number())) {
      return entry.text();
    }
    boolean share = entry.quantity() == Quantity.SHARE;
    double shown = entry.quantity().shown(share ? 100 * entry.number() : entry.number(), system);
    String number =
        new BigDecimal(shown).round(new MathContext(6)).stripTrailingZeros().toPlainString();
    String unit = share ? "%" : entry.quantity().unit(system).symbol();
    return String.format(Locale.ROOT, "%s %s", number, unit).strip();
  }
}
