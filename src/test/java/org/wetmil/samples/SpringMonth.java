package org.wetmil.samples;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Two small bids of the invented contractor that, with the clinic, make the month whose purchases
 * stand in spring-month-purchases.csv.
 */
final class SpringMonth {
  private static final int[] WIDTHS = {18, 18, 18, 9, 9, 9, 8, 10, 16, 8, 9, 30};
  private static final String HEADINGS =
      "Room | Surface | Condition | Length (ft) | Width (ft) | Height (ft) | Count | Openings (ft²)"
          + " | Coating | Coats | Tip | Notes";

  private SpringMonth() {}

  static Map<String, SampleBook> books() {
    Map<String, SampleBook> books = new LinkedHashMap<>();
    books.put("school-gym", gym());
    books.put("mill-loft", loft());
    return books;
  }

  /** Writes those that are not there; they are inputs, never computed. */
  static void write() throws IOException {
    for (Map.Entry<String, SampleBook> book : books().entrySet()) {
      Path file = Samples.FOLDER.resolve(book.getKey() + ".xlsx");
      if (!Files.exists(file)) {
        book.getValue().save(file);
      }
    }
  }

  private static SampleBook gym() {
    return new SampleBook()
        .sheet(
            "Bid",
            List.of("School gym, spray painting (invented example)", ""),
            HEADINGS,
            WIDTHS,
            "Gym|metal deck ceiling|painted|96|62|24|||dry fall|1|521|joists and ducts masked by others",
            "Gym|walls|concrete block|96|62|18||340|block filler|1|531|",
            "Gym|walls|primed|96|62|18||340|Hall Semi|2|517|",
            "Locker rooms|walls|painted|40|24|9||60|two-part|2|519|",
            "Locker rooms|doors|painted||||6||oil-based|2|410|")
        .sheet(
            "Coatings",
            List.of(),
            "Coating | Class | Volume solids (%) | Container sizes | Price",
            new int[] {18, 14, 12, 14, 14},
            "Hall Semi|latex|40|1; 5|'41; 185",
            "dry fall|dry fall|42|5|'128",
            "block filler|block filler|46|5|'98")
        .sheet("Settings", List.of(), "Setting | Value", new int[] {20, 34}, "Job|2207 School gym");
  }

  private static SampleBook loft() {
    return new SampleBook()
        .sheet(
            "Bid",
            List.of("Mill loft, spray painting (invented example)", ""),
            HEADINGS,
            WIDTHS,
            "Loft|walls|new drywall|44|28|11||120|primer|1|517|",
            "Loft|walls|primed|44|28|11||120|latex|2|517|",
            "Loft|ceiling|new drywall|44|28|11|||latex|2|517|",
            "Loft|trim|primed|144|||||oil-based|2|212|",
            "Outside|exterior walls|painted|60||16||90|Barn Stain|2|411|")
        .sheet(
            "Coatings",
            List.of(),
            "Coating | Class | Container sizes | Price",
            new int[] {18, 14, 14, 14},
            "latex|latex|1; 5|'36; 160",
            "primer|primer|1; 5|'28; 120",
            "Barn Stain|stain|1; 5|'44; 205")
        .sheet("Settings", List.of(), "Setting | Value", new int[] {20, 34}, "Job|2211 Mill loft");
  }
}
