package org.wetmil.estimate.limits;

import java.util.List;
import org.wetmil.catalogue.Row;

/**
 * Readings within one spot.
 *
 * @param name as written; empty where each reading stands alone
 * @param rows of the sheet of film readings
 * @param meanMil mean dry film
 */
public record FilmSpot(String name, List<Row> rows, double meanMil) {
  public FilmSpot {
    rows = List.copyOf(rows);
  }

  static FilmSpot of(List<Row> rows) {
    double mean = rows.stream().mapToDouble(row -> row.number("Reading")).average().orElseThrow();
    return new FilmSpot(rows.get(0).text("Spot"), rows, mean);
  }
}
