package org.wetmil.estimate.limits;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Coating;
import org.wetmil.catalogue.Row;
import org.wetmil.catalogue.Tables;
import org.wetmil.estimate.FilledBid;
import org.wetmil.estimate.FilledLine;
import org.wetmil.trade.Voc;

/**
 * A coating, thinned as much as any line of the bid thins it, against one limit of VOC.
 *
 * @param category as the coating names it
 * @param thinnerShare thinner by volume of coating
 * @param limit the row of the limits; null where no limit has the name
 * @param suppliedGL VOC as supplied, counted as the limit counts it; NaN where it is not stated
 * @param thinnedGL VOC as sprayed; NaN where that of the coating is not stated
 */
public record VocUse(
    Coating coating,
    String category,
    double thinnerShare,
    Row limit,
    double suppliedGL,
    double thinnedGL) {

  /** What two ways of computing one figure may differ by. */
  private static final double ROUNDING = 1e-9;

  /** All coatings of the lines that count and name a category, in the order of the bid. */
  public static List<VocUse> all(FilledBid filled) {
    Map<String, Double> thinned = new LinkedHashMap<>();
    Map<String, Coating> coatings = new LinkedHashMap<>();
    filled
        .lines()
        .filter(FilledLine::isCounted)
        .forEach(
            line -> {
              Coating coating = line.work().coating();
              coatings.putIfAbsent(coating.name(), coating);
              thinned.merge(coating.name(), line.work().thinnerShare(), Math::max);
            });
    List<VocUse> uses = new ArrayList<>();
    coatings.forEach(
        (name, coating) ->
            categories(coating)
                .forEach(
                    category ->
                        uses.add(
                            of(filled.bid().catalogue(), coating, category, thinned.get(name)))));
    return uses;
  }

  private static Stream<String> categories(Coating coating) {
    return Stream.of(coating.row().text("VOC category").split(";"))
        .map(String::strip)
        .filter(category -> !category.isEmpty());
  }

  private static VocUse of(
      Catalogue catalogue, Coating coating, String category, double thinnerShare) {
    Row limit = catalogue.table(Tables.VOC_LIMITS).find(category).orElse(null);
    boolean ready = limit != null && limit.text("Counted").equals("ready to use");
    double supplied = coating.row().number(ready ? "VOC ready" : "VOC");
    double thinner = coating.row().number("Thinner VOC");
    double thinned = Double.NaN;
    if (limit != null && supplied >= 0 && thinner >= 0) {
      thinned =
          ready
              ? Voc.readyToUse(supplied, thinnerShare, thinner)
              : Voc.lessWater(supplied, thinnerShare, thinner);
    }
    return new VocUse(coating, category, thinnerShare, limit, supplied, thinned);
  }

  /** Most VOC that the limit allows; NaN where no limit has the name. */
  public double limitGL() {
    return limit == null ? Double.NaN : limit.number("Limit");
  }

  public boolean isJudged() {
    return thinnedGL >= 0;
  }

  public boolean isOver() {
    return thinnedGL > limitGL() * (1 + ROUNDING);
  }
}
