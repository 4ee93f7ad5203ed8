package org.wetmil.workbook.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.wetmil.estimate.InputColumn.AREA;
import static org.wetmil.estimate.InputColumn.COATING;
import static org.wetmil.estimate.InputColumn.COATS;
import static org.wetmil.estimate.InputColumn.COUNT;
import static org.wetmil.estimate.InputColumn.GIRTH;
import static org.wetmil.estimate.InputColumn.HEIGHT;
import static org.wetmil.estimate.InputColumn.LENGTH;
import static org.wetmil.estimate.InputColumn.OPENINGS;
import static org.wetmil.estimate.InputColumn.PRESSURE;
import static org.wetmil.estimate.InputColumn.ROOM;
import static org.wetmil.estimate.InputColumn.SPECIFIED_FILM;
import static org.wetmil.estimate.InputColumn.THINNER;
import static org.wetmil.estimate.InputColumn.TIP;
import static org.wetmil.estimate.InputColumn.WIDTH;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetmil.catalogue.Setting;
import org.wetmil.catalogue.Tables;
import org.wetmil.catalogue.Task;
import org.wetmil.estimate.BidLine;
import org.wetmil.estimate.BidSheet;
import org.wetmil.estimate.InputColumn;
import org.wetmil.estimate.InputValue;
import org.wetmil.estimate.InputValue.State;
import org.wetmil.quantity.Unit;
import org.wetmil.quantity.UnitSystem;
import org.wetmil.workbook.WorkbookException;
import org.wetmil.workbook.read.table.RowKind;

class BidReaderTest {
  private static final Offset<Double> EXACT = within(1e-9);

  @TempDir Path folder;

  private static List<BidLine> lines(ReadWorkbook read) {
    return read.bid().sheets().stream().map(BidSheet::lines).flatMap(List::stream).toList();
  }

  private static Book bid() {
    return new Book().sheet("Bid");
  }

  @Test
  void headingsInAnyCaseOrderAndOtherWordsGiveLines() {
    ReadWorkbook read =
        bid()
            .row("Smith clinic, room schedule")
            .skip(1)
            .row("PRODUCT", "Rm", "surface", "L", "w", "Ht", "Qty", "Deduct", "# coats", "Remarks")
            .row("latex", "101", "walls", 12, 10, 9, null, 21, 2, "north")
            .row("oil", 101, "doors", null, null, null, 3)
            .read(folder);

    List<BidLine> lines = lines(read);
    assertThat(lines).hasSize(2);
    BidLine walls = lines.get(0);
    assertThat(walls.row()).isEqualTo(4);
    assertThat(walls.text(ROOM)).isEqualTo("101");
    assertThat(walls.text(COATING)).isEqualTo("latex");
    assertThat(walls.number(LENGTH)).isEqualTo(12);
    assertThat(walls.number(WIDTH)).isEqualTo(10);
    assertThat(walls.number(HEIGHT)).isEqualTo(9);
    assertThat(walls.number(OPENINGS)).isEqualTo(21);
    assertThat(walls.number(COATS)).isEqualTo(2);
    assertThat(walls.get(LENGTH).isLive()).isTrue();
    assertThat(lines.get(1).text(ROOM)).isEqualTo("101");
    assertThat(lines.get(1).number(COUNT)).isEqualTo(3);

    TableLayout table = read.layouts().get(0).tables().get(0);
    assertThat(table.headingRow()).isEqualTo(2);
    assertThat(table.firstRow()).isEqualTo(3);
    assertThat(table.lastRow()).isEqualTo(4);
    assertThat(table.lineRows()).containsExactly(3, 4);
    assertThat(table.columns()).containsEntry(COATING, 0).containsEntry(HEIGHT, 5);
    assertThat(table.firstColumn()).isZero();
    assertThat(table.lastColumn()).isEqualTo(9);
    assertThat(table.firstFreeColumn()).isEqualTo(10);
    assertThat(table.excelTable()).isEmpty();
    assertThat(read.bid().job()).isEqualTo("job");
    assertThat(read.bid().sheets().get(0).unitsStated()).isFalse();
    assertThat(read.bid().remarks()).isEmpty();
    assertThat(read.filledBefore()).isFalse();
    assertThat(read.rows()).containsEntry(RowKind.LINE, 2);
  }

