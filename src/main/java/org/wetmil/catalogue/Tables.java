package org.wetmil.catalogue;

import java.util.Arrays;
import java.util.Optional;

/** The tables of a bid: each may be added to or replaced, row by row, on a sheet of its name. */
public enum Tables {
  COATINGS("Coatings", "coatings.csv"),
  SURFACES("Surfaces", "surfaces.csv"),
  LOSSES("Losses", "losses.csv"),
  SPRAYERS("Sprayers", "sprayers.csv"),
  STOCK_TIPS("Stock tips", "stock-tips.csv"),
  TIPS_ON_HAND("Tips on hand", "tips-on-hand.csv"),
  GUARDS_ON_HAND("Guards on hand", "guards-on-hand.csv"),
  BUCKET_TESTS("Bucket tests", "bucket-tests.csv"),
  TEXTURES("Textures", "textures.csv"),
  CONDITIONS("Conditions", "conditions.csv"),
  OPENINGS("Openings", "openings.csv"),
  OPENING_KINDS("Opening kinds", "opening-kinds.csv"),
  SHAPES("Shapes", "shapes.csv"),
  VOC_LIMITS("VOC limits", "voc-limits.csv"),
  FILM_READINGS("Film readings", "film-readings.csv"),
  EARLIER_WORK("Earlier work", "earlier-work.csv"),
  LABOUR_RATES("Labour rates", "labour-rates.csv"),
  SETTINGS("Settings", "settings.csv");

  private final String title;
  private final String file;

  Tables(String title, String file) {
    this.title = title;
    this.file = file;
  }

  /** The name of the sheet that holds the estimator's rows. */
  public String title() {
    return title;
  }

  Table load() {
    return BuiltIn.table(title, file);
  }

  /** Whether a later row of the same name stands beside an earlier one instead of replacing it. */
  public boolean isList() {
    return this == TIPS_ON_HAND
        || this == GUARDS_ON_HAND
        || this == BUCKET_TESTS
        || this == OPENINGS
        || this == LOSSES
        || this == FILM_READINGS
        || this == EARLIER_WORK;
  }

  /** The table that a sheet of this name states; sheet names match as other names do. */
  public static Optional<Tables> find(String sheetName) {
    String key = Names.key(sheetName);
    return Arrays.stream(values()).filter(table -> Names.key(table.title).equals(key)).findFirst();
  }
}
