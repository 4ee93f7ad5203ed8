package org.wetmil.audit.tables;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Coating;
import org.wetmil.catalogue.Entry;
import org.wetmil.catalogue.Names;
import org.wetmil.catalogue.Row;
import org.wetmil.catalogue.Surface;
import org.wetmil.catalogue.Tables;
import org.wetmil.estimate.Bid;
import org.wetmil.estimate.FilledBid;
import org.wetmil.estimate.FilledLine;

/**
 * A past bid filled with the tables that it carries and with today's, and which figures make the
 * difference.
 *
 * @param then with its own tables
 * @param now with today's
 * @param figures those that moved and matter, the one that adds or saves most hours first
 */
public record TableMoves(Filling then, Filling now, List<MovedFigure> figures) {
  /** Most figures that are tried one by one; each takes another filling. */
  private static final int MOST = 100;

  /** Relative rounding of a figure that was shown in other units. */
  private static final double ROUNDING = 1e-9;

  private static final String STICK = "Stick";

  /**
   * Compares.
   *
   * @param bid the bid with its own rows over today's built-in tables
   * @param asBid the same as {@link #asBid} fills it
   * @param today today's for this bid, as {@link TodaysTables} has them
   */
  public static TableMoves of(Bid bid, FilledBid asBid, Catalogue today) {
    return new Comparison(bid, asBid, today).moves();
  }

  /**
   * A bid filled as it was bid.
   *
   * @param own the bid filled with its own rows over today's built-in tables
   * @param carried the tables that its workbook carries; those of the bid where it was never filled
   */
  public static FilledBid asBid(FilledBid own, Catalogue carried) {
    return carried == own.bid().catalogue() ? own : Filling.fill(own.bid(), carried);
  }

  private static final class Comparison {
    private final Bid bid;
    private final Catalogue carried;
    private final Catalogue today;
    private final FilledBid filled;
    private final Filling then;

    Comparison(Bid bid, FilledBid asBid, Catalogue today) {
      this.bid = bid;
      this.carried = asBid.bid().catalogue();
      this.today = today;
      filled = asBid;
      then = Filling.of(filled);
    }

    TableMoves moves() {
      List<MovedFigure> figures = new ArrayList<>();
      for (Tables table : TodaysTables.FIGURES) {
        Set<String> used = used(table);
        carried.rows(table).stream()
            .filter(row -> used.isEmpty() || used.contains(Names.key(row.name())))
            .forEach(row -> compare(table, row, figures));
      }
      carried.rows(Tables.SETTINGS).stream()
          .filter(row -> !isOfTheJob(row))
          .forEach(row -> compare(Tables.SETTINGS, row, figures));
      losses(figures);
      if (figures.isEmpty()) {
        return new TableMoves(then, then, List.of());
      }
      figures.sort(
          Comparator.comparingDouble(
              figure ->
                  -Math.abs(figure.paintGal() / then.paintGal())
                      - Math.abs(figure.hours() / then.hours())));
      return new TableMoves(
          then, Filling.of(bid, today), figures.stream().filter(MovedFigure::matters).toList());
    }

    private boolean isOfTheJob(Row setting) {
      Row read = bid.catalogue().table(Tables.SETTINGS).get(setting.name());
      return TodaysTables.isOfTheJob(read.get("Value"));
    }

    /** The rows of a table that the lines name; empty for a table of which every row may count. */
    private Set<String> used(Tables table) {
      return filled
          .lines()
          .map(line -> name(table, line))
          .filter(name -> !name.isEmpty())
          .map(Names::key)
          .collect(Collectors.toCollection(TreeSet::new));
    }

    private static String name(Tables table, FilledLine line) {
      Row row =
          switch (table) {
            case COATINGS -> line.work().coating() == null ? null : line.work().coating().row();
            case SURFACES -> line.work().surface() == null ? null : line.work().surface().row();
            case TEXTURES -> line.work().texture() == null ? null : line.work().texture().row();
            case CONDITIONS ->
                line.work().condition() == null ? null : line.work().condition().row();
            case SHAPES ->
                line.area() == null || line.area().shape() == null
                    ? null
                    : line.area().shape().row();
            default -> null;
          };
      return row == null ? "" : row.name();
    }

    private void compare(Tables table, Row row, List<MovedFigure> figures) {
      Row other = today.table(table).find(row.name()).orElse(row);
      for (int i = 1; i < row.entries().size() && figures.size() < MOST; i++) {
        Entry one = row.entries().get(i);
        Entry two = other.entries().get(i);
        if (!isSame(one, two)) {
          List<Entry> swapped = new ArrayList<>(row.entries());
          swapped.set(i, two);
          Row anew = new Row(row.spec(), row.name(), swapped);
          List<Row> rows =
              carried.rows(table).stream().map(each -> each == row ? anew : each).toList();
          figures.add(
              moved(
                  table,
                  row.name(),
                  row.spec().fields().get(i).heading(),
                  one,
                  two,
                  carried.withRows(Map.of(table, rows))));
        }
      }
    }

    /** Losses of a coating on a surface, where either has one. */
    private void losses(List<MovedFigure> figures) {
      Map<List<String>, FilledLine> pairs = new LinkedHashMap<>();
      filled
          .lines()
          .filter(line -> line.work().coating() != null && line.work().surface() != null)
          .forEach(
              line ->
                  pairs.putIfAbsent(
                      List.of(line.work().coating().name(), line.work().surface().name()), line));
      for (List<String> pair : pairs.keySet()) {
        Row one = loss(carried, pair);
        Row two = loss(today, pair);
        if (figures.size() < MOST && (one != null || two != null)) {
          Entry then = stick(carried, pair, one);
          Entry now = stick(today, pair, two);
          if (!isSame(then, now)) {
            List<Row> rows = new ArrayList<>(carried.rows(Tables.LOSSES));
            rows.removeIf(row -> row == one);
            if (two != null) {
              rows.add(two);
            }
            figures.add(
                moved(
                    Tables.LOSSES,
                    pair.get(0) + " on " + pair.get(1),
                    STICK,
                    then,
                    now,
                    carried.withRows(Map.of(Tables.LOSSES, rows))));
          }
        }
      }
    }

    private static Row loss(Catalogue tables, List<String> pair) {
      return tables.rows(Tables.LOSSES).stream()
          .filter(row -> isOf(tables, row, pair))
          .reduce((first, last) -> last)
          .orElse(null);
    }

    private static boolean isOf(Catalogue tables, Row loss, List<String> pair) {
      Coating coating = tables.coating(loss.text("Coating")).orNull();
      Surface surface = tables.surface(loss.text("Surface")).orNull();
      return coating != null
          && surface != null
          && loss.get(STICK).isStated()
          && coating.name().equals(pair.get(0))
          && surface.name().equals(pair.get(1));
    }

    private static Entry stick(Catalogue tables, List<String> pair, Row loss) {
      return loss != null
          ? loss.get(STICK)
          : tables.table(Tables.SURFACES).get(pair.get(1)).get(STICK);
    }

    private MovedFigure moved(
        Tables table, String row, String figure, Entry one, Entry two, Catalogue swapped) {
      Filling filling = Filling.of(bid, swapped);
      return new MovedFigure(
          table.title(), row, figure, one, two, filling.paintOver(then), filling.hoursOver(then));
    }

    private static boolean isSame(Entry one, Entry two) {
      boolean words = Double.isNaN(one.number()) || Double.isNaN(two.number());
      return words
          ? one.text().equals(two.text())
          : Math.abs(one.number() - two.number()) <= ROUNDING * Math.abs(two.number());
    }
  }
}