  @Test
  void unitsInHeadingsMakeTheSheetMetricAndOnesInCellsWin() {
    ReadWorkbook read =
        bid()
            .row(
                "Room",
                "Surface",
                "Coating",
                "Length (m)",
                "Height, mm",
                "Openings (m²)",
                "Girth",
                "Pressure (bar)",
                "DFT")
            .row("A", "walls", "latex", 4, 2700, 1.9, 100, 140, 75)
            .row("B", "walls", "latex", "12 ft", 2700, "9 SF")
            .read(folder);

    BidSheet sheet = read.bid().sheets().get(0);
    assertThat(sheet.system()).isEqualTo(UnitSystem.METRIC);
    assertThat(read.bid().system()).isEqualTo(UnitSystem.METRIC);
    assertThat(sheet.unitsStated()).isTrue();
    assertThat(sheet.columnUnits())
        .containsEntry(LENGTH, Unit.METRE)
        .containsEntry(HEIGHT, Unit.MILLIMETRE)
        .containsEntry(OPENINGS, Unit.SQUARE_METRE)
        .containsEntry(GIRTH, Unit.MILLIMETRE)
        .containsEntry(SPECIFIED_FILM, Unit.MICROMETRE);
    BidLine a = sheet.lines().get(0);
    assertThat(a.number(LENGTH)).isCloseTo(4 / 0.3048, EXACT);
    assertThat(a.number(HEIGHT)).isCloseTo(2.7 / 0.3048, EXACT);
    assertThat(a.get(HEIGHT).cellNumber()).isEqualTo(2700);
    assertThat(a.get(HEIGHT).unit()).isEqualTo(Unit.MILLIMETRE);
    assertThat(a.number(GIRTH)).isCloseTo(100 / 25.4, EXACT);
    assertThat(a.number(PRESSURE)).isCloseTo(140 * 14.503773773, within(1e-4));
    assertThat(a.number(SPECIFIED_FILM)).isCloseTo(75 / 25.4, EXACT);
    BidLine b = sheet.lines().get(1);
    assertThat(b.number(LENGTH)).isEqualTo(12);
    assertThat(b.get(LENGTH).isLive()).isFalse();
    assertThat(b.number(OPENINGS)).isCloseTo(9, EXACT);
  }

  @Test
  void gunInThePressureHeadingIsNoticed() {
    ReadWorkbook read =
        bid()
            .row("Room", "Surface", "Area", "Coating", "Gun pressure (psi)")
            .row("A", "walls", 100, "latex", 1900)
            .read(folder);
    assertThat(lines(read).get(0).pressureAtGun()).isTrue();
    assertThat(lines(read).get(0).number(PRESSURE)).isEqualTo(1900);
  }

  @Test
  void settingsStateUnitsAndJob() {
    ReadWorkbook read =
        bid()
            .row("Room", "Surface", "Length", "Height", "Coating")
            .row("A", "walls", 4, 2.5, "latex")
            .sheet("Settings")
            .row("Setting", "Value", "Unit")
            .row("Job", "Harbour clinic")
            .row("Units", "metric")
            .row("Waste", new Book.Shown(0.08, "0%"))
            .row("Distance", 30, "cm")
            .row("Overlap", "40 %")
            .read(folder);

    assertThat(read.bid().job()).isEqualTo("Harbour clinic");
    assertThat(read.bid().system()).isEqualTo(UnitSystem.METRIC);
    assertThat(lines(read).get(0).number(LENGTH)).isCloseTo(4 / 0.3048, EXACT);
    assertThat(read.bid().sheets().get(0).unitsStated()).isTrue();
    assertThat(read.bid().catalogue().number(Setting.WASTE)).isCloseTo(0.08, EXACT);
    assertThat(read.bid().catalogue().number(Setting.DISTANCE)).isCloseTo(30 / 2.54, EXACT);
    assertThat(read.bid().catalogue().number(Setting.OVERLAP)).isCloseTo(0.4, EXACT);
    assertThat(read.bid().problems()).isEmpty();
  }

