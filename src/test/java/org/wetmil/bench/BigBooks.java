package org.wetmil.bench;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.SplittableRandom;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.wetmil.SmallBid;

/** A year of an invented contractor: as many jobs and ledger lines as asked for. */
final class BigBooks {
  private static final long SEED = 20260101;
  private static final String[] COATINGS = {"primer", "latex", "oil-based", "stain"};
  private static final String[] ITEMS = {
    "PVA primer white", "Latex eggshell white", "Oil-based enamel satin", "Wood stain honey"
  };
  private static final int[] CENTS_A_GALLON = {2600, 3200, 5200, 4400};
  private static final String[] OTHER = {
    "Masking tape", "Sanding discs", "Drop cloths", "Delivery"
  };

  private final SplittableRandom random = new SplittableRandom(SEED);
  private final int jobs;

  private BigBooks(int jobs) {
    this.jobs = jobs;
  }

  /** Writes a bid for each job, five lines and four coatings each, into a folder. */
  static void bids(Path folder, int jobs) throws IOException {
    for (int job = 0; job < jobs; job++) {
      bid(folder.resolve("job-%05d.xlsx".formatted(job)), job);
    }
  }

  private static void bid(Path file, int job) throws IOException {
    try (XSSFWorkbook workbook = new XSSFWorkbook();
        OutputStream out = Files.newOutputStream(file)) {
      XSSFSheet bid = workbook.createSheet("Bid");
      SmallBid.row(
          bid, 0, "Room", "Surface", "Length (ft)", "Width (ft)", "Height (ft)", "Coating", "Tip");
      int length = 60 + job % 50;
      SmallBid.row(bid, 1, "Hall", "walls", length, 40, 12, "primer", "517");
      SmallBid.row(bid, 2, "Hall", "walls", length, 40, 12, "latex", "517");
      SmallBid.row(bid, 3, "Hall", "ceiling", length, 40, 12, "latex", "519");
      SmallBid.row(bid, 4, "Hall", "trim", length * 10, "", "", "oil-based", "211");
      SmallBid.row(bid, 5, "Outside", "exterior walls", length, "", 14, "stain", "411");
      XSSFSheet prices = workbook.createSheet("Coatings");
      SmallBid.row(prices, 0, "Coating", "Class", "Container sizes", "Price");
      for (int i = 0; i < COATINGS.length; i++) {
        int dollars = CENTS_A_GALLON[i] / 100;
        SmallBid.row(
            prices, i + 1, COATINGS[i], COATINGS[i], "1; 5", dollars + 2 + "; " + dollars * 5);
      }
      XSSFSheet settings = workbook.createSheet("Settings");
      SmallBid.row(settings, 0, "Setting", "Value");
      SmallBid.row(settings, 1, "Job", name(job));
      workbook.write(out);
    }
  }

  private static String name(int job) {
    return "%05d Building %d".formatted(30_000 + job, job);
  }

  /** Writes a ledger: nine lines in ten are paint, and one in twelve has something to look at. */
  static void ledger(Path file, int jobs, int lines) throws IOException {
    BigBooks books = new BigBooks(jobs);
    try (BufferedWriter out = Files.newBufferedWriter(file)) {
      out.write("Date,Type,Num,Vendor,Job,Item,Description,Qty,UOM,Unit price,Amount\n");
      String before = "";
      for (int i = 0; i < lines; i++) {
        boolean again = i > 0 && books.random.nextInt(200) == 0;
        String line = again ? before : books.line(i);
        out.write(line + "\n");
        before = line;
      }
    }
  }

  private String line(int at) {
    int dice = random.nextInt(100);
    String date = LocalDate.of(2026, 1, 1).plusDays(random.nextInt(365)).toString();
    String job = dice == 99 ? "Nowhere " + random.nextInt(50) : name(random.nextInt(jobs));
    String head = "%s,%s,N-%d,%s,%s,".formatted(date, kind(dice), 1000 + at / 3, "Supplier", job);
    if (dice < 10) {
      String amount = money(random.nextInt(1_000, 40_000));
      return head + OTHER[random.nextInt(OTHER.length)] + ",,1,box,," + amount;
    }
    int which = random.nextInt(ITEMS.length);
    boolean pail = random.nextBoolean();
    int count = random.nextInt(1, pail ? 4 : 9);
    long each = CENTS_A_GALLON[which] * (pail ? 5L : 1L);
    String unit = dice == 98 ? "bucketful" : pail ? "EA" : "gal";
    String quantity = dice == 97 ? "some" : String.valueOf(count);
    return head
        + "SKU-%d,\"%s, %s\",%s,%s,%s,%s"
            .formatted(
                which,
                ITEMS[which],
                pail ? "5 gal" : "1 gal",
                quantity,
                unit,
                money(each),
                money(each * count));
  }

  private static String kind(int dice) {
    return switch (dice) {
      case 80, 81, 82 -> "Credit";
      case 83 -> "Left over";
      case 84 -> "Waste";
      case 85 -> "Transfer out";
      case 86 -> "Transfer in";
      default -> "Bill";
    };
  }

  private static String money(long cents) {
    return BigDecimal.valueOf(cents, 2).toPlainString();
  }
}
