package org.wetmil.audit.tables;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Entry;
import org.wetmil.catalogue.Origin;
import org.wetmil.catalogue.Row;
import org.wetmil.catalogue.Tables;

/**
 * Today's tables for a past bid: what the bid states about its job stays, and so do rows that only
 * the bid has, such as its products; every figure that today's tables have is theirs.
 */
public final class TodaysTables {
  /** Tables of figures to bid with; the others say what there is on the job. */
  static final List<Tables> FIGURES =
      List.of(
          Tables.COATINGS,
          Tables.SURFACES,
          Tables.TEXTURES,
          Tables.CONDITIONS,
          Tables.SHAPES,
          Tables.OPENING_KINDS,
          Tables.LABOUR_RATES);

  private TodaysTables() {}

  /**
   * @param bid the bid's rows over the built-in tables
   * @param today the tables to bid with now
   */
  public static Catalogue of(Catalogue bid, Catalogue today) {
    if (bid == today) {
      return today;
    }
    Map<Tables, List<Row>> tables = new EnumMap<>(Tables.class);
    for (Tables which : FIGURES) {
      List<Row> rows = new ArrayList<>(today.rows(which));
      bid.rows(which).stream()
          .filter(row -> today.table(which).find(row.name()).isEmpty())
          .forEach(rows::add);
      tables.put(which, rows);
    }
    tables.put(
        Tables.SETTINGS,
        bid.rows(Tables.SETTINGS).stream()
            .map(row -> isOfTheJob(row.get("Value")) ? row : same(today, row))
            .toList());
    tables.put(Tables.LOSSES, today.rows(Tables.LOSSES));
    return bid.withRows(tables);
  }

  /** Whether the bid itself states a setting, which then says how this job was. */
  static boolean isOfTheJob(Entry setting) {
    return setting.origin() instanceof Origin.OnBasis
        || (setting.origin() instanceof Origin.Cell at && !at.isElsewhere());
  }

  private static Row same(Catalogue today, Row row) {
    return today.table(Tables.SETTINGS).get(row.name());
  }
}