  @Test
  void theEstimatorsTablesAreLaidOverTheBuiltInOnes() {
    ReadWorkbook read =
        bid()
            .row("Room", "Surface", "Length", "Height", "Coating")
            .row("A", "walls", 40, 9, "Deep matt 7")
            .sheet("Coatings")
            .row("My products")
            .row(
                "Product",
                "Type",
                "Volume solids (%)",
                "WFT min (mil)",
                "WFT (µm)",
                "Density (lb/gal)")
            .row("Deep matt 7", "latex", 41, 3, 120, 11)
            .row("Deep matt 8", "latex", 0.42, "3 mil", null, null)
            .row("No such", "jam")
            .sheet("Surfaces")
            .row(
                "Surface",
                "Measured by",
                "Narrowest dimension (in)",
                "Widest fan (digit)",
                "Stick",
                "Hit",
                "Band",
                "Trigger share",
                "Unit size (m²)")
            .row("lockers", "count x unit", 12, 3, "70 %", 65, "joinery", 0.08, 1.5)
            .sheet("Sprayers")
            .row(
                "Sprayer",
                "Max flow (L/min)",
                "Greatest orifice (thou)",
                "Hose length (ft)",
                "Filter (mesh)")
            .row("the red one", 2.0, 23, 50, 60)
            .sheet("Tips on hand")
            .row("Tip", "Count")
            .row(517, 2)
            .row("211", 1)
            .sheet("Labour rates")
            .row("dust only", 1500, "ft²/h")
            .read(folder);

    var catalogue = read.bid().catalogue();
    var coating = catalogue.coating("deep matt 7").orNull();
    assertThat(coating.volumeSolids()).isCloseTo(0.41, EXACT);
    assertThat(coating.wetMinMil()).isCloseTo(3, EXACT);
    assertThat(coating.wetTargetMil()).isCloseTo(120 / 25.4, EXACT);
    assertThat(coating.densityKgL()).isCloseTo(11 * 0.119826427, within(1e-6));
    assertThat(catalogue.coating("Deep matt 8").orNull().volumeSolids()).isCloseTo(0.42, EXACT);
    assertThat(catalogue.surface("lockers").orNull().row().number("Unit area"))
        .isCloseTo(1.5 / (0.3048 * 0.3048), EXACT);
    assertThat(catalogue.sprayer("The red one").orNull().row().number("Greatest flow"))
        .isCloseTo(2.0 / 3.785411784, EXACT);
    assertThat(catalogue.tipsOnHand()).hasSize(2);
    assertThat(catalogue.rate(Task.DUST)).isEqualTo(1500);
    assertThat(read.bid().problems()).extracting("raw").containsExactly("jam");
    assertThat(read.bid().problems()).extracting("address").containsExactly("B5");
    assertThat(read.layouts()).extracting(SheetLayout::sheet).containsExactly("Bid");
  }

  @Test
  void gallonsSprayedAreGallonsOnAMetricJobToo() {
    ReadWorkbook read =
        bid()
            .row("Room", "Surface", "Length (m)", "Height (m)", "Coating")
            .row("A", "walls", 4, 2.7, "latex")
            .sheet("Tips on hand")
            .row("Tip", "Gallons sprayed")
            .row(517, 45)
            .sheet("Settings")
            .row("Units", "metric")
            .read(folder);
    assertThat(read.bid().catalogue().tipsOnHand().get(0).gallonsSprayed()).isCloseTo(45, EXACT);
  }

  @Test
  void openingsMayShareTheirRoomInMergedCellsAndOneWithoutARoomIsSaid() {
    ReadWorkbook read =
        bid()
            .row("Room", "Surface", "Length", "Height", "Coating")
            .row("A", "walls", 40, 9, "latex")
            .sheet("Openings")
            .row("Room", "Kind", "Width (ft)", "Height (ft)", "Count")
            .row("A", "door", 3, 7, 1)
            .row(null, "window", "4' 6\"", 4, 2)
            .row(null, "window", 5, 4, 1)
            .merge("A2:A3")
            .read(folder);
    assertThat(read.bid().catalogue().rows(Tables.OPENINGS))
        .extracting(row -> row.number("Width"))
        .containsExactly(3.0, 4.5);
    assertThat(read.bid().problems()).extracting("address").containsExactly("C4");
    assertThat(read.layouts()).hasSize(1);
  }

