package org.wetmil.workbook.fill.page;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.wetmil.catalogue.Setting;
import org.wetmil.estimate.FilledBid;
import org.wetmil.estimate.FilledLine;
import org.wetmil.estimate.InputColumn;
import org.wetmil.quantity.Quantity;
import org.wetmil.quantity.UnitSystem;
import org.wetmil.workbook.copy.LeanWorkbook;
import org.wetmil.workbook.look.Heights;
import org.wetmil.workbook.look.Look;
import org.wetmil.workbook.look.Pages;
import org.wetmil.workbook.look.Plain;
import org.wetmil.workbook.look.Rows;

/**
 * One page a room for the crew. The figures to set and to keep are read from two metres; their
 * units stand in the headings. A room with more lines than a page takes is parted evenly.
 */
final class CrewSheet {
  /** A sheet takes 1,026 page breaks. */
  static final int MOST_PAGES = 1_000;

  /** A line of what to change when it goes wrong. */
  private static final int TROUBLE_PT = 18;

  /** Pages that have the drawing; beyond, the workbook would be slow to open. */
  private static final int MOST_DRAWINGS = 200;

  /** What the lines of a page share of its height, so that the rest fits on paper of any size. */
  private static final double LINES_PT = 240;

  /** Lines of a page that is not full, and of one that is. */
  private static final double LINE_PT = 39;

  private static final double CLOSE_PT = 30;

  /** How much larger than the usual font a figure is, on a page that is not full and on one. */
  private static final int FAR = 18;

  private static final int CLOSE = 13;

  private static final int[] WIDTHS = {25, 24, 13, 14, 13, 13, 9, 13, 13};
  private static final int LAST = WIDTHS.length - 1;

  /** The column of what is said where the bid was changed. */
  private static final int CHANGED = 4;

  /** First column of the drawing, beside the words on what to change. */
  private static final int DRAWING = 5;

  private static final List<String> TROUBLES = List.of("runs", "clogs", "edges", "thick", "thin");

  private final XSSFSheet sheet;
  private final Look look;
  private final CrewLook standing;
  private final FilledBid filled;
  private final Wording wording;
  private final CrewWords words;
  private final Rows rows;
  private final Map<String, Drawn> drawings = new HashMap<>();
  private int drawn;
  private int shapesMade;

  /** A drawing that was made: its first row, and its first shape among those of the sheet. */
  private record Drawn(int row, int shape, int shapes) {}

  CrewSheet(XSSFSheet sheet, Look look, FilledBid filled) {
    this.sheet = sheet;
    this.look = look;
    this.standing = new CrewLook(look);
    this.filled = filled;
    this.rows = new Rows(sheet);
    this.wording = Wording.of(filled.bid().catalogue().text(Setting.CREW_LANGUAGE));
    this.words = new CrewWords(filled.bid().catalogue(), wording);
  }

