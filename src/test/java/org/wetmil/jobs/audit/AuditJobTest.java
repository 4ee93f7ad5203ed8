package org.wetmil.jobs.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetmil.audit.change.PaintTable;
import org.wetmil.audit.past.Measure;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.jobs.FillJob;
import org.wetmil.jobs.FillRun;
import org.wetmil.quantity.UnitSystem;
import org.wetmil.workbook.WorkbookException;
import org.wetmil.workbook.audit.FiredCheck;
import org.wetmil.workbook.audit.LeftOut;

class AuditJobTest {
  private static final LocalDate DATE = LocalDate.of(2026, 1, 5);
  private static final Object[] HEADINGS = {
    "Room",
    "Surface",
    "Length (ft)",
    "Width (ft)",
    "Height (ft)",
    "Coating",
    "Actual paint (gal)",
    "Actual hours"
  };

  @TempDir Path temporary;

  private Path folder;
  private Path output;

  @BeforeEach
  void makeFolder() throws IOException {
    folder = Files.createDirectory(temporary.resolve("bids"));
    output = temporary.resolve("audit.xlsx");
  }

  @Test
  void unreadableBidIsListedWithItsReasonAndTheRestGoOn() throws IOException {
    bid("one", walls(20, 3.0, 9.0));
    Files.writeString(folder.resolve("two.xlsx"), "no workbook");
    Files.writeString(folder.resolve("three.xls"), "old");

    AuditReport report = audit("");

    assertThat(report.bids()).isEqualTo(1);
    assertThat(report.unreadable())
        .extracting(file -> file.file())
        .containsExactly("three.xls", "two.xlsx");
    assertThat(cells("Unreadable")).anyMatch(text -> text.contains("save it as .xlsx"));
  }

  @Test
  void bidThatTakesTooMuchMemoryOrNeverEndsIsListedAndTheRestGoOn() throws IOException {
    bid("deep", walls(20, 3.0, 9.0));
    bid("large", walls(20, 3.0, 9.0));
    bid("plain", walls(20, 3.0, 9.0));
    AuditJob.Reader reader =
        (file, system, today) ->
            switch (file.getFileName().toString()) {
              case "deep.xlsx" -> throw new StackOverflowError();
              case "large.xlsx" -> throw new OutOfMemoryError("as a test has it");
              default -> PastBook.read(file, system, today);
            };

    AuditReport report =
        new AuditJob(options(null, true), (done, all) -> {}, reader).audit(folder, output);

    assertThat(report.bids()).isEqualTo(1);
    assertThat(report.unreadable())
        .extracting(LeftOut::file, LeftOut::reason)
        .containsExactly(
            tuple(
                "deep.xlsx",
                "A fault of the program (java.lang.StackOverflowError); please report it."),
            tuple("large.xlsx", FillRun.OUT_OF_MEMORY));
    assertThat(cells("Unreadable")).contains(FillRun.OUT_OF_MEMORY);
  }

  @Test
  void bidAndItsFilledWorkbookCountOnce() throws IOException {
    Path bid = bid("one", walls(20, 3.0, 9.0));
    new FillJob(DATE, "test", false).fill(bid, folder.resolve("one-filled.xlsx"));

    AuditReport report = audit("");

    assertThat(report.bids()).isEqualTo(1);
    assertThat(report.leftOut()).extracting(file -> file.file()).containsExactly("one.xlsx");
    assertThat(cells("Jobs")).contains("one-filled.xlsx");
  }

  @Test
  void bidOfExcel97IsReadLikeANewerOne() throws IOException {
    Path anew = bid("one", walls(20, 3.0, 9.0));
    Path old = folder.resolve("two.xls");
    save(new HSSFWorkbook(), old, walls(20, 3.0, 9.0));

    AuditReport report = audit("");

    assertThat(report.bids()).isEqualTo(2);
    assertThat(PastBook.read(old, UnitSystem.US, Catalogue.builtIn()).lines())
        .isEqualTo(PastBook.read(anew, UnitSystem.US, Catalogue.builtIn()).lines());
    assertThat(number("Jobs", 2, "Paint taken (gal)")).isEqualTo(3.0);
  }

  @Test
  void bidSavedAnewBesideItsOldFormatCountsOnce() throws IOException {
    bid("one", walls(20, 3.0, 9.0));
    save(new HSSFWorkbook(), folder.resolve("one.xls"), walls(20, 3.0, 9.0));

    AuditReport report = audit("");

    assertThat(report.bids()).isEqualTo(1);
    assertThat(report.leftOut()).extracting(file -> file.file()).containsExactly("one.xls");
  }