  @Test
  void rowsThatAreNoLinesAreTold() {
    ReadWorkbook read =
        bid()
            .row("Room", "Surface", "Length", "Height", "Area", "Coating")
            .row("First floor")
            .row("101", "walls", 40, 9, null, "latex")
            .row("102", "ceiling", null, null, 80, "latex")
            .row("Subtotal", null, null, null, new Book.Formula("SUM(E3:E4)", 80))
            .skip(1)
            .row("Room", "Surface", "Length", "Height", "Area", "Coating")
            .row("Second floor")
            .row("201", "walls", 40, 9, null, "latex")
            .row(null, null, null, null, new Book.Formula("SUM(E9:E9)", 0))
            .row("Total Fitness", "walls", 10, 9, null, "latex")
            .row("Lobby total", null, null, null, 99)
            .row("Grand total", "walls", null, null, 99)
            .skip(2)
            .row("Prepared by", "J. Doe")
            .row("Price per hour", null, 55)
            .read(folder);

    assertThat(lines(read))
        .extracting(line -> line.text(ROOM))
        .containsExactly("101", "102", "201", "Total Fitness");
    assertThat(read.rows())
        .containsEntry(RowKind.LINE, 4)
        .containsEntry(RowKind.TOTAL, 4)
        .containsEntry(RowKind.TITLE, 2)
        .containsEntry(RowKind.REPEATED_HEADING, 1)
        .containsEntry(RowKind.BELOW, 2)
        .containsEntry(RowKind.BLANK, 3);
    assertThat(lines(read))
        .extracting(line -> line.text(InputColumn.FLOOR))
        .containsExactly("First floor", "First floor", "Second floor", "Second floor");
    assertThat(read.bid().remarks())
        .extracting("check")
        .containsExactly("row-left-out", "section-titles");
    assertThat(read.layouts().get(0).tables()).hasSize(1);
    assertThat(read.layouts().get(0).tables().get(0).lastRow()).isEqualTo(10);
  }

  @Test
  void whatCellsHoldIsSaid() {
    ReadWorkbook read =
        bid()
            .row(
                "Room",
                "Surface",
                "Length",
                "Height",
                "Area",
                "Openings",
                "Coating",
                "Coats",
                "DFT",
                "Tip",
                "Thinner",
                "Count")
            .row(4.02, "walls", 0, "TBD", -5, 0, "latex", "2 coats", "4-6", 517, 10, 0)
            .row(
                new Book.Shown(4.1, "0.00"),
                "walls",
                "12' 6\"",
                "abc",
                "9 m²",
                "-",
                "latex",
                2,
                5,
                "517",
                new Book.Shown(0.1, "0%"),
                "3 ea")
            .row(
                "C",
                "walls",
                new Book.Formula("1/0", null),
                new Book.Shown(45539, "d-mmm"),
                "7.5 x 6 m",
                null,
                "n/a",
                null,
                new Book.Shown(45387, "d-mmm"),
                new Book.Shown(45429, "m-dd"),
                "10 %",
                true)
            .read(folder);

    BidLine a = lines(read).get(0);
    assertThat(a.text(ROOM)).isEqualTo("4.02");
    assertThat(a.get(LENGTH).state()).isEqualTo(State.BLANK);
    assertThat(a.get(HEIGHT).state()).isEqualTo(State.BLANK);
    assertThat(a.get(AREA).state()).isEqualTo(State.UNREADABLE);
    assertThat(a.get(AREA).raw()).isEqualTo("-5");
    assertThat(a.number(OPENINGS)).isZero();
    assertThat(a.number(COATS)).isEqualTo(2);
    assertThat(a.get(SPECIFIED_FILM).low()).isEqualTo(4);
    assertThat(a.get(SPECIFIED_FILM).high()).isEqualTo(6);
    assertThat(a.number(SPECIFIED_FILM)).isEqualTo(5);
    assertThat(a.text(TIP)).isEqualTo("517");
    assertThat(a.number(THINNER)).isCloseTo(0.1, EXACT);
    // none is not one: a finding says that it counts as not stated
    assertThat(a.get(COUNT).number()).isZero();
    assertThat(a.number(COUNT)).isNaN();

    BidLine b = lines(read).get(1);
    assertThat(b.text(ROOM)).isEqualTo("4.10");
    assertThat(b.number(LENGTH)).isEqualTo(12.5);
    assertThat(b.get(HEIGHT).state()).isEqualTo(State.UNREADABLE);
    assertThat(b.get(HEIGHT).expected()).startsWith("a length");
    assertThat(b.number(AREA)).isCloseTo(9 / (0.3048 * 0.3048), EXACT);
    assertThat(b.get(OPENINGS).isBlank()).isTrue();
    assertThat(b.number(THINNER)).isCloseTo(0.1, EXACT);
    assertThat(b.get(THINNER).unit()).isEqualTo(Unit.ONE);
    assertThat(b.number(COUNT)).isEqualTo(3);

    BidLine c = lines(read).get(2);
    assertThat(c.get(LENGTH).state()).isEqualTo(State.FORMULA_ERROR);
    assertThat(c.get(LENGTH).raw()).isEqualTo("#DIV/0!");
    assertThat(c.get(HEIGHT).state()).isEqualTo(State.DATE);
    assertThat(c.get(HEIGHT).raw()).isEqualTo("4-Sep");
    assertThat(c.number(AREA)).isCloseTo(45 / (0.3048 * 0.3048), EXACT);
    assertThat(c.get(COATING).isBlank()).isTrue();
    assertThat(c.get(SPECIFIED_FILM).state()).isEqualTo(State.DATE);
    assertThat(c.get(TIP).state()).isEqualTo(State.DATE);
    assertThat(c.get(TIP).raw()).isEqualTo("5-17");
    assertThat(c.number(THINNER)).isCloseTo(0.1, EXACT);
    assertThat(c.get(COUNT).state()).isEqualTo(State.UNREADABLE);
  }