  /**
   * @param changed tells whether the bid was changed after it was filled
   */
  void write(ChangedSince changed) {
    Pages.widths(sheet, WIDTHS);
    List<CrewPages.Page> pages = CrewPages.of(filled, line -> height(line, CLOSE_PT), LINES_PT);
    for (int i = 0; i < Math.min(MOST_PAGES, pages.size()); i++) {
      if (i > 0) {
        sheet.setRowBreak(rows.number() - 1);
      }
      page(pages.get(i), changed);
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

  private double height(FilledLine line, double least) {
    double surface = Heights.of(words.surface(line), WIDTHS[0], 16);
    double coating = Heights.of(words.coating(line), WIDTHS[1], 13);
    return Math.min(LINES_PT, Math.max(least, Math.max(surface, coating)));
  }

  private void page(CrewPages.Page page, ChangedSince changed) {
    FilledLine first = page.lines().get(0);
    UnitSystem system = first.system();
    String named = first.line().text(InputColumn.ROOM);
    String room = named.isEmpty() ? wording.get("crew.room") : named;
    String floor = first.line().text(InputColumn.FLOOR);
    String title = page.of() == 1 ? room : wording.get("crew.part", room, page.number(), page.of());
    rows.row().text(title, standing.poster());
    rows.height(34);
    String place = floor.isEmpty() || floor.equalsIgnoreCase(room) ? "" : floor + ", ";
    rows.row()
        .text(place + filled.bid().job() + ": " + wording.get("crew.title"), look.text(false))
        .skip(CHANGED - 1)
        .formula(changed.formula(wording.get("crew.changed")), "", look.strong())
        .height(18);
    headings(system);
    boolean close = page.height(line -> height(line, LINE_PT)) > LINES_PT;
    page.lines().forEach(line -> line(line, system, close));
    double distance = filled.bid().catalogue().number(Setting.DISTANCE);
    double overlap = filled.bid().catalogue().number(Setting.OVERLAP);
    String away = CrewWords.shown(distance, Quantity.FAN_WIDTH, system, 0);
    sentence(wording.get("crew.pass", away, Plain.number(100 * overlap)));
    int from = rows.number() + 1;
    rows.row().text(wording.get("crew.change"), look.block());
    rows.underline(WIDTHS.length, look.block());
    rows.height(18);
    for (String trouble : TROUBLES) {
      rows.row()
          .text(wording.get("crew." + trouble), standing.medium(true))
          .text(wording.get("crew." + trouble + ".do"), standing.medium(false));
      rows.height(TROUBLE_PT);
    }
    if (drawn++ < MOST_DRAWINGS) {
      draw(from, away, overlap);
    }
    sentence(wording.get("crew.board"));
    sentence(wording.get("crew.caution"));
  }

  /** All pages of a unit have the same drawing, which is made once and copied where it can be. */
  private void draw(int from, String away, double overlap) {
    Drawn first = drawings.get(away);
    if (first != null && sheet.getWorkbook() instanceof LeanWorkbook lean) {
      lean.stamps(sheet.getDrawingPatriarch())
          .add(first.shape(), first.shapes(), from - first.row());
      return;
    }
    int[] columns = {DRAWING, LAST};
    int[] lines = {from, rows.number() - 1};
    int shapes = new PassDrawing(sheet, columns, lines, TROUBLE_PT).draw(away, overlap);
    drawings.put(away, new Drawn(from, shapesMade, shapes));
    shapesMade += shapes;
  }

  private void headings(UnitSystem system) {
    String length = system == UnitSystem.US ? "10 ft" : "3 m";
    rows.row();
    for (String heading :
        List.of(
            wording.get("crew.surface"),
            wording.get("crew.coating"),
            wording.get("crew.tip"),
            wording.get("crew.pressure", Quantity.PRESSURE.unit(system).symbol()),
            wording.get("crew.pace", length),
            wording.get("crew.gauge", Quantity.FILM.unit(system).symbol()),
            wording.get("crew.coats"),
            wording.get("crew.fan"),
            wording.get("crew.filter"))) {
      rows.text(heading, look.heading());
    }
    rows.height(Heights.HEADING_PT);
  }

  private void sentence(String text) {
    rows.row().text(text, standing.boxed());
    rows.underline(WIDTHS.length, standing.boxed());
    int width = Arrays.stream(WIDTHS).sum();
    rows.height(Heights.of(text, width, 13) + 4);
    merged(0);
  }

  private void merged(int first) {
    int row = rows.number() - 1;
    // unchecked, since the check looks at all regions before; these cannot overlap
    sheet.addMergedRegionUnsafe(new CellRangeAddress(row, row, first, LAST));
  }

  private void line(FilledLine line, UnitSystem system, boolean close) {
    var figure = standing.farFigure(close ? CLOSE : FAR);
    rows.row()
        .text(words.surface(line), standing.large(true))
        .text(words.coating(line), standing.smaller());
    rows.height(height(line, close ? CLOSE_PT : LINE_PT));
    // a tip that was chosen before all sizes are known may well be another one when they are
    if (!line.isFilled()) {
      rows.text(wording.get("crew.open"), standing.large(false));
      merged(2);
      return;
    }
    if (!line.followed().isTip()) {
      rows.text(wording.get("crew.none"), figure)
          .text(wording.get("crew.noTip"), standing.large(false));
      merged(3);
      return;
    }
    rows.text(line.followed().tip().code(), figure)
        .text(CrewWords.pressure(line, system), figure)
        .text(CrewWords.pace(line, system), figure)
        .text(CrewWords.gauge(line, system), figure)
        .text(String.valueOf(line.coats().coats()), figure)
        .text(CrewWords.fanAndOrifice(line, system), standing.smaller())
        .text(words.filter(line), standing.besideSmaller());
  }
}