  @Test
  void ofTablesSideBySideACheckFiresOnTheLineOfTheOne() throws IOException {
    Object[] headings = {"Room", "Surface", "Coating", "Area (ft²)", "Tip"};
    Object[] west = {"West", "walls", "latex", 110.0, "517"};
    Object[] east = {"East", "ceiling", "latex", 120.0, "531"};
    Path file = folder.resolve("one.xlsx");
    try (XSSFWorkbook book = new XSSFWorkbook();
        OutputStream out = Files.newOutputStream(file)) {
      rows(book.createSheet("Bid"), beside(headings, headings), beside(west, east));
      book.write(out);
    }

    PastBook book = PastBook.read(file, UnitSystem.US, Catalogue.builtIn());

    assertThat(book.checks())
        .filteredOn(each -> each.room().equals("East"))
        .isNotEmpty()
        .allMatch(each -> each.address().matches("[G-K]2"))
        .extracting(FiredCheck::surface)
        .containsOnly(book.lines().get(1).surface());
    assertThat(book.lines().get(1).fired()).isNotEqualTo(book.lines().get(0).fired());
  }

  private static Object[] beside(Object[] left, Object[] right) {
    return Stream.of(left, new Object[1], right).flatMap(Stream::of).toArray();
  }

  /** One large bid on its estimate, two small ones over: the sum and the mean are apart. */
  @Test
  void pageSaysWhatTheRatioOfTheSumsAndThePercentageOfTheMeanAre() throws IOException {
    bid("large", walls(400, 40.0, 80.0));
    bid("small", walls(10, 2.0, 5.0));
    bid("smaller", walls(9, 2.0, 5.0));

    audit("");

    assertThat(cells("Audit"))
        .contains("Taken/bid")
        .anyMatch(text -> text.startsWith("Taken/bid is of all jobs added up"))
        .anyMatch(text -> text.contains("is their mean, in which each weighs the same"));
  }

  @Test
  void bidWithoutOutcomeEntersNoRatio() throws IOException {
    bid("one", walls(20, 3.0, 9.0));
    bid("two", walls(20, null, null));

    assertThat(audit("").verdict().bids()).contains("1 bid says").contains("1 more does not");
  }

  @Test
  void ofBidsThatSayNothingOnlyTheSetupsAreLookedAt() throws IOException {
    bid("one", walls(20, null, null));

    assertThat(audit("").verdict().bids())
        .isEqualTo("No bid says how the job came out; 1 bid only has its setups looked at.");
  }

  /** A job of which twice the paint bid went is off by 100 %, and by its ratio 2. */
  @Test
  void howFarAJobIsOffIsReadOffItsRatio() throws IOException {
    bid("over", walls(20, 30.0, 9.0));
    bid("under", walls(20, 1.0, 9.0));
    audit("");

    try (XSSFWorkbook book = open(output)) {
      Sheet jobs = book.getSheet("Jobs");
      int ratio = column(jobs, "Paint ratio");
      int off = column(jobs, "Paint off by");
      for (int row : new int[] {1, 2}) {
        double is = jobs.getRow(row).getCell(ratio).getNumericCellValue();
        assertThat(jobs.getRow(row).getCell(off).getNumericCellValue())
            .isCloseTo(Math.max(is, 1 / is) - 1, within(1e-9));
      }
    }
  }

  private static int column(Sheet sheet, String heading) {
    for (var cell : sheet.getRow(0)) {
      if (cell.getStringCellValue().equals(heading)) {
        return cell.getColumnIndex();
      }
    }
    throw new IllegalArgumentException("no column " + heading);
  }

  @Test
  void linesWinOverTheJobAndADifferenceIsSaid() throws IOException {
    bid("one", walls(20, 3.0, 9.0), walls(30, 4.0, 11.0));

    audit("Job,Gallons,Hours\none,7.5,20.1\n");

    assertThat(cells("Findings"))
        .contains("actuals differ")
        .anyMatch(text -> text.contains("state 7.0 gal of paint, the job's figure is 7.5"))
        .noneMatch(text -> text.contains("20.1"));
    assertThat(number("Jobs", 1, "Paint taken (gal)")).isEqualTo(7.0, within(1e-9));
  }

  @Test
  void lineOfTheListThatFitsNoBidIsSaidByItsLine() throws IOException {
    bid("one", walls(20, 3.0, 9.0));

    audit("Job,Coating,Gallons,Date\none,enamel,3,2026-01-04\nother,,4,\none,,x,\n");

    assertThat(cells("Findings"))
        .contains("line 2", "no such coating", "line 3", "no such bid", "line 4", "cannot be read");
  }