  @Test
  void aFormulasStoredValueIsTakenAndAMissingOneComputed() {
    ReadWorkbook read =
        bid()
            .row("Room", "Surface", "Length", "Height", "Coating")
            .row("A", "walls", new Book.Formula("2*3", 6), 9, "latex")
            .row("B", "walls", new Book.Formula("C2*2", null), 9, "latex")
            .read(folder);
    assertThat(lines(read).get(0).number(LENGTH)).isEqualTo(6);
    InputValue computed = lines(read).get(1).get(LENGTH);
    assertThat(computed.number()).isEqualTo(12);
    assertThat(computed.isLive()).isTrue();
  }

  @Test
  void onALongSheetAMissingResultIsAskedFor() {
    Path file =
        bid()
            .row("Room", "Surface", "Length", "Height", "Coating")
            .row("A", "walls", new Book.Formula("2*3", null), 9, "latex")
            .row("B", "walls", 4, 9, "latex")
            .write(folder);
    ReadWorkbook read = BidReader.read(file, new ReadOptions(2));
    assertThat(lines(read).get(0).get(LENGTH).state()).isEqualTo(State.UNREADABLE);
    assertThat(lines(read).get(0).get(LENGTH).raw()).isEqualTo("=2*3");
    assertThat(read.bid().remarks()).extracting("check").containsExactly("formula-not-computed");
  }

  @Test
  void twoColumnsForOneInputAreSaid() {
    ReadWorkbook read =
        bid()
            .row("Room", "Surface", "Length", "Height", "Ht", "Coating")
            .row("A", "walls", 40, 9, 8, "latex")
            .read(folder);
    assertThat(lines(read).get(0).number(HEIGHT)).isEqualTo(9);
    assertThat(read.bid().remarks())
        .extracting("check", "address")
        .containsExactly(org.assertj.core.groups.Tuple.tuple("heading-twice", "E1"));
  }

  @Test
  void columnsKeepClearOfSideNotes() {
    ReadWorkbook read =
        bid()
            .row("Room", "Surface", "Length", "Height", "Coating")
            .row("A", "walls", 40, 9, "latex", null, "check on site")
            .row("B", "walls", 40, 9, "latex")
            .row(null, null, null, null, null, null, null, "far below")
            .read(folder);
    TableLayout table = read.layouts().get(0).tables().get(0);
    assertThat(table.lastColumn()).isEqualTo(4);
    assertThat(table.firstFreeColumn()).isEqualTo(7);
    assertThat(read.bid().remarks()).extracting("check").containsExactly("columns-moved");
  }

