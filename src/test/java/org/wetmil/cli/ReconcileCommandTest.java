package org.wetmil.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.wetmil.SmallBid;

/** Reconciling as a bookkeeper runs it, with ledgers that are not as they should be. */
class ReconcileCommandTest {
  private static final Path SAMPLES = Path.of("sample-workbooks");
  private static final String HEADINGS = "Date,Job,Item,Qty,Unit,Amount";
  private static final String LINE = "2026-04-02,2211 Mill loft,latex,3,gal,108.00";

  @TempDir Path folder;
  @TempDir Path logs;
  private Path bid;
  private Path output;
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  @BeforeEach
  void copyBid() throws IOException {
    bid = Files.copy(SAMPLES.resolve("mill-loft.xlsx"), folder.resolve("mill-loft.xlsx"));
    output = folder.resolve("mill-loft-reconciled.xlsx");
  }

  @Test
  void writesBesideTheFirstBidAndNothingElse() throws IOException {
    assertThat(run(bid, "--purchases", ledger("l.csv", HEADINGS, LINE))).isZero();
    assertThat(names()).containsExactly("l.csv", "mill-loft-reconciled.xlsx", "mill-loft.xlsx");
    assertThat(out.toString()).contains("1 line read, 1 matched, 0 unmatched");
  }

  @Test
  void anOutputThatIsThereStaysUnlessForced() throws IOException {
    Path ledger = ledger("l.csv", HEADINGS, LINE);
    Files.writeString(output, "mine");

    assertThat(run(bid, "--purchases", ledger)).isEqualTo(3);
    assertThat(err.toString()).contains("mill-loft-reconciled.xlsx: the file is there already");
    assertThat(output).hasContent("mine");
    assertThat(run(bid, "--force", "--purchases", ledger)).isZero();
    assertThat(Files.size(output)).isGreaterThan(5_000);
  }

  @Test
  void anInputIsNeverWrittenOver() throws IOException {
    Path ledger = ledger("l.csv", HEADINGS, LINE);

    byte[] before = Files.readAllBytes(bid);

    assertThat(run(bid, "--force", "--out", ledger, "--purchases", ledger)).isEqualTo(3);
    assertThat(ledger).content().startsWith(HEADINGS);
    assertThat(run(bid, "--force", "--out", bid, "--purchases", ledger)).isEqualTo(3);
    assertThat(bid).hasBinaryContent(before);
  }

  @Test
  void aResultIsNamedAsTheWorkbookThatItIs() throws IOException {
    Path ledger = ledger("l.csv", HEADINGS, LINE);
    Path other = Files.writeString(folder.resolve("other.csv"), "mine");

    assertThat(run(bid, "--force", "--out", other, "--purchases", ledger)).isEqualTo(3);
    assertThat(err.toString()).contains("other.csv: name a file that ends in .xlsx.");
    assertThat(other).hasContent("mine");
  }

  @Test
  void aFileNamedTwiceCountsOnce() throws IOException {
    Path ledger = ledger("l.csv", HEADINGS, LINE);
    Path again = folder.resolve("../" + folder.getFileName() + "/l.csv");
    Path link = Machine.link(folder.resolve("link.xlsx"), bid);

    assertThat(run(bid, link, "--purchases", ledger, again)).isZero();
    assertThat(out.toString())
        .contains("1 line read, 1 matched")
        .doesNotContain("ledger-line-twice")
        .doesNotContain("job-in-bids");
  }

  /** In a session of plain ASCII, or on a system that is not the one it was filled on. */
  @Test
  void aBidFilledFromAFileOfANameThatCannotBeHereIsABid() throws IOException, InterruptedException {
    Path filled = folder.resolve("filled.xlsx");
    Path source = Files.move(bid, Machine.named(folder, "größe.xlsx"));
    assertThat(Ran.fill(source, "--quiet", "--out", filled).code()).isZero();
    Path ledger = ledger("l.csv", HEADINGS, LINE);

    Program.Ended run =
        Program.start(logs, List.of(), "C", "reconcile", filled, "--purchases", ledger).end();

    assertThat(run.err()).isEmpty();
    assertThat(run.code()).isZero();
    assertThat(run.out()).last().asString().contains("1 line read, 1 matched");
  }