  @Test
  void datesWhoseDayAndMonthNothingTellsAreSaid() throws IOException {
    bid("one", walls(20, 3.0, 9.0));

    audit("Job,Gallons,Date\none,3,3/4/26\n");
    assertThat(cells("Findings"))
        .contains("day or month", "line 2")
        .anyMatch(text -> text.startsWith("\"3/4/26\" is read as 2026-03-04, but no date"));

    audit("Job,Gallons,Date\none,3,3/4/26\none,1,3/24/26\n");
    assertThat(cells("Findings")).doesNotContain("day or month");

    audit("Job,Gallons,Date\none,3,3/4/26\none,1,3/24/26\none,2,24/3/26\n");
    assertThat(cells("Findings")).contains("day or month");

    audit("Job,Gallons,Date\none,3,2026-04-03\none,1,3/3/26\n");
    assertThat(cells("Findings")).doesNotContain("day or month");
  }

  @Test
  void listOfTheWholeJobCoversSetUpToo() throws IOException {
    bid("one", walls(20, null, null));

    audit("Job;Gallons;Hours;Crew\none;3,5;9,5;North\n");

    assertThat(number("Jobs", 1, "Hours taken (h)")).isEqualTo(9.5);
    PastBook book = PastBook.read(folder.resolve("one.xlsx"), UnitSystem.US, Catalogue.builtIn());
    assertThat(book.lines().stream().mapToDouble(line -> line.hours()).sum())
        .isCloseTo(book.estimated().get(Measure.HOURS), within(1e-9));
    assertThat(cells("Jobs")).contains("North");
  }

  @Test
  void factorsAlreadyAppliedAreTakenOut() throws IOException {
    Path plain = bid("plain", walls(20, null, null));
    Path changed = folder.resolve("changed.xlsx");
    try (XSSFWorkbook book = open(plain);
        OutputStream out = Files.newOutputStream(changed)) {
      rows(
          book.createSheet("Losses"),
          new Object[] {"Coating", "Surface", "Stick"},
          new Object[] {"latex", "walls", 0.5});
      book.write(out);
    }

    var base = PastBook.read(plain, UnitSystem.US, Catalogue.builtIn()).lines().get(0);
    var own = PastBook.read(changed, UnitSystem.US, Catalogue.builtIn()).lines().get(0);

    assertThat(own.gallons()).isCloseTo(base.gallons() * 0.7 / 0.5, within(1e-9));
    assertThat(own.estimated(Measure.PAINT)).isCloseTo(base.gallons(), within(1e-9));
  }

  @Test
  void totalsAndOverwrittenFormulasOfOldBidsAreFound() throws IOException {
    Path bid = bid("one", walls(20, 3.0, 9.0));
    try (XSSFWorkbook book = open(bid)) {
      Sheet sums = book.createSheet("Costs");
      for (int i = 0; i < 8; i++) {
        Row row = sums.createRow(i);
        row.createCell(0).setCellValue(i + 1);
        if (i == 4) {
          row.createCell(1).setCellValue(7);
        } else {
          row.createCell(1).setCellFormula("A" + (i + 1) + "*2");
        }
      }
      sums.createRow(8).createCell(0).setCellFormula("SUM(A1:A7)");
      sums.getRow(8).createCell(1).setCellFormula("SUM(B1:B8)");
      book.getCreationHelper().createFormulaEvaluator().evaluateAll();
      sums.getRow(0).getCell(1).setCellValue(4.0);
      try (OutputStream out = Files.newOutputStream(bid)) {
        book.write(out);
      }
    }

    audit("");

    assertThat(cells("Findings"))
        .contains("Costs!A9", "line left out of a total", "Costs!B5", "formula overwritten")
        .contains("Costs!B9", "total does not add up");
  }

  @Test
  void cellsOnWhichChecksFiredAreListed() throws IOException {
    bid("one", walls(20, 3.0, 9.0), walls(20, 3.0, 9.0));

    audit("");

    assertThat(cells("Setups")).contains("duplicate-line", "one.xlsx Bid!A3");
    assertThat(cells("Fired checks")).contains("duplicate-line", "one.xlsx", "A3", "latex");
  }

  @Test
  void resultThatIsThereStaysWithoutForce() throws IOException {
    bid("one", walls(20, 3.0, 9.0));
    Files.writeString(output, "mine");

    assertThatThrownBy(() -> audit("", false)).isInstanceOf(WorkbookException.Unwritable.class);
    assertThat(output).hasContent("mine");
  }

