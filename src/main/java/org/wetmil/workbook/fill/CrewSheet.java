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
  static final int MOST_ROOMS = 1_000;

  private static final int[] WIDTHS = {24, 26, 13, 12, 12, 16, 18, 20, 15, 9};
  private static final List<String> HEADINGS =
      List.of(
          "surface",
          "coating",
          "tip",
          "fan",
          "orifice",
          "pressure",
          "filter",
          "pace",
          "gauge",
          "coats");
  private static final List<String> TROUBLES = List.of("runs", "clogs", "edges", "thick", "thin");

  private final XSSFSheet sheet;
  private final Look look;
  private final FilledBid filled;
  private final Wording wording;

  CrewSheet(XSSFSheet sheet, Look look, FilledBid filled) {
    this.sheet = sheet;
    this.look = look;
    this.filled = filled;
    this.wording = Wording.of(filled.bid().catalogue().text(Setting.CREW_LANGUAGE));
  }

  void write() {
    Rows rows = new Rows(sheet);
    Map<String, List<FilledLine>> rooms = rooms();
    int written = 0;
    for (List<FilledLine> lines : rooms.values()) {
      if (written == MOST_ROOMS) {
        rows.row()
            .text((rooms.size() - MOST_ROOMS) + " more rooms stand on the bid", look.strong());
        break;
      }
      if (written++ > 0) {
        sheet.setRowBreak(rows.number() - 1);
      }
      room(rows, lines);
    }
    for (int i = 0; i < WIDTHS.length; i++) {
      sheet.setColumnWidth(i, WIDTHS[i] * 256);
    }
    Pages.landscape(sheet, WIDTHS.length, rows.number());
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

  private void room(Rows rows, List<FilledLine> lines) {
    String room = lines.get(0).line().text(InputColumn.ROOM);
    rows.row().text(room.isEmpty() ? wording.get("crew.room") : room, look.poster());
    rows.current().setHeightInPoints(40);
    rows.row()
        .text(wording.get("crew.title") + ", " + filled.bid().job(), look.large(false))
        .current()
        .setHeightInPoints(24);
    rows.row();
    HEADINGS.forEach(key -> rows.text(wording.get("crew." + key), look.heading()));
    rows.current().setHeightInPoints(34);
    lines.forEach(line -> line(rows, line));
    rows.gap();
    rows.row().text(wording.get("crew.change"), look.block());
    Pages.underline(rows.current(), WIDTHS.length, look.block());
    for (String trouble : TROUBLES) {
      rows.row()
          .text(wording.get("crew." + trouble), look.large(true))
          .text(wording.get("crew." + trouble + ".do"), look.large(false));
      rows.current().setHeightInPoints(22);
      int row = rows.number() - 1;
      sheet.addMergedRegion(new CellRangeAddress(row, row, 1, WIDTHS.length - 1));
    }
    sentence(rows, wording.get("crew.board"), 24);
    sentence(rows, wording.get("crew.caution"), 62);
  }

  private void sentence(Rows rows, String text, float height) {
    rows.row().text(text, look.boxed());
    Pages.underline(rows.current(), WIDTHS.length, look.boxed());
    rows.current().setHeightInPoints(height);
    int row = rows.number() - 1;
    sheet.addMergedRegion(new CellRangeAddress(row, row, 0, WIDTHS.length - 1));
  }

  private void line(Rows rows, FilledLine line) {
    rows.row().text(line.line().text(InputColumn.SURFACE), look.large(true));
    rows.current().setHeightInPoints(44);
    if (!line.isSetUp()) {
      rows.text(line.line().text(InputColumn.COATING), look.large(false))
          .text(wording.get("crew.open"), look.large(false));
      return;
    }
    rows.text(coating(line), look.large(false));
    if (!line.followed().isTip()) {
      rows.text(wording.get("crew.none"), look.poster())
          .text(wording.get("crew.noTip"), look.large(false));
      return;
    }
    UnitSystem system = line.system();
    int orifice = line.followed().tip().orificeThou();
    rows.text(line.followed().tip().code(), look.poster())
        .text(shown(line.followed().fanIn(), Quantity.FAN_WIDTH, system, 0), look.large(false))
        .text(orifice(orifice, system), look.large(false))
        .text(shown(line.setPsi(), Quantity.PRESSURE, system, 0), look.large(true))
        .text(
            FilterMesh.coarsestFor(orifice)
                .map(mesh -> wording.get("crew.mesh", mesh.number()))
                .orElse(""),
            look.large(false))
        .text(pace(line.base(FilledColumn.SPEED), system), look.large(true))
        .text(shown(line.base(FilledColumn.WET_FILM), Quantity.FILM, system, 1), look.large(true))
        .text(String.valueOf(line.coats().coats()), look.large(true));
  }

  private static String coating(FilledLine line) {
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