  @Test
  void bidsOfOneJobAndBidsInOtherUnitsAreSaid() throws IOException {
    Path again = Files.copy(bid, folder.resolve("again.xlsx"));
    Path metric = copy("gym-hall.xlsx");
    Path ledger = ledger("l.csv", HEADINGS, LINE);

    assertThat(run(bid, again, metric, "--purchases", ledger)).isZero();
    assertThat(out.toString())
        .contains("note: job-in-bids: 2 bids are for 2211 Mill loft")
        .contains("note: bid-units: gym-hall.xlsx is in other units");
  }

  @Test
  void aBidAndWhatWasFilledFromItCountOnce() throws IOException {
    copy("clinic-refit.xlsx");
    copy("clinic-refit-filled.xlsx");
    Files.delete(bid);
    String line = "2026-04-02,Clinic refit,lacquer,3,gal,183.00";

    assertThat(run(folder, "--purchases", ledger("l.csv", HEADINGS, line))).isZero();
    assertThat(out.toString())
        .contains("clinic-refit.xlsx: passed over, ")
        .doesNotContain("job-in-bids");
    assertThat(folder.resolve("clinic-refit-reconciled.xlsx")).exists();
  }

  @Test
  void aChangeOfTheEstimatorsInAFilledCellIsTaken() throws IOException {
    Path filled = copy("clinic-refit-filled.xlsx");
    String line = "2026-04-02,Clinic refit,lacquer,3,gal,183.00";
    Path ledger = ledger("l.csv", HEADINGS, line);
    run(filled, "--force", "--purchases", ledger);
    double before = bidOf("lacquer");

    change(filled, "lacquer", 7.0);
    run(filled, "--force", "--purchases", ledger);

    assertThat(before).isLessThan(5);
    assertThat(bidOf("lacquer")).isEqualTo(14);
    assertThat(out.toString()).doesNotContain("filled-value");
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, 1e308})
  void aFilledCellWithoutAValueThatCanBeIsComputedAndSaid(double value) throws IOException {
    Path filled = copy("clinic-refit-filled.xlsx");
    Path ledger = ledger("l.csv", HEADINGS, LINE);
    run(filled, "--force", "--purchases", ledger);
    double before = bidOf("lacquer");

    change(filled, "lacquer", value);
    run(filled, "--force", "--purchases", ledger);

    assertThat(bidOf("lacquer")).isEqualTo(before);
    assertThat(out.toString())
        .containsPattern("warning: filled-value: 2 filled cells have no value, from Bid!\\w+ on");
  }

  @Test
  void aLedgerWithoutTheColumnsSaysWhichAreThere() throws IOException {
    Path ledger = ledger("l.csv", "Colour,Sheen", "red,flat");

    assertThat(run(bid, "--purchases", ledger)).isEqualTo(3);
    assertThat(err.toString())
        .contains("l.csv")
        .contains("Colour")
        .contains("nothing was compared");
    assertThat(output).doesNotExist();
  }

  @Test
  void whatCanBeUsedIsUsed() throws IOException {
    Path bad = ledger("bad.csv", "Colour,Sheen", "red,flat");
    Path good = ledger("good.csv", HEADINGS, LINE);

    assertThat(run(bid, folder.resolve("gone.xlsx"), "--purchases", bad, good)).isEqualTo(3);
    assertThat(err.toString()).contains("bad.csv").contains("gone.xlsx");
    assertThat(out.toString()).contains("1 line read, 1 matched");
    assertThat(output).exists();
  }

  @Test
  void everyKindOfBadLineIsSaidWithFileLineAndText() throws IOException {
    Path ledger =
        ledger(
            "l.csv",
            HEADINGS,
            LINE,
            "2026-04-02,2211,latex,dozen,gal,36.00",
            "4/31/26,2211,latex,1,gal,36.00",
            "2026-04-02,Nowhere,latex,1,gal,36.00",
            "2026-04-02,2211,latex,1,bucketful,36.00",
            "2026-04-02,2211,latex,1,gal",
            "2026-04-02,2211,latex,1,gal,36.00,more,and more");

    assertThat(run(bid, "--purchases", ledger)).isZero();
    assertThat(out.toString())
        .contains("l.csv:3: warning: ledger-number: Quantity \"dozen\"")
        .contains("l.csv:4: warning: ledger-date: Date \"4/31/26\"")
        .contains("l.csv:5: warning: ledger-job: \"Nowhere\"")
        .contains("l.csv:6: warning: ledger-unit: \"1\" \"bucketful\"")
        .contains("l.csv:7: note: ledger-line-short")
        .contains("l.csv:8: warning: ledger-line-long")
        .contains("7 lines read");
  }

  @Test
  void aWorkbookInThePlaceOfALedgerIsToldFromText() throws IOException {
    assertThat(run(bid, "--purchases", bid)).isEqualTo(3);
    assertThat(err.toString()).contains("this is a workbook; save its sheet as CSV first");
  }

  @Test
  void aLedgerWithHeadingsAloneIsAFinding() throws IOException {
    assertThat(run(bid, "--purchases", ledger("l.csv", HEADINGS))).isZero();
    assertThat(out.toString()).contains("l.csv: warning: ledger-empty").contains("0 lines read");
  }

  @Test
  void findingsFailTheRunWhenAsked() throws IOException {
    Path ledger = ledger("l.csv", HEADINGS, "2026-04-02,Nowhere,latex,1,gal,36.00");

    assertThat(run(bid, "--quiet", "--fail-on", "warning", "--purchases", ledger)).isEqualTo(1);
    assertThat(out.toString().lines()).hasSize(1);
  }

  @Test
  void theItemTableComesFirst() throws IOException {
    Path items = ledger("items.csv", "Item,Coating", "MAGIC,latex");
    Path ledger = ledger("l.csv", HEADINGS, "2026-04-02,2211,MAGIC,3,gal,108.00");

    assertThat(run(bid, "--items", items, "--purchases", ledger)).isZero();
    assertThat(out.toString()).contains("1 matched");
  }

  @Test
  void theItemTableMayBeASheetOfAnyNameWithTitlesAbove() throws IOException {
    Path items =
        workbook(
            "office.xlsx",
            "names",
            new Object[][] {{"Our names"}, {"Item", "Note", "Coating"}, {"MAGIC", "", "latex"}});
    Path ledger =
        ledger(
            "l.csv",
            HEADINGS,
            "2026-04-02,2211,MAGIC,3,gal,108.00",
            "2026-04-03,2211,magic,1,gal,36.00");

    assertThat(run(bid, "--items", items, "--purchases", ledger)).isZero();
    assertThat(out.toString()).contains("2 matched");
    assertThat(texts("Basis")).contains("table of items: 1 row");
  }

  @Test
  void aSheetItemsOfABidIsForItsJob() throws IOException {
    add(bid, "Items", new Object[][] {{"Item", "Coating"}, {100245, "latex"}});
    Path ledger = ledger("l.csv", HEADINGS, "2026-04-02,2211,100245,3,gal,108.00");

    assertThat(run(bid, "--purchases", ledger)).isZero();
    assertThat(out.toString()).contains("1 matched");
  }

  @Test
  void settingsAreTakenFromTheOwnWorkbookBeforeTheBidAndBasisSaysSo() throws IOException {
    Path ledger = ledger("l.csv", HEADINGS, LINE, LINE);
    Object[][] drop = {{"Setting", "Value"}, {"Duplicate lines", "drop"}, {"Use tolerance", 0.5}};
    add(bid, "Settings", new Object[][] {{}, {}, {"Duplicate lines", "drop"}});

    assertThat(run(bid, "--purchases", ledger)).isZero();
    assertThat(out.toString()).contains("1 matched").contains("1 left out");
    assertThat(texts("Basis")).contains("drop", "yours: mill-loft.xlsx, Settings!B3");

    drop[1][1] = "count";
    Path office = workbook("office.xlsx", "Settings", drop);
    run(bid, "--force", "--items", office, "--purchases", ledger);
    assertThat(out.toString())
        .contains("2 matched")
        .contains(
            "office.xlsx: note: setting-differs: Duplicate lines is \"count\" here, which counts,"
                + " and \"drop\" in mill-loft.xlsx.");
    assertThat(texts("Basis"))
        .contains("yours: office.xlsx, Settings!B2", "yours: office.xlsx, Settings!B3", "0.5");
  }

  @Test
  void aSettingThatCannotBeUsedIsSaidAndTheBuiltInCounts() throws IOException {
    Path office =
        workbook(
            "office.xlsx",
            "Settings",
            new Object[][] {{"Setting", "Value"}, {"Duplicate lines", "maybe"}});
    Path ledger = ledger("l.csv", HEADINGS, LINE, LINE);

    assertThat(run(bid, "--items", office, "--purchases", ledger)).isZero();
    assertThat(out.toString())
        .contains("2 matched")
        .contains("office.xlsx: warning: setting-cell: \"maybe\" in Settings!B2");
  }

  @Test
  void aWorkbookWithNeitherItemsNorSettingsSaysWhichSheetsItHas() throws IOException {
    Path office = workbook("office.xlsx", "Names", new Object[][] {{"Product", "Paint"}});

    assertThat(run(bid, "--items", office, "--purchases", ledger("l.csv", HEADINGS, LINE)))
        .isEqualTo(3);
    assertThat(err.toString())
        .contains("no sheet has the headings Item and Coating")
        .contains("its sheets are Names.");
  }

  @Test
  void moneyInTwoCurrenciesIsNeverOneSum() throws IOException {
    Path dollars = ledger("us.csv", HEADINGS, LINE.replace("108.00", "$108.00"), LINE);
    Path euros = ledger("eu.csv", HEADINGS, LINE.replace("108.00", "90.00 €"));

    assertThat(run(bid, "--purchases", dollars, euros)).isZero();
    assertThat(out.toString())
        .contains(
            "warning: ledger-currencies: The ledgers hold $ 216.00 (2 lines) and EUR 90.00 (1"
                + " line); each is summed by itself, and prices and cost are of the amounts in $"
                + " alone.");
    assertThat(texts("Reconcile"))
        .contains("Amount ($)", "Amount (EUR)")
        .contains(
            "Amounts are in 2 currencies, each summed by itself; prices and cost are of those in $"
                + " alone.");
    assertThat(texts("By month")).contains("Matched amount ($)", "Matched amount (EUR)");
    assertThat(numbers("By job")).contains(216.0, 90.0).doesNotContain(306.0);
  }

  @Test
  void daysAreReadInTheOrderStated() throws IOException {
    Path ledger = ledger("l.csv", HEADINGS, "3/4/26,2211,latex,3,gal,108.00");

    run(bid, "--from", "2026-04-01", "--date-order", "day-first", "--purchases", ledger);

    assertThat(out.toString()).contains("1 matched").contains("0 outside");
    assertThat(run(bid, "--date-order", "year-first", "--purchases", ledger)).isEqualTo(2);
  }

  @Test
  void aPeriodThatEndsBeforeItBeginsIsNotUnderstood() throws IOException {
    Path ledger = ledger("l.csv", HEADINGS, LINE);

    assertThat(run(bid, "--from", "2026-05-01", "--to", "2026-04-01", "--purchases", ledger))
        .isEqualTo(2);
  }

  private Path ledger(String name, String... lines) throws IOException {
    return Files.writeString(folder.resolve(name), String.join("\n", lines) + "\n");
  }

  private Path workbook(String name, String sheet, Object[][] rows) throws IOException {
    Path file = folder.resolve(name);
    try (XSSFWorkbook book = new XSSFWorkbook();
        OutputStream out = Files.newOutputStream(file)) {
      write(book.createSheet(sheet), rows);
      book.write(out);
    }
    return file;
  }

  /** Writes rows into a sheet of a workbook, which it may have already; empty rows stay. */
  private static void add(Path file, String sheet, Object[][] rows) throws IOException {
    XSSFWorkbook book;
    try (InputStream in = Files.newInputStream(file)) {
      book = new XSSFWorkbook(in);
    }
    write(book.getSheet(sheet) == null ? book.createSheet(sheet) : book.getSheet(sheet), rows);
    try (OutputStream out = Files.newOutputStream(file)) {
      book.write(out);
    }
  }

  private static void write(XSSFSheet sheet, Object[][] rows) {
    for (int i = 0; i < rows.length; i++) {
      if (rows[i].length > 0) {
        SmallBid.row(sheet, i, rows[i]);
      }
    }
  }

  /** The texts on a sheet of what was written. */
  private List<String> texts(String sheet) throws IOException {
    return cells(sheet).filter(String.class::isInstance).map(String.class::cast).toList();
  }

  private List<Double> numbers(String sheet) throws IOException {
    return cells(sheet).filter(Double.class::isInstance).map(Double.class::cast).toList();
  }

  private Stream<Object> cells(String sheet) throws IOException {
    Stream.Builder<Object> cells = Stream.builder();
    try (InputStream in = Files.newInputStream(output);
        XSSFWorkbook book = new XSSFWorkbook(in)) {
      for (Row row : book.getSheet(sheet)) {
        for (Cell cell : row) {
          CellType type =
              cell.getCellType() == CellType.FORMULA
                  ? cell.getCachedFormulaResultType()
                  : cell.getCellType();
          cells.add(
              type == CellType.NUMERIC
                  ? (Object) cell.getNumericCellValue()
                  : cell.getStringCellValue());
        }
      }
    }
    return cells.build();
  }

  private Path copy(String sample) throws IOException {
    return Files.copy(SAMPLES.resolve(sample), folder.resolve(sample));
  }

  private List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }

  private int run(Object... words) {
    List<String> args = new ArrayList<>(List.of("reconcile", "--date", "2026-05-04"));
    Stream.of(words).map(String::valueOf).forEach(args::add);
    return WetmilCommand.commandLine()
        .setOut(new PrintWriter(out, true))
        .setErr(new PrintWriter(err, true))
        .execute(args.toArray(String[]::new));
  }

  /** Types a figure over the paint of every line of a coating; takes it away when it is NaN. */
  private static void change(Path filled, String coating, double paint) throws IOException {
    XSSFWorkbook book;
    try (InputStream in = Files.newInputStream(filled)) {
      book = new XSSFWorkbook(in);
    }
    Sheet sheet = book.getSheet("Bid");
    int name = column(book, "wm_col_coating_used");
    int figure = column(book, "wm_col_paint");
    for (Row row : sheet) {
      if (row.getCell(name) != null && row.getCell(name).toString().equals(coating)) {
        row.getCell(figure).setBlank();
        if (!Double.isNaN(paint)) {
          row.getCell(figure).setCellValue(paint);
        }
      }
    }
    try (OutputStream out = Files.newOutputStream(filled)) {
      book.write(out);
    }
  }

  private static int column(XSSFWorkbook book, String name) {
    return new AreaReference(book.getName(name).getRefersToFormula(), book.getSpreadsheetVersion())
        .getFirstCell()
        .getCol();
  }

  /** What the written workbook says was bid of a coating. */
  private double bidOf(String coating) throws IOException {
    try (InputStream in = Files.newInputStream(folder.resolve("clinic-refit-reconciled.xlsx"));
        XSSFWorkbook book = new XSSFWorkbook(in)) {
      for (Row row : book.getSheet("By coating")) {
        if (row.getCell(0).toString().equals(coating)) {
          return row.getCell(1).getNumericCellValue();
        }
      }
    }
    throw new AssertionError("no row for " + coating);
  }
}