  @Test
  void tablesThatAreReadAreNotWrittenOver() throws IOException {
    Path tables = Files.copy(bid("one", walls(20, 3.0, 9.0)), temporary.resolve("tables.xlsx"));
    byte[] before = Files.readAllBytes(tables);
    AuditOptions options =
        new AuditOptions(null, null, UnitSystem.US, PaintTable.LOSS, tables, DATE, "test", false);

    assertThatThrownBy(() -> new AuditJob(options, (done, all) -> {}).audit(folder, output))
        .hasMessageContaining("there already");
    assertThat(output).doesNotExist();
    assertThat(tables).hasBinaryContent(before);
  }

  @Test
  void auditAndItsTablesWantTwoFiles() throws IOException {
    bid("one", walls(20, 3.0, 9.0));
    Path same = output.resolveSibling("x").resolve("..").resolve(output.getFileName());
    AuditOptions options =
        new AuditOptions(null, null, UnitSystem.US, PaintTable.LOSS, same, DATE, "test", true);

    assertThatThrownBy(() -> new AuditJob(options, (done, all) -> {}).audit(folder, output))
        .hasMessageContaining("this is the file of the audit itself");
    assertThat(output).doesNotExist();
  }

  @Test
  void resultStandsInTheFolderAbove() {
    Path here = Path.of("").toAbsolutePath();

    assertThat(AuditJob.usualName(Path.of("jobs/past/"))).isEqualTo(Path.of("jobs/audit.xlsx"));
    assertThat(AuditJob.usualName(Path.of("past"))).isEqualTo(Path.of("audit.xlsx"));
    assertThat(AuditJob.usualName(Path.of("."))).isEqualTo(here.resolveSibling("audit.xlsx"));
    assertThat(AuditJob.usualName(Path.of("..")))
        .isEqualTo(here.getParent().resolveSibling("audit.xlsx"));
  }

  private AuditReport audit(String actuals) throws IOException {
    return audit(actuals, true);
  }

  private AuditReport audit(String actuals, boolean overwrite) throws IOException {
    Path list = null;
    if (!actuals.isEmpty()) {
      list = Files.writeString(temporary.resolve("actuals.csv"), actuals);
    }
    return new AuditJob(options(list, overwrite), (done, all) -> {}).audit(folder, output);
  }

  private static AuditOptions options(Path actuals, boolean overwrite) {
    return new AuditOptions(
        actuals, null, UnitSystem.US, PaintTable.LOSS, null, DATE, "test", overwrite);
  }

  private static Object[] walls(double length, Double gallons, Double hours) {
    return new Object[] {"Hall", "walls", length, 15.0, 9.0, "latex", gallons, hours};
  }

  private Path bid(String name, Object[]... lines) throws IOException {
    Path file = folder.resolve(name + ".xlsx");
    save(new XSSFWorkbook(), file, lines);
    return file;
  }

  private static void save(Workbook book, Path file, Object[]... lines) throws IOException {
    try (book;
        OutputStream out = Files.newOutputStream(file)) {
      Object[][] all = new Object[lines.length + 1][];
      all[0] = HEADINGS;
      System.arraycopy(lines, 0, all, 1, lines.length);
      rows(book.createSheet("Bid"), all);
      book.write(out);
    }
  }

  private static void rows(Sheet sheet, Object[]... rows) {
    for (int i = 0; i < rows.length; i++) {
      Row row = sheet.createRow(i);
      for (int j = 0; j < rows[i].length; j++) {
        if (rows[i][j] instanceof Double number) {
          row.createCell(j).setCellValue(number);
        } else if (rows[i][j] != null) {
          row.createCell(j).setCellValue(rows[i][j].toString());
        }
      }
    }
  }

  private static XSSFWorkbook open(Path file) throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      return new XSSFWorkbook(in);
    }
  }

  private List<String> cells(String sheet) throws IOException {
    List<String> cells = new ArrayList<>();
    try (XSSFWorkbook book = open(output)) {
      for (Row row : book.getSheet(sheet)) {
        for (Cell cell : row) {
          cells.add(cell.toString());
        }
      }
    }
    return cells;
  }

  private double number(String sheet, int row, String heading) throws IOException {
    try (XSSFWorkbook book = open(output)) {
      for (Cell cell : book.getSheet(sheet).getRow(0)) {
        if (cell.getStringCellValue().equals(heading)) {
          return book.getSheet(sheet)
              .getRow(row)
              .getCell(cell.getColumnIndex())
              .getNumericCellValue();
        }
      }
    }
    throw new AssertionError("no column " + heading);
  }
}
