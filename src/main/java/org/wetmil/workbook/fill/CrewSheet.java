package org.wetmil.workbook.fill;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.wetmil.catalogue.Names;
import org.wetmil.catalogue.Setting;
import org.wetmil.estimate.FilledBid;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.estimate.FilledLine;
import org.wetmil.estimate.InputColumn;
import org.wetmil.quantity.Quantity;
import org.wetmil.quantity.UnitSystem;
import org.wetmil.trade.FilterMesh;

/**
 * One page a room for the crew: tip, pressure, filter, pace and gauge, to be read at arm's length.
 */
final class CrewSheet {
  /** A sheet takes 1,026 page breaks. */
  static final int MOST_PAGES = 1_000;

  /** What the lines of a page share of its height, so that the rest fits on paper of any size. */
  private static final double LINES_PT = 230;

  private static final double LINE_PT = 38;

  private static final int[] WIDTHS = {23, 25, 12, 15, 14, 14, 13, 13, 9};
  private static final int LAST = WIDTHS.length - 1;
  private static final List<String> HEADINGS =
      List.of("surface", "coating", "tip", "fan", "pressure", "filter", "pace", "gauge", "coats");
  private static final List<String> TROUBLES = List.of("runs", "clogs", "edges", "thick", "thin");

  private final XSSFSheet sheet;
  private final Look look;
  private final FilledBid filled;
  private final Wording wording;
  private final Rows rows;

  CrewSheet(XSSFSheet sheet, Look look, FilledBid filled) {
    this.sheet = sheet;
    this.look = look;
    this.filled = filled;
    this.rows = new Rows(sheet);
    this.wording = Wording.of(filled.bid().catalogue().text(Setting.CREW_LANGUAGE));
  }

  void write() {
    for (int i = 0; i < WIDTHS.length; i++) {
      sheet.setColumnWidth(i, WIDTHS[i] * 256);
    }
    List<List<FilledLine>> pages = new ArrayList<>();
    rooms().values().forEach(lines -> pages.addAll(pages(lines)));
    for (int i = 0; i < Math.min(MOST_PAGES, pages.size()); i++) {
      if (i > 0) {
        sheet.setRowBreak(rows.number() - 1);
      }
      page(pages.get(i));
    }
    if (pages.isEmpty()) {
      rows.row().text(wording.get("crew.nothing"), look.strong());
    }
    if (pages.size() > MOST_PAGES) {
      rows.row().text(wording.get("crew.more", pages.size() - MOST_PAGES), look.strong());
    }
    Pages.landscape(sheet, WIDTHS.length, rows.number());
    Pages.narrowMargins(sheet);
  }

  /** The lines of a room, parted where a page is full. */
  private List<List<FilledLine>> pages(List<FilledLine> lines) {
    List<List<FilledLine>> pages = new ArrayList<>();
    double left = 0;
    for (FilledLine line : lines) {
      if (left < height(line)) {
        pages.add(new ArrayList<>());
        left = LINES_PT;
      }
      left -= height(line);
      pages.get(pages.size() - 1).add(line);
    }
    return pages;
  }

  private static double height(FilledLine line) {
    String surface = line.line().text(InputColumn.SURFACE);
    return Math.min(
        LINES_PT,
        Math.max(
            LINE_PT,
            Math.max(
                Heights.of(surface, WIDTHS[0], 16), Heights.of(coating(line), WIDTHS[1], 16))));
  }

  private Map<String, List<FilledLine>> rooms() {
    Map<String, List<FilledLine>> rooms = new LinkedHashMap<>();
    filled
        .lines()
        .filter(line -> line.work().isIncluded())
        .forEach(
            line ->
                rooms
                    .computeIfAbsent(
                        line.line().text(InputColumn.FLOOR)
                            + "\n"
                            + Names.key(line.line().text(InputColumn.ROOM)),
                        room -> new ArrayList<>())
                    .add(line));
    return rooms;
  }

