package org.wetmil.workbook.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;
import static org.wetmil.estimate.InputColumn.AREA;
import static org.wetmil.estimate.InputColumn.COATING;
import static org.wetmil.estimate.InputColumn.COATS;
import static org.wetmil.estimate.InputColumn.COLOUR;
import static org.wetmil.estimate.InputColumn.CONDITION;
import static org.wetmil.estimate.InputColumn.COUNT;
import static org.wetmil.estimate.InputColumn.FLOOR;
import static org.wetmil.estimate.InputColumn.HEIGHT;
import static org.wetmil.estimate.InputColumn.LENGTH;
import static org.wetmil.estimate.InputColumn.MASK_EDGE;
import static org.wetmil.estimate.InputColumn.OPENINGS;
import static org.wetmil.estimate.InputColumn.PRESSURE;
import static org.wetmil.estimate.InputColumn.ROOM;
import static org.wetmil.estimate.InputColumn.SHEEN;
import static org.wetmil.estimate.InputColumn.SPECIFIED_FILM;
import static org.wetmil.estimate.InputColumn.SURFACE;
import static org.wetmil.estimate.InputColumn.THINNER;
import static org.wetmil.estimate.InputColumn.TIP;
import static org.wetmil.estimate.InputColumn.WIDTH;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.wetmil.catalogue.Task;
import org.wetmil.estimate.BidLine;
import org.wetmil.estimate.BidSheet;
import org.wetmil.estimate.InputColumn;
import org.wetmil.estimate.InputValue.State;
import org.wetmil.estimate.Remark;
import org.wetmil.quantity.Unit;
import org.wetmil.quantity.UnitSystem;
import org.wetmil.workbook.HandMade;
import org.wetmil.workbook.WorkbookException;
import org.wetmil.workbook.opc.Passwords;
import org.wetmil.workbook.read.table.RowKind;

/** What estimators' workbooks really look like, one quirk at a time. */
class QuirksTest {
  private static final Offset<Double> EXACT = within(1e-9);
  private static final double FT_PER_M = 1 / 0.3048;
  private static final double FT2_PER_M2 = FT_PER_M * FT_PER_M;

  @TempDir Path folder;

  private static Book bid() {
    return new Book().sheet("Bid");
  }

  private static List<BidLine> lines(ReadWorkbook read) {
    return read.bid().sheets().stream().map(BidSheet::lines).flatMap(List::stream).toList();
  }

  private static BidLine first(ReadWorkbook read) {
    return lines(read).get(0);
  }

  private static List<String> checks(ReadWorkbook read) {
    return read.bid().remarks().stream().map(Remark::check).toList();
  }

  private static Object[] numbers(ReadWorkbook read, InputColumn column) {
    return lines(read).stream().map(line -> line.number(column)).toArray();
  }

  // Headings

  @Test
  void aGroupRowAboveAndAUnitRowBelowBelongToTheHeadings() {
    ReadWorkbook read =
        bid()
            .row("Room schedule")
            .row(null, null, "Dimensions", null, null, "Mask", null, "Dry film")
            .row("Room", "Surface", "Length", "Width", "Height", "edge", "Coating", "total")
            .row(null, null, "m", "m", "mm", "m", null, "µm")
            .row("A", "walls", 4, 3, 2500, 12, "latex", 80)
            .merge("C2:E2")
            .read(folder);
    BidLine line = first(read);
    assertThat(line.number(WIDTH)).isCloseTo(3 * FT_PER_M, EXACT);
    assertThat(line.number(HEIGHT)).isCloseTo(2.5 * FT_PER_M, EXACT);
    assertThat(line.number(MASK_EDGE)).isCloseTo(12 * FT_PER_M, EXACT);
    assertThat(line.number(SPECIFIED_FILM)).isCloseTo(80 / 25.4, EXACT);
    TableLayout table = read.layouts().get(0).tables().get(0);
    assertThat(table.headingRow()).isEqualTo(2);
    assertThat(table.firstRow()).isEqualTo(4);
  }

  @Test
  void headingsMergedDownwardsStandBesideThoseOfAGroup() {
    ReadWorkbook read =
        bid()
            .row("Room", "Surface", "Size (ft)", null, null, "Openings", null, "Coating")
            .row(null, null, "Length", "Width", "Height", "Area", "Number")
            .row("A", "walls", 14, 13, 9, 21, 1, "latex")
            .merge("A1:A2")
            .merge("B1:B2")
            .merge("C1:E1")
            .merge("F1:G1")
            .merge("H1:H2")
            .read(folder);
    BidLine line = first(read);
    assertThat(line.text(ROOM)).isEqualTo("A");
    assertThat(line.number(LENGTH)).isEqualTo(14);
    assertThat(line.number(WIDTH)).isEqualTo(13);
    assertThat(line.number(OPENINGS)).isEqualTo(21);
    assertThat(line.text(COATING)).isEqualTo("latex");
    assertThat(line.has(AREA)).isFalse();
    assertThat(read.bid().sheets().get(0).unitsStated()).isTrue();
  }