  @Test
  void anEarlierFillIsKnownByItsMarksAndIgnored() {
    ReadWorkbook read =
        bid()
            .row("Room", "Surface", "Length", "Height", "Coating", "Area", "Findings")
            .row("A", "walls", 40, 9, "latex", 999, "x")
            .row("B", "walls", 40, 9, "latex", 999, "x")
            .sheet("Basis")
            .row("Room", "Surface", "Area", "Coating")
            .row("A", "walls", 3, "latex")
            .with(
                workbook -> {
                  workbook.getProperties().getCustomProperties().addProperty("Wetmil filled", "1");
                  for (var mark :
                      Map.of("wm_col_net_area", "Bid!$F$1:$F$2", "wm_col_findings", "Bid!$G$1:$G$2")
                          .entrySet()) {
                    var name = workbook.createName();
                    name.setSheetIndex(0);
                    name.setNameName(mark.getKey());
                    name.setRefersToFormula(mark.getValue());
                  }
                  var sheet = workbook.createName();
                  sheet.setNameName("wm_sheet_basis");
                  sheet.setRefersToFormula("Basis!$A$1");
                })
            .read(folder);
    assertThat(read.filledBefore()).isTrue();
    assertThat(read.ourSheets()).containsExactly("Basis");
    assertThat(read.layouts()).hasSize(1);
    assertThat(read.layouts().get(0).ourColumns()).containsExactly(5, 6);
    assertThat(read.layouts().get(0).tables().get(0).firstFreeColumn()).isEqualTo(5);
    assertThat(lines(read)).hasSize(2).allMatch(line -> !line.has(AREA));
  }

  @Test
  void theRoomIsTakenFromMergedCellsOnly() {
    ReadWorkbook read =
        bid()
            .row("Room", "Surface", "Length", "Height", "Coating")
            .row("A", "walls", 40, 9, "latex")
            .row(null, "ceiling", 40, 9, "latex")
            .row("B", "walls", 40, 9, "latex")
            .row(null, "ceiling", 40, 9, "latex")
            .merge("A2:A3")
            .read(folder);
    assertThat(lines(read)).extracting(line -> line.text(ROOM)).containsExactly("A", "A", "B", "");
  }

  @Test
  void withoutATableTheHeadingsFoundAndLookedForAreSaid() {
    Path file =
        bid().row("Space", "Area", "Rent").row("Lobby", 200, 5).row("Hall", 90, 4).write(folder);
    assertThatThrownBy(() -> BidReader.read(file, ReadOptions.USUAL))
        .isInstanceOf(WorkbookException.NoBid.class)
        .hasMessageContaining("row 1 of sheet \"Bid\"")
        .hasMessageContaining("Room (\"Space\"), Area; not known: \"Rent\"")
        .hasMessageContaining("Looked for: Room or Surface");
  }

  @Test
  void ofManyUnknownHeadingsAFewAreSaid() {
    Object[] headings = new Object[60];
    Object[] cells = new Object[60];
    for (int i = 0; i < headings.length; i++) {
      headings[i] = i == 0 ? "Space" : i == 1 ? "Area" : "Word of our own no. " + i;
      cells[i] = i;
    }
    headings[2] = "long ".repeat(100);
    Path file = bid().row(headings).row(cells).row(cells).write(folder);
    assertThatThrownBy(() -> BidReader.read(file, ReadOptions.USUAL))
        .isInstanceOf(WorkbookException.NoBid.class)
        .hasMessageContaining("\"Word of our own no. 9\" and 50 more. Looked for")
        .message()
        .hasSizeLessThan(900);
  }

  @Test
  void withoutALineItIsSaidToo() {
    Path file = bid().row("Room", "Surface", "Area", "Coating").row("Lobby").write(folder);
    assertThatThrownBy(() -> BidReader.read(file, ReadOptions.USUAL))
        .isInstanceOf(WorkbookException.NoBid.class)
        .hasMessageContaining("no bid line");
  }

  @Test
  void anEmptyWorkbookIsNoBid() {
    Path file = bid().write(folder);
    assertThatThrownBy(() -> BidReader.read(file, ReadOptions.USUAL))
        .isInstanceOf(WorkbookException.NoBid.class);
  }

  @Test
  void theFileIsLeftAsItWas() throws Exception {
    Path file =
        bid()
            .row("Room", "Surface", "Length", "Height", "Coating")
            .row("A", "walls", new Book.Formula("2*3", null), 9, "latex")
            .write(folder);
    byte[] before = Files.readAllBytes(file);
    BidReader.read(file, ReadOptions.USUAL);
    assertThat(Files.readAllBytes(file)).isEqualTo(before);
  }
}