  private void page(List<FilledLine> lines) {
    String room = lines.get(0).line().text(InputColumn.ROOM);
    String floor = lines.get(0).line().text(InputColumn.FLOOR);
    rows.row().text(room.isEmpty() ? wording.get("crew.room") : room, look.poster());
    rows.height(32);
    String place = floor.isEmpty() || floor.equalsIgnoreCase(room) ? "" : floor + ", ";
    rows.row()
        .text(place + filled.bid().job() + ": " + wording.get("crew.title"), look.text(false))
        .height(20);
    rows.row();
    HEADINGS.forEach(key -> rows.text(wording.get("crew." + key), look.heading()));
    rows.height(Heights.HEADING_PT);
    lines.forEach(this::line);
    sentence(pass(lines.get(0).system()));
    rows.row().text(wording.get("crew.change"), look.block());
    rows.underline(WIDTHS.length, look.block());
    rows.height(18);
    for (String trouble : TROUBLES) {
      rows.row()
          .text(wording.get("crew." + trouble), look.medium(true))
          .text(wording.get("crew." + trouble + ".do"), look.medium(false));
      rows.height(17);
    }
    sentence(wording.get("crew.board"));
    sentence(wording.get("crew.caution"));
  }

  private String pass(UnitSystem system) {
    double distance = filled.bid().catalogue().number(Setting.DISTANCE);
    double overlap = filled.bid().catalogue().number(Setting.OVERLAP);
    return wording.get(
        "crew.pass", shown(distance, Quantity.FAN_WIDTH, system, 0), Plain.number(100 * overlap));
  }

  private void sentence(String text) {
    rows.row().text(text, look.boxed());
    rows.underline(WIDTHS.length, look.boxed());
    int width = 0;
    for (int each : WIDTHS) {
      width += each;
    }
    rows.height(Heights.of(text, width, 13) + 4);
    merged(0);
  }

  private void merged(int first) {
    int row = rows.number() - 1;
    // unchecked, since the check looks at all regions before; these cannot overlap
    sheet.addMergedRegionUnsafe(new CellRangeAddress(row, row, first, LAST));
  }

  private void line(FilledLine line) {
    rows.row()
        .text(line.line().text(InputColumn.SURFACE), look.large(true))
        .text(coating(line), look.large(false));
    rows.height(height(line));
    if (!line.isSetUp()) {
      rows.text(wording.get("crew.open"), look.large(false));
      merged(2);
      return;
    }
    if (!line.followed().isTip()) {
      rows.text(wording.get("crew.none"), look.poster())
          .text(wording.get("crew.noTip"), look.large(false));
      merged(3);
      return;
    }
    UnitSystem system = line.system();
    int orifice = line.followed().tip().orificeThou();
    rows.text(line.followed().tip().code(), look.poster())
        .text(
            shown(line.followed().fanIn(), Quantity.FAN_WIDTH, system, 0)
                + "\n"
                + orifice(orifice, system),
            look.large(false))
        .text(shown(line.setPsi(), Quantity.PRESSURE, system, 0), look.large(true))
        .text(
            FilterMesh.coarsestFor(orifice, filled.bid().catalogue().number(Setting.FILTER_SHARE))
                .map(mesh -> wording.get("crew.mesh", mesh.number()))
                .orElse(""),
            look.large(false))
        .text(pace(line.base(FilledColumn.SPEED), system), look.large(true))
        .text(shown(line.base(FilledColumn.WET_FILM), Quantity.FILM, system, 1), look.large(true))
        .text(String.valueOf(line.coats().coats()), look.large(true));
  }

  private static String coating(FilledLine line) {
    if (!line.isSetUp()) {
      return line.line().text(InputColumn.COATING);
    }
    List<String> words = new ArrayList<>(List.of(line.work().coating().name()));
    for (InputColumn column : List.of(InputColumn.COLOUR, InputColumn.SHEEN)) {
      if (!line.line().text(column).isEmpty()) {
        words.add(line.line().text(column));
      }
    }
    return String.join(", ", words);
  }

  private static String orifice(int thou, UnitSystem system) {
    return system == UnitSystem.US
        ? String.format(Locale.ROOT, "0.%03d in", thou)
        : shown(thou, Quantity.ORIFICE, system, 2);
  }

  private String pace(double speedInPerS, UnitSystem system) {
    double seconds =
        system == UnitSystem.US
            ? 120 / speedInPerS
            : 300 / Quantity.GUN_SPEED.shown(speedInPerS, system);
    String rounded = String.format(Locale.ROOT, "%.1f", seconds);
    return wording.get(system == UnitSystem.US ? "crew.tenFeet" : "crew.threeMetres", rounded);
  }

  private static String shown(double base, Quantity quantity, UnitSystem system, int decimals) {
    boolean whole = system == UnitSystem.METRIC && quantity == Quantity.FILM;
    return String.format(
        Locale.ROOT,
        "%." + (whole ? 0 : decimals) + "f %s",
        quantity.shown(base, system),
        quantity.unit(system).symbol());
  }
}
