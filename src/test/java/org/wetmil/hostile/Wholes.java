package org.wetmil.hostile;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.wetmil.SmallBid;
import org.wetmil.jobs.FillJob;
import org.wetmil.workbook.Locked;
import org.wetmil.workbook.read.Book;

/** Files without fault, from which the broken ones are made; small ones come up more often. */
final class Wholes {
  static final String PASSWORD = "open sesame";
  static final LocalDate DATE = LocalDate.of(2026, 1, 5);

  private static final Path SAMPLES = Path.of("sample-workbooks");

  private final Path folder;
  private final Sources sources;
  private final Map<String, Parts> workbooks = new LinkedHashMap<>();

  /**
   * Makes them.
   *
   * @param folder an empty one
   */
  Wholes(Path folder, Sources sources) {
    this.folder = folder;
    this.sources = sources;
    Path small = SmallBid.write(folder.resolve("small.xlsx"));
    Path tables = SmallBid.write(folder.resolve("tables.xlsx"), Wholes::withTables);
    Path filled = folder.resolve("small-filled.xlsx");
    new FillJob(DATE, "test", true).fill(tables, filled);
    workbooks.put("small", Parts.of(small));
    workbooks.put("tables", Parts.of(tables));
    workbooks.put("filled", Parts.of(filled));
    workbooks.put("clinic", Parts.of(SAMPLES.resolve("clinic-refit.xlsx")));
    workbooks.put("gym", Parts.of(SAMPLES.resolve("school-gym.xlsx")));
    workbooks.put("loft", Parts.of(SAMPLES.resolve("mill-loft.xlsx")));
    workbooks.put("template", Parts.of(Path.of("templates", "bid-metric.xlsx")));
    workbooks.put("large", Parts.of(SAMPLES.resolve("gym-hall-filled.xlsx")));
    workbooks.put("rooms", Parts.of(rooms()));
    workbooks.put("items", Parts.of(items()));
  }

  /** A bid, mostly a small one. */
  Parts bid(Random random) {
    int at = random.nextInt(100);
    if (sources == Sources.SMALL) {
      return of(at < 75 ? "small" : at < 97 ? "tables" : "filled");
    }
    String name =
        at < 35
            ? "small"
            : at < 65
                ? "tables"
                : at < 75
                    ? "filled"
                    : at < 84
                        ? "gym"
                        : at < 93 ? "loft" : at < 97 ? "clinic" : at < 99 ? "template" : "large";
    return workbooks.get(name).copy();
  }

  Parts of(String name) {
    return workbooks.get(name).copy();
  }

  /** A bid in the format of 1997, as bytes. */
  byte[] old() {
    Path file = folder.resolve("old.xls");
    if (!Files.exists(file)) {
      try (XSSFWorkbook from = new XSSFWorkbook(folder.resolve("small.xlsx").toString());
          HSSFWorkbook to = new HSSFWorkbook();
          OutputStream out = Files.newOutputStream(file)) {
        var sheet = to.createSheet("Bid");
        for (Row row : from.getSheetAt(0)) {
          var copy = sheet.createRow(row.getRowNum());
          row.forEach(
              cell -> {
                switch (cell.getCellType()) {
                  case NUMERIC ->
                      copy.createCell(cell.getColumnIndex())
                          .setCellValue(cell.getNumericCellValue());
                  default -> copy.createCell(cell.getColumnIndex()).setCellValue(cell.toString());
                }
              });
        }
        to.write(out);
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
    return bytes(file);
  }

  /** A protected bid, as bytes. */
  byte[] locked() {
    Path file = folder.resolve("locked.xlsx");
    if (!Files.exists(file)) {
      Locked.with(PASSWORD, SmallBid.write(file));
    }
    return bytes(file);
  }

  static String purchases() {
    return new String(bytes(SAMPLES.resolve("spring-month-purchases.csv")), StandardCharsets.UTF_8);
  }

  static String actuals() {
    return new String(bytes(SAMPLES.resolve("past-bids-actuals.csv")), StandardCharsets.UTF_8);
  }

  /** One of the past bids. */
  static byte[] past(Random random) {
    List<String> names = List.of("2301-brook-school", "2306-grove-store", "2506-west-barn");
    return bytes(
        SAMPLES.resolve("past-bids").resolve(names.get(random.nextInt(names.size())) + ".xlsx"));
  }

  private static byte[] bytes(Path file) {
    try {
      return Files.readAllBytes(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** What a bid may have beside its lines. */
  private static void withTables(XSSFWorkbook workbook) {
    var settings = workbook.createSheet("Settings");
    SmallBid.row(settings, 0, "Setting", "Value");
    SmallBid.row(settings, 1, "Labour rate", 31);
    SmallBid.row(settings, 2, "Job", "Test");
    SmallBid.row(settings, 3, "Burden", "0.2");
    var coatings = workbook.createSheet("Coatings");
    SmallBid.row(coatings, 0, "Coating", "Film dry", "Price", "Container sizes");
    SmallBid.row(coatings, 1, "latex", 1.5, "42; 190", "1; 5");
    var openings = workbook.createSheet("Openings");
    SmallBid.row(openings, 0, "Room", "Opening", "Count", "Width (in)", "Height (in)");
    SmallBid.row(openings, 1, "Office", "door", 1, 36, 80);
    var bid = workbook.getSheet("Bid");
    bid.getRow(1).createCell(7).setCellFormula("C2*D2");
    bid.setAutoFilter(org.apache.poi.ss.util.CellRangeAddress.valueOf("A1:G4"));
    var style = workbook.createCellStyle();
    style.setDataFormat(workbook.createDataFormat().getFormat("yyyy-mm-dd"));
    bid.getRow(2).createCell(8).setCellStyle(style);
    bid.getRow(2).getCell(8).setCellValue(46_000);
    var name = workbook.createName();
    name.setNameName("Area");
    name.setRefersToFormula("Bid!$C$2:$C$4");
  }

  private Path rooms() {
    return new Book()
        .sheet("Rooms")
        .row("Room", "Floor", "Area (m²)", "Height (m)", "Wall finish")
        .row("Foyer", "Ground", 20, 2.7, "latex")
        .row("Office", "Ground", 12.5, 2.7, "tiles")
        .row("Store", "First", 8, "2,4", "epoxy")
        .write(folder, "rooms.xlsx");
  }

  private Path items() {
    return new Book()
        .sheet("Items")
        .row("Item", "Coating")
        .row("latex flat white", "latex")
        .row("lacq. satin", "lacquer")
        .sheet("Settings")
        .row("Setting", "Value")
        .row("Use tolerance", 0.2)
        .write(folder, "items.xlsx");
  }
}