  @Test
  void headingsSplitOverTwoRowsWithoutMergesAreOneRow() {
    ReadWorkbook read =
        bid()
            .row("Room", "Surface", null, null, null, "Coating", "Coats")
            .row(null, null, "Length", "Width", "Height")
            .row("A", "walls", 14, 13, 9, "latex", 2)
            .read(folder);
    assertThat(first(read).number(COATS)).isEqualTo(2);
    assertThat(first(read).number(WIDTH)).isEqualTo(13);
  }

  @Test
  void headingsStandAnywhereInTheFirstFortyRows() {
    ReadWorkbook read =
        bid()
            .row("A job")
            .skip(38)
            .row("Room", "Surface", "Area", "Coating")
            .row("A", "walls", 90, "latex")
            .read(folder);
    assertThat(read.layouts().get(0).tables().get(0).headingRow()).isEqualTo(39);
  }

  @Test
  void furtherDownTheyAreNotLookedFor() {
    Path file =
        bid()
            .row("A job")
            .skip(39)
            .row("Room", "Surface", "Area", "Coating")
            .row("A", "walls", 90, "latex")
            .write(folder);
    assertThatThrownBy(() -> BidReader.read(file)).isInstanceOf(WorkbookException.NoBid.class);
  }

  @Test
  void lineBreaksStarsAndColonsInHeadingsDoNotMatter() {
    ReadWorkbook read =
        bid()
            .row(
                "ROOM:",
                "Surface *",
                "Length\n(ft)",
                "Ceiling\u00a0Height [ft.]",
                "Coating_",
                "No. of coats")
            .row("A", "walls", 14, 9, "latex", 2)
            .read(folder);
    assertThat(first(read).number(HEIGHT)).isEqualTo(9);
    assertThat(first(read).number(COATS)).isEqualTo(2);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Area SF",
        "Wall area, sq ft",
        "SF",
        "Area in ft²",
        "Area - SF",
        "Area (gross, ft2)"
      })
  void anAreaHeadingMayCarryItsUnitInAnyWay(String heading) {
    ReadWorkbook read =
        bid()
            .row("Room", "Surface", heading, "Coating")
            .row("A", "walls", 90, "latex")
            .read(folder);
    assertThat(first(read).number(AREA)).isEqualTo(90);
    assertThat(read.bid().sheets().get(0).unitsStated()).isTrue();
  }

  @Test
  void aHeadingInTheUnitOfPaintIsNoCoating() {
    ReadWorkbook read =
        bid()
            .row("Room", "Surface", "Area", "Product", "Paint (gal)")
            .row("A", "walls", 90, "latex", 3)
            .read(folder);
    assertThat(first(read).text(COATING)).isEqualTo("latex");
    assertThat(checks(read)).containsExactly("heading-not-read");
  }

  // Tables

  @Test
  void tablesAboveOneAnotherMayHaveOtherColumns() {
    ReadWorkbook read =
        bid()
            .row("Room", "Surface", "Length", "Height", "Coating")
            .row("A", "walls", 40, 9, "latex")
            .row("Total", null, 40)
            .skip(1)
            .row("Outside")
            .row("Location", "Element", "Product", "Area", "Notes")
            .row("South", "siding", "stain", 300, "two storeys")
            .read(folder);
    assertThat(lines(read)).hasSize(2);
    assertThat(lines(read).get(1).number(AREA)).isEqualTo(300);
    assertThat(lines(read).get(1).row()).isEqualTo(7);
    List<TableLayout> tables = read.layouts().get(0).tables();
    assertThat(tables).extracting(TableLayout::headingRow).containsExactly(0, 5);
    assertThat(tables).extracting(TableLayout::lastRow).containsExactly(1, 6);
    assertThat(tables.get(1).columns()).containsEntry(COATING, 2).containsEntry(AREA, 3);
  }

  @Test
  void aSmallSummaryIsNoTableOfTheBidAndThatIsSaid() {
    ReadWorkbook read =
        bid()
            .row("Surface", "Area", "Paint")
            .row("walls", 360, "latex")
            .skip(1)
            .row("Room", "Surface", "Length", "Height", "Coating", "Coats")
            .row("A", "walls", 40, 9, "latex", 1)
            .read(folder);
    assertThat(lines(read)).hasSize(1);
    assertThat(checks(read)).containsExactly("table-left-out");
  }

  @Test
  void tablesSideBySideAreBothRead() {
    ReadWorkbook read =
        bid()
            .row("Room", "Surface", "Area", "Coating", null, "Second floor")
            .row("A", "walls", 90, "latex", null, "Room", "Surface", "Area", "Coating")
            .row("B", "walls", 91, "latex", null, "C", "walls", 92, "latex")
            .read(folder);
    assertThat(numbers(read, AREA)).containsExactly(90.0, 91.0, 92.0);
    assertThat(read.layouts().get(0).tables().get(0).firstFreeColumn()).isEqualTo(9);
    assertThat(read.layouts().get(0).tables().get(1).lineRows()).containsExactly(2);
  }

  @Test
  void aSpacerColumnDoesNotEndATable() {
    ReadWorkbook read =
        bid()
            .row("Room", "Surface", null, "Length", "Height", null, "Coating")
            .row("A", "walls", null, 40, 9, null, "latex")
            .read(folder);
    assertThat(first(read).text(COATING)).isEqualTo("latex");
    assertThat(read.layouts().get(0).tables().get(0).lastColumn()).isEqualTo(6);
  }

  @Test
  void severalSheetsAreBidsAndOthersAreLeftAlone() {
    ReadWorkbook read =
        bid()
            .row("Room", "Surface", "Area", "Coating")
            .row("A", "walls", 90, "latex")
            .sheet("Contacts")
            .row("Name", "Phone")
            .row("Somebody", 5)
            .sheet("Upstairs")
            .row("Room", "Surface", "Area (m²)", "Coating")
            .row("B", "walls", 9, "latex")
            .sheet("Openings")
            .row("Room", "Surface", "Kind", "Width", "Height", "Count")
            .row("A", "walls", "door", 3, 7, 1)
            .sheet("Old")
            .row("Room", "Surface", "Area", "Coating")
            .row("Z", "walls", 90, "latex")
            .with(workbook -> workbook.setSheetHidden(4, true))
            .read(folder);
    assertThat(read.layouts()).extracting(SheetLayout::sheet).containsExactly("Bid", "Upstairs");
    assertThat(read.bid().sheets())
        .extracting(BidSheet::system)
        .containsExactly(UnitSystem.US, UnitSystem.METRIC);
    assertThat(read.bid().system()).isEqualTo(UnitSystem.US);
    assertThat(checks(read)).containsExactly("sheet-left-out");
  }

  @Test
  void aSheetNamedLikeATableIsABidOnlyWithAllOfABidsHeadings() {
    ReadWorkbook read =
        new Book()
            .sheet("Surfaces")
            .row("Room", "Surface", "Area", "Coating")
            .row("A", "walls", 90, "latex")
            .read(folder);
    assertThat(lines(read)).hasSize(1);
    assertThat(read.bid().problems()).isEmpty();
  }

  @Test
  void anExcelTableEndsWhereItEndsAndItsTotalsAreNoLines() {
    ReadWorkbook read =
        bid()
            .row("Room", "Surface", "Area", "Coating", "Site note")
            .row("A", "walls", 90, "latex", "wet")
            .row("B", "walls", 80, "latex")
            .row("All", null, new Book.Formula("SUBTOTAL(109,C2:C3)", 170))
            .row("D", "walls", 70, "latex")
            .with(
                workbook -> {
                  XSSFSheet sheet = workbook.getSheetAt(0);
                  var table =
                      sheet.createTable(
                          new AreaReference(
                              new CellReference("A1"),
                              new CellReference("D4"),
                              workbook.getSpreadsheetVersion()));
                  table.setDisplayName("Schedule");
                  table.getCTTable().setTotalsRowCount(1);
                })
            .read(folder);
    TableLayout table = read.layouts().get(0).tables().get(0);
    assertThat(table.excelTable()).contains("Schedule");
    assertThat(table.lastColumn()).isEqualTo(3);
    assertThat(table.lastRow()).isEqualTo(2);
    assertThat(numbers(read, AREA)).containsExactly(90.0, 80.0);
    assertThat(table.firstFreeColumn()).isEqualTo(5);
    assertThat(checks(read)).containsExactlyInAnyOrder("row-left-out", "columns-moved");
  }

  // Numbers and units in cells

  @Test
  void typedNumbersMayHaveAnyMarksBesideTrueOnes() {
    ReadWorkbook read =
        bid()
            .row("Room", "Surface", "Area (m²)", "Coating")
            .row("A", "walls", "12,5", "latex")
            .row("B", "walls", "1.234,50", "latex")
            .row("C", "walls", "1 234,5", "latex")
            .row("D", "walls", "1.234", "latex")
            .row("E", "walls", 7.25, "latex")
            .row("F", "walls", "9\u00a0m²", "latex")
            .row("G", "walls", "4318 SF", "latex")
            .read(folder);
    assertThat(lines(read).stream().map(line -> line.number(AREA) / FT2_PER_M2).limit(6).toList())
        .usingElementComparator((a, b) -> Math.abs(a - b) < 1e-9 ? 0 : 1)
        .containsExactly(12.5, 1234.5, 1234.5, 1234.0, 7.25, 9.0);
    assertThat(lines(read).get(6).number(AREA)).isCloseTo(4318, EXACT);
    assertThat(lines(read).get(4).get(AREA).isLive()).isTrue();
    assertThat(lines(read).get(0).get(AREA).isLive()).isFalse();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "12.5",
        "12'6\"",
        "12' - 6\"",
        "12 ft 6 in",
        "3.81 m",
        "3810 mm",
        "150\"",
        "12’6”"
      })
  void lengthsMayBeTypedInAnyWay(String typed) {
    ReadWorkbook read =
        bid()
            .row("Room", "Surface", "Length", "Height", "Coating")
            .row("A", "walls", typed, 9, "latex")
            .row("B", "walls", "10'", 9, "latex")
            .read(folder);
    assertThat(first(read).number(LENGTH)).isCloseTo(12.5, EXACT);
  }

  @Test
  void twoSizesInOneCellAreLengthAndWidth() {
    ReadWorkbook read =
        bid()
            .row("Room", "Surface", "Size", "Height (m)", "Coating")
            .row("A", "ceiling", "7.5 x 6 m", 3, "latex")
            .row("B", "walls", "7.5 x 6 x 2.4 m", null, "latex")
            .row("C", "doors", "900 x 2100 mm", null, "oil-based")
            .row("D", "soffit", "10 × 0,5", null, "latex")
            .read(folder);
    BidLine ceiling = first(read);
    assertThat(ceiling.number(LENGTH)).isCloseTo(7.5 * FT_PER_M, EXACT);
    assertThat(ceiling.number(WIDTH)).isCloseTo(6 * FT_PER_M, EXACT);
    assertThat(ceiling.get(LENGTH).isLive()).isFalse();
    assertThat(lines(read).get(1).number(HEIGHT)).isCloseTo(2.4 * FT_PER_M, EXACT);
    assertThat(lines(read).get(2).number(WIDTH)).isCloseTo(0.9 * FT_PER_M, EXACT);
    assertThat(lines(read).get(2).number(HEIGHT)).isCloseTo(2.1 * FT_PER_M, EXACT);
    assertThat(lines(read).get(2).get(LENGTH).isBlank()).isTrue();
    assertThat(lines(read).get(3).number(WIDTH)).isCloseTo(0.5 * FT_PER_M, EXACT);
    assertThat(checks(read)).containsExactly("heading-read-as");
  }

  @Test
  void aUnitInAColumnOfItsOwnHoldsForItsRow() {
    ReadWorkbook read =
        bid()
            .row("Room", "Surface", "Qty", "Unit", "Coating")
            .row("A", "walls", 450, "SF", "latex")
            .row("A", "trim", 120, "LF", "oil-based")
            .row("A", "doors", 4, "EA", "oil-based")
            .row("A", "ceiling", 10, "m2", "latex")
            .read(folder);
    assertThat(lines(read).get(0).number(AREA)).isEqualTo(450);
    assertThat(lines(read).get(0).has(COUNT)).isFalse();
    assertThat(lines(read).get(1).number(LENGTH)).isEqualTo(120);
    assertThat(lines(read).get(2).number(COUNT)).isEqualTo(4);
    assertThat(lines(read).get(3).number(AREA)).isCloseTo(10 * FT2_PER_M2, EXACT);
    assertThat(read.bid().sheets().get(0).unitsStated()).isTrue();
  }

  @Test
  void plainNumbersBesideTwoFamiliesOfUnitsAreToldOf() {
    ReadWorkbook read =
        bid()
            .row("Room", "Surface", "Length", "Height", "Coating")
            .row("A", "walls", "4.2 m", "2.5 m", "latex")
            .row("B", "walls", "14 ft", 9, "latex")
            .read(folder);
    assertThat(lines(read).get(1).number(HEIGHT)).isCloseTo(9 * FT_PER_M, EXACT);
    assertThat(read.bid().remarks())
        .extracting(Remark::check, Remark::address)
        .containsExactly(tuple("units-mixed", "D3"));
  }

  @Test
  void twoFamiliesOfUnitsAloneNeedNoWord() {
    ReadWorkbook read =
        bid()
            .row("Room", "Surface", "Length", "Height", "Coating")
            .row("A", "walls", "4.2 m", "2.5 m", "latex")
            .row("B", "walls", "14 ft", "9 ft", "latex")
            .read(folder);
    assertThat(checks(read)).isEmpty();
  }

  @Test
  void aTitleLineMayStateTheUnits() {
    ReadWorkbook read =
        bid()
            .row("House on the hill", null, "Rev. 3")
            .row("All dimensions in mm, areas net")
            .row("Room", "Surface", "Length", "Height", "Openings", "Coating")
            .row("A", "walls", 4000, 2500, 1.8, "latex")
            .read(folder);
    assertThat(first(read).number(LENGTH)).isCloseTo(4 * FT_PER_M, EXACT);
    assertThat(first(read).number(HEIGHT)).isCloseTo(2.5 * FT_PER_M, EXACT);
    assertThat(first(read).number(OPENINGS)).isCloseTo(1.8 * FT2_PER_M2, EXACT);
    assertThat(read.bid().system()).isEqualTo(UnitSystem.METRIC);
    assertThat(checks(read)).containsExactly("unit-from-text");
  }

  @Test
  void aHeightInMillimetresBesideAnAreaInSquareMetresLeavesTheOtherLengthsInMetres() {
    ReadWorkbook read =
        bid()
            .row("Room", "Surface", "Area (m²)", "Height (mm)", "Length", "Coating")
            .row("A", "walls", 30, 2400, 12.5, "latex")
            .read(folder);
    assertThat(first(read).number(HEIGHT)).isCloseTo(2.4 * FT_PER_M, EXACT);
    assertThat(first(read).number(LENGTH)).isCloseTo(12.5 * FT_PER_M, EXACT);
    assertThat(read.bid().sheets().get(0).columnUnits())
        .containsEntry(HEIGHT, Unit.MILLIMETRE)
        .containsEntry(LENGTH, Unit.METRE);
  }

  @Test
  void aNumberFormatMayCarryTheUnit() {
    ReadWorkbook read =
        bid()
            .row("Room", "Surface", "Length", "Height", "Coating")
            .row(
                "A",
                "walls",
                new Book.Shown(4, "0.00\" m\""),
                new Book.Shown(2.5, "0.00\\m"),
                "latex")
            .read(folder);
    assertThat(first(read).number(LENGTH)).isCloseTo(4 * FT_PER_M, EXACT);
    assertThat(first(read).number(HEIGHT)).isCloseTo(2.5 * FT_PER_M, EXACT);
    assertThat(first(read).get(LENGTH).cellNumber()).isEqualTo(4);
    assertThat(read.bid().system()).isEqualTo(UnitSystem.METRIC);
  }

  @Test
  void cellsThatStateTheirUnitsMakeTheSheetMetric() {
    ReadWorkbook read =
        bid()
            .row("Room", "Surface", "Length", "Height", "Openings", "Coating")
            .row("A", "walls", "4 m", "2500 mm", 1.8, "latex")
            .read(folder);
    assertThat(read.bid().sheets().get(0).system()).isEqualTo(UnitSystem.METRIC);
    assertThat(read.bid().sheets().get(0).unitsStated()).isTrue();
    assertThat(first(read).number(OPENINGS)).isCloseTo(1.8 * FT2_PER_M2, EXACT);
  }

  @Test
  void datesAreShownByTheCalendarOfTheWorkbook() {
    ReadWorkbook read =
        bid()
            .row("Room", "Surface", "Length", "Height", "Coating", "Tip")
            .row(
                "A", "walls", 40, new Book.Shown(0, "d-mmm-yy"), "latex", new Book.Shown(1, "m-dd"))
            .with(workbook -> workbook.getCTWorkbook().getWorkbookPr().setDate1904(true))
            .read(folder);
    assertThat(first(read).get(HEIGHT).state()).isEqualTo(State.DATE);
    assertThat(first(read).get(HEIGHT).raw()).isEqualTo("1-Jan-04");
    assertThat(first(read).get(TIP).raw()).isEqualTo("1-02");
  }

  @Test
  void feetAndInchesMayStandInTwoColumns() {
    ReadWorkbook read =
        bid()
            .row("Room", "Surface", "Length", null, "Height", null, "Coating")
            .row(null, null, "ft", "in", "ft", "in")
            .row("A", "walls", 12, 6, 9, null, "latex")
            .row("B", "walls", 12, "6 1/2", null, 90, "latex")
            .merge("C1:D1")
            .merge("E1:F1")
            .read(folder);
    assertThat(numbers(read, LENGTH)).containsExactly(12.5, 12 + 6.5 / 12);
    assertThat(numbers(read, HEIGHT)).containsExactly(9.0, 7.5);
    assertThat(first(read).get(LENGTH).isLive()).isFalse();
    assertThat(first(read).get(HEIGHT).isLive()).isTrue();
    assertThat(checks(read)).isEmpty();
  }

  // Headings that words do not settle

  @Test
  void areaIsTheRoomWhereItHoldsWords() {
    ReadWorkbook read =
        bid()
            .row("Area", "Surface", "Length", "Height", "Coating")
            .row("Lobby", "walls", 40, 9, "latex")
            .row("Hall", "walls", 40, 9, "latex")
            .read(folder);
    assertThat(first(read).text(ROOM)).isEqualTo("Lobby");
    assertThat(checks(read)).containsExactly("heading-read-as");
  }

  @Test
  void aNumberAmongTheHeadingsDoesNotHideThem() {
    ReadWorkbook read =
        bid()
            .row("Room", "Surface", 2024, "Length", "Height", "Coating")
            .row("A", "walls", "x", 40, 9, "latex")
            .read(folder);
    assertThat(first(read).text(COATING)).isEqualTo("latex");
  }

  @Test
  void tableSheetsMayHaveTheirOtherSpelling() {
    ReadWorkbook read =
        bid()
            .row("Room", "Surface", "Area", "Coating")
            .row("A", "walls", 90, "latex")
            .sheet("Labor rates")
            .row("Task", "Rate")
            .row("dust only", 1500)
            .read(folder);
    assertThat(read.bid().catalogue().rate(Task.DUST)).isEqualTo(1500);
  }

  @Test
  void anUnknownHeadingIsDecidedByTheNamesBelowIt() {
    ReadWorkbook read =
        bid()
            .row("Room", "What", "Length", "Height", "With")
            .row("A", "walls", 40, 9, "latex")
            .row("A", "ceiling", 40, 9, "emulsion")
            .row("A", "mystery", 40, 9, "primer")
            .read(folder);
    assertThat(first(read).text(SURFACE)).isEqualTo("walls");
    assertThat(lines(read).get(1).text(COATING)).isEqualTo("emulsion");
    assertThat(lines(read).get(2).text(SURFACE)).isEqualTo("mystery");
    assertThat(checks(read)).containsExactly("heading-read-as", "heading-read-as");
  }

  @Test
  void roomNumberAndNameAreBothKept() {
    ReadWorkbook read =
        bid()
            .row("Room name", "Room no.", "Surface", "Area", "Coating")
            .row("Lobby", 101, "walls", 90, "latex")
            .row("Hall", null, "walls", 90, "latex")
            .row(null, 103, "walls", 90, "latex")
            .read(folder);
    assertThat(lines(read))
        .extracting(line -> line.text(ROOM))
        .containsExactly("101 Lobby", "Hall", "103");
    assertThat(checks(read)).isEmpty();
  }

  @Test
  void depthIsAskedAboutWhenNothingDecides() {
    ReadWorkbook read =
        bid()
            .row("Room", "Surface", "Length", "Depth", "Coating")
            .row("A", "walls", 14, 10, "latex")
            .read(folder);
    assertThat(first(read).has(WIDTH)).isFalse();
    assertThat(first(read).has(HEIGHT)).isFalse();
    assertThat(read.bid().remarks().get(0).check()).isEqualTo("heading-ambiguous");
    assertThat(read.bid().remarks().get(0).message())
        .contains("\"Depth\" can mean Width or Height");
    assertThat(read.bid().remarks().get(0).address()).isEqualTo("D1");
  }

  @Test
  void depthIsTheWidthWhereTheHeightIsThere() {
    ReadWorkbook read =
        bid()
            .row("Room", "Surface", "Length", "Depth", "Height", "Coating")
            .row("A", "walls", 14, 10, 9, "latex")
            .read(folder);
    assertThat(first(read).number(WIDTH)).isEqualTo(10);
    assertThat(checks(read)).containsExactly("heading-read-as");
  }

  @Test
  void finishIsACoatingOrASheenByWhatStandsBelow() {
    ReadWorkbook coating =
        bid()
            .row("Room", "Surface", "Area", "Finish")
            .row("A", "walls", 90, "latex")
            .row("B", "walls", 90, "primer")
            .read(folder);
    assertThat(first(coating).text(COATING)).isEqualTo("latex");
    ReadWorkbook sheen =
        bid()
            .row("Room", "Surface", "Area", "Product", "Finish")
            .row("A", "walls", 90, "latex", "eggshell")
            .row("B", "walls", 90, "latex", "satin")
            .read(folder);
    assertThat(first(sheen).text(SHEEN)).isEqualTo("eggshell");
  }

  @Test
  void sizeInSquareMetresIsAnArea() {
    ReadWorkbook read =
        bid()
            .row("Room", "Surface", "Size (m²)", "Coating")
            .row("A", "walls", 9, "latex")
            .read(folder);
    assertThat(first(read).number(AREA)).isCloseTo(9 * FT2_PER_M2, EXACT);
  }

  @Test
  void substrateIsAConditionWhereItNamesConditions() {
    ReadWorkbook read =
        bid()
            .row("Room", "Surface", "Substrate", "Area", "Coating")
            .row("A", "walls", "drywall", 90, "latex")
            .row("B", "walls", "concrete", 90, "latex")
            .read(folder);
    assertThat(first(read).text(CONDITION)).isEqualTo("drywall");
  }

  @Test
  void germanHeadingsAreRead() {
    ReadWorkbook read =
        bid()
            .row(
                "Raum",
                "Geschoss",
                "Bauteil",
                "Länge (m)",
                "Breite (m)",
                "Höhe (m)",
                "Öffnungen (m²)",
                "Beschichtung",
                "Farbton",
                "Anstriche",
                "Düse",
                "Druck (bar)",
                "Bemerkung")
            .row("Halle", "EG", "walls", "12,5", 8, 3, 4, "latex", "weiß", 2, 517, 140, "x")
            .row("Summe", null, null, 12.5)
            .read(folder);
    BidLine line = first(read);
    assertThat(lines(read)).hasSize(1);
    assertThat(line.number(LENGTH)).isCloseTo(12.5 * FT_PER_M, EXACT);
    assertThat(line.text(FLOOR)).isEqualTo("EG");
    assertThat(line.text(COLOUR)).isEqualTo("weiß");
    assertThat(line.number(COATS)).isEqualTo(2);
    assertThat(line.number(PRESSURE)).isCloseTo(2030.528, within(1e-2));
  }

  @Test
  void spanishHeadingsAreRead() {
    ReadWorkbook read =
        bid()
            .row(
                "Local",
                "Elemento",
                "Superficie (m²)",
                "Huecos (m²)",
                "Pintura",
                "Manos",
                "Acabado",
                "Dilución (%)",
                "Observaciones")
            .row("Aula 1", "walls", 54, 3.5, "latex", 2, "mate", 10, "x")
            .row("Total general", null, 54)
            .read(folder);
    BidLine line = first(read);
    assertThat(lines(read)).hasSize(1);
    assertThat(line.number(AREA)).isCloseTo(54 * FT2_PER_M2, EXACT);
    assertThat(line.number(OPENINGS)).isCloseTo(3.5 * FT2_PER_M2, EXACT);
    assertThat(line.text(SHEEN)).isEqualTo("mate");
    assertThat(line.number(THINNER)).isCloseTo(0.1, EXACT);
  }

  @Test
  void theEstimatorsOwnWordsComeFirst() {
    ReadWorkbook read =
        bid()
            .row("Bay", "Bit", "Depth", "Across", "Stuff")
            .row("A", "walls", 9, 40, "latex")
            .sheet("Headings")
            .row("Column", "My word")
            .row("Room", "Bay")
            .row("Surface", "Bit")
            .row("Height", "Depth")
            .row("Across", "Length")
            .row("Coating", "Stuff")
            .read(folder);
    BidLine line = first(read);
    assertThat(line.number(HEIGHT)).isEqualTo(9);
    assertThat(line.number(LENGTH)).isEqualTo(40);
    assertThat(line.text(COATING)).isEqualTo("latex");
    assertThat(checks(read)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"40, 6, 1", "7, 8, 1"})
  void filledColumnsKeepTheirPlaceUnlessSomethingStandsInTheirWay(
      int noteColumn, int firstFree, int remarks) {
    Object[] line = new Object[noteColumn + 1];
    List.of("A", "walls", 90, "latex", "note").toArray(line);
    line[6] = "ours";
    line[noteColumn] = "a note";
    ReadWorkbook read =
        bid()
            .row("Room", "Surface", "Area", "Coating", null, null, "Net area")
            .row(line)
            .with(
                workbook -> {
                  var name = workbook.createName();
                  name.setSheetIndex(0);
                  name.setNameName("wm_col_net_area");
                  name.setRefersToFormula("Bid!$G$1:$G$2");
                })
            .read(folder);
    assertThat(read.layouts().get(0).tables().get(0).firstFreeColumn()).isEqualTo(firstFree);
    assertThat(checks(read)).hasSize(remarks).containsOnly("columns-moved");
  }

  @Test
  void columnsThatNothingIsTakenFromAreToldInOneRemark() {
    ReadWorkbook read =
        bid()
            .row("Room", "Surface", "Area", "Coating", "Supplier", "Remarks", "Foreman", "Empty")
            .row("A", "walls", 90, "latex", "north", "hidden stain", "Ada", null)
            .row("B", "walls", 80, "latex", null, null, null, null)
            .read(folder);
    assertThat(read.bid().remarks())
        .singleElement()
        .satisfies(
            remark -> {
              assertThat(remark.check()).isEqualTo("heading-not-read");
              assertThat(remark.address()).isEqualTo("E1");
              assertThat(remark.message()).contains("\"Supplier\", \"Foreman\".");
            });
  }

  @Test
  void shortHeadingsOfLevelExistingStateAndDoorsAreRead() {
    ReadWorkbook read =
        bid()
            .row("Rm", "Lvl", "Surface", "Existing", "SF", "Doors/Win SF", "Coating")
            .row("A", "2", "walls", "painted", 90, 12, "latex")
            .read(folder);
    assertThat(read.bid().remarks()).isEmpty();
    assertThat(read.layouts().get(0).tables().get(0).columns())
        .containsKeys(InputColumn.FLOOR, InputColumn.CONDITION, InputColumn.OPENINGS);
  }

  // Rows

  @Test
  void hiddenRowsAreReadAndThatIsSaid() {
    ReadWorkbook read =
        bid()
            .row("Room", "Surface", "Area", "Coating")
            .row("A", "walls", 90, "latex")
            .row("B", "walls", 80, "latex")
            .with(workbook -> workbook.getSheetAt(0).getRow(2).setZeroHeight(true))
            .read(folder);
    assertThat(lines(read)).hasSize(2);
    assertThat(checks(read)).containsExactly("rows-hidden");
  }

  @Test
  void aHeightSharedByMergedCellsCountsInEachRowAndIsNotPointedAtFromOthers() {
    ReadWorkbook read =
        bid()
            .row("Room", "Surface", "Length", "Height", "Area", "Coating")
            .row("A", "walls", 40, 9, 100, "latex")
            .row(null, "ceiling", 40, null, null, null)
            .merge("A2:A3")
            .merge("D2:D3")
            .merge("E2:E3")
            .merge("F2:F3")
            .read(folder);
    BidLine second = lines(read).get(1);
    assertThat(second.text(ROOM)).isEqualTo("A");
    assertThat(second.text(COATING)).isEqualTo("latex");
    assertThat(second.number(HEIGHT)).isEqualTo(9);
    assertThat(second.get(HEIGHT).isLive()).isFalse();
    assertThat(second.has(AREA)).isFalse();
  }

  @Test
  void aTitleMergedAcrossTheTableIsNoLine() {
    ReadWorkbook read =
        bid()
            .row("Room", "Surface", "Area", "Coating")
            .row("Ground floor")
            .row("A", "walls", 90, "latex")
            .merge("A2:D2")
            .read(folder);
    assertThat(lines(read)).hasSize(1);
    assertThat(read.rows()).containsEntry(RowKind.TITLE, 1);
  }

  // The file format

  @Test
  void inlineStringsAndCellsWithoutAddressesAreRead() {
    String row =
        Stream.of("Room", "Surface", "Area", "Coating")
            .map(text -> "<c t=\"inlineStr\"><is><t>" + text + "</t></is></c>")
            .reduce("<row>", String::concat);
    String line =
        "<row><c t=\"inlineStr\"><is><r><t>Lob</t></r><r><t>by</t></r></is></c>"
            + "<c t=\"inlineStr\"><is><t>walls</t></is></c><c><v>90</v></c>"
            + "<c t=\"str\"><f>\"la\"&amp;\"tex\"</f><v>latex</v></c></row>";
    Path file = new HandMade(HandMade.sheet(row + "</row>" + line)).write(folder.resolve("a.xlsx"));
    BidLine read = first(BidReader.read(file));
    assertThat(read.text(ROOM)).isEqualTo("Lobby");
    assertThat(read.text(COATING)).isEqualTo("latex");
    assertThat(read.number(AREA)).isEqualTo(90);
  }

  @Test
  void prefixedXmlIsRead() {
    StringBuilder rows = new StringBuilder();
    for (String[] row :
        new String[][] {{"Room", "Surface", "Area", "Coating"}, {"A", "walls", "90", "latex"}}) {
      rows.append("<x:row>");
      for (String text : row) {
        rows.append("<x:c t=\"inlineStr\"><x:is><x:t>").append(text).append("</x:t></x:is></x:c>");
      }
      rows.append("</x:row>");
    }
    String sheet =
        "<x:worksheet xmlns:x=\""
            + HandMade.MAIN
            + "\"><x:sheetData>"
            + rows
            + "</x:sheetData></x:worksheet>";
    Path file = new HandMade(sheet).write(folder.resolve("a.xlsx"));
    assertThat(first(BidReader.read(file)).number(AREA)).isEqualTo(90);
  }

  @Test
  void manyQuirksAtOnce() {
    ReadWorkbook read =
        new Book()
            .sheet("Cover")
            .row("A school by the lake (invented)")
            .sheet("Schedule")
            .row(
                "Painting schedule",
                null,
                null,
                null,
                null,
                null,
                null,
                new Book.Shown(45000, "d-mmm-yy"))
            .row("All dimensions in metres")
            .skip(1)
            .row(
                "No.",
                "Room",
                null,
                "Element",
                "Dimensions",
                null,
                null,
                "Deduct",
                "Product",
                "Colour",
                "#")
            .row(null, "No.", "Name", null, "L", "W", "Ht", null, null, null, "coats")
            .row(null, null, null, null, null, null, "mm", "m²")
            .row("GROUND FLOOR")
            .row(1, 4.02, "Aula", "walls", "7,5", 6, 3000, 4.2, "latex", "white", "2 coats")
            .row(2, null, null, "ceiling", "7,5", 6, 3000, "-", "latex", "white", 1)
            .row(
                3,
                4.03,
                "Store",
                "walls",
                "12'6\"",
                3,
                "TBD",
                0,
                "oil",
                "grey",
                null,
                null,
                "wet wall!")
            .row("Subtotal", null, null, null, new Book.Formula("SUM(E8:E10)", 15))
            .skip(1)
            .row(
                "No.",
                "Room",
                null,
                "Element",
                "Dimensions",
                null,
                null,
                "Deduct",
                "Product",
                "Colour",
                "#")
            .row(null, "No.", "Name", null, "L", "W", "Ht", null, null, null, "coats")
            .row(null, null, null, null, null, null, "mm", "m²")
            .row("FIRST FLOOR")
            .row(
                4,
                5.01,
                "Class",
                "walls",
                new Book.Formula("4+4", 8),
                6,
                2800,
                3,
                "latex",
                "white",
                2)
            .skip(3)
            .row("Drawn by", "somebody")
            .merge("B4:C4")
            .merge("E4:G4")
            .merge("A4:A5")
            .merge("D4:D5")
            .merge("B8:B9")
            .merge("C8:C9")
            .merge("B13:C13")
            .merge("E13:G13")
            .read(folder);
    List<BidLine> lines = lines(read);
    assertThat(lines).extracting(BidLine::row).containsExactly(8, 9, 10, 17);
    assertThat(lines)
        .extracting(line -> line.text(ROOM))
        .containsExactly("4.02 Aula", "4.02 Aula", "4.03 Store", "5.01 Class");
    assertThat(lines.get(0).number(LENGTH)).isCloseTo(7.5 * FT_PER_M, EXACT);
    assertThat(lines.get(0).number(HEIGHT)).isCloseTo(3 * FT_PER_M, EXACT);
    assertThat(lines.get(0).number(COATS)).isEqualTo(2);
    assertThat(lines.get(2).number(LENGTH)).isCloseTo(12.5, EXACT);
    assertThat(lines.get(2).get(HEIGHT).isBlank()).isTrue();
    assertThat(lines.get(2).number(OPENINGS)).isZero();
    assertThat(lines.get(3).number(LENGTH)).isCloseTo(8 * FT_PER_M, EXACT);
    assertThat(read.bid().system()).isEqualTo(UnitSystem.METRIC);
    assertThat(read.layouts().get(0).tables()).hasSize(1);
    assertThat(read.layouts().get(0).tables().get(0).firstFreeColumn()).isEqualTo(13);
  }

  @Test
  void sizesInOneCellDoNotTakeThePlaceOfAWidthThatIsStated() {
    ReadWorkbook read =
        bid()
            .row("Room", "Surface", "Length (ft)", "Width (ft)", "Count", "Coating")
            .row("Office", "doors", "3 x 7 ft", 4, 2, "latex")
            .read(folder);

    assertThat(first(read).number(WIDTH)).isCloseTo(4, EXACT);
    assertThat(first(read).get(LENGTH).isFault()).isTrue();
  }

  @Test
  void unitsOfAWorkbookOfTablesHoldForABidThatStatesNone() {
    Path tables =
        new Book().sheet("Settings").row("Setting", "Value").row("Units", "metric").write(folder);
    Path bid =
        bid()
            .row("Room", "Surface", "Length", "Width", "Coating")
            .row("Office", "ceiling", 4, 3, "latex")
            .write(folder, "bid.xlsx");

    ReadWorkbook read =
        BidReader.read(bid, ReadOptions.USUAL.over(BidReader.tables(tables, Passwords.NONE)));

    assertThat(read.bid().system()).isEqualTo(UnitSystem.METRIC);
    assertThat(first(read).number(LENGTH)).isCloseTo(4 * FT_PER_M, EXACT);
  }
}
