package org.wetmil.checks;

import static org.wetmil.estimate.InputColumn.AREA;
import static org.wetmil.estimate.InputColumn.COUNT;
import static org.wetmil.estimate.InputColumn.GIRTH;
import static org.wetmil.estimate.InputColumn.HEIGHT;
import static org.wetmil.estimate.InputColumn.LENGTH;
import static org.wetmil.estimate.InputColumn.MASK_EDGE;
import static org.wetmil.estimate.InputColumn.MASK_OPENINGS;
import static org.wetmil.estimate.InputColumn.ROOM;
import static org.wetmil.estimate.InputColumn.WIDTH;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.wetmil.catalogue.Kind;
import org.wetmil.catalogue.Names;
import org.wetmil.catalogue.Quoted;
import org.wetmil.estimate.BidSheet;
import org.wetmil.estimate.FilledBid;
import org.wetmil.estimate.FilledLine;
import org.wetmil.estimate.InputColumn;
import org.wetmil.estimate.Rooms;
import org.wetmil.quantity.UnitSystem;

/** What only shows when the lines of a sheet are seen together. */
final class SheetChecks {
  private static final List<InputColumn> DIMENSIONS =
      List.of(LENGTH, WIDTH, HEIGHT, COUNT, AREA, GIRTH);

  /** Columns whose figures choose something, so that no formula points at them. */
  private static final Set<InputColumn> CHOOSING =
      EnumSet.of(InputColumn.COATS, InputColumn.PRESSURE);

  static final List<Check> ALL =
      List.of(
          new Check(
              "sheet-without-units",
              Severity.NOTE,
              "Nothing says what units a sheet is in",
              "Feet taken for metres make the paint ten times too little.",
              Kind.HOUSE,
              "without any unit US customary units are taken; said once for each sheet",
              "Write the unit in a heading, as in Length (ft).",
              Rule.ofBid(SheetChecks::withoutUnits)),
          new Check(
              "duplicate-line",
              Severity.WARNING,
              "A line stands there twice",
              "The same surface counted twice is paid for twice.",
              Kind.HOUSE,
              "same room, surface, dimensions and coating",
              "Delete one, or tell them apart by the room.",
              Rule.ofBid(SheetChecks::duplicates)),
          new Check(
              "floor-not-known",
              Severity.NOTE,
              "The floor of a room is not known",
              "Covering the floor takes time that is not in these hours.",
              Kind.HOUSE,
              "length x width of the room's first line that states both",
              "State length and width on one line of the room.",
              Rule.ofBid(SheetChecks::floors)),
          new Check(
              "masking-nowhere",
              Severity.NOTE,
              "No line states any masking",
              "Masking is a good part of the hours, and none is in these.",
              Kind.HOUSE,
              "columns Mask edge and Mask openings; said once for a job",
              "State Mask edge or Mask openings where there is some.",
              Rule.ofBid(SheetChecks::masking)),
          new Check(
              "value-not-live",
              Severity.NOTE,
              "A figure is typed so that no formula follows it",
              "A length such as 12' 6\" is text to a spreadsheet, so its value as read stands"
                  + " in the formulas.",
              Kind.HOUSE,
              "said once for each column of a sheet",
              "Type a plain number, or fill again after a change.",
              Rule.ofBid(SheetChecks::notLive)));

  private SheetChecks() {}

  private static Stream<Fault> withoutUnits(FilledBid bid) {
    return bid.bid().sheets().stream()
        .filter(sheet -> !sheet.unitsStated())
        .map(SheetChecks::withoutUnits);
  }

  private static Fault withoutUnits(BidSheet sheet) {
    boolean us = sheet.system() == UnitSystem.US;
    return Fault.at(
        Spot.ofSheet(sheet.name()),
        "no unit",
        us ? "feet" : "metres",
        "There is no unit in any heading, cell or setting, so %s are taken; write one, as in %s."
            .formatted(us ? "feet" : "metres", us ? "Length (ft)" : "Length (m)"));
  }

  /** What two lines have in common when one is the other again. */
  private record Same(
      String sheet, String room, String surface, String coating, List<Double> dimensions) {
    static Same of(Line line) {
      return new Same(
          line.filled().line().sheet(),
          Names.key(line.text(ROOM)),
          line.surface().name(),
          line.coating().name(),
          DIMENSIONS.stream().map(line::number).toList());
    }
  }

  private static Stream<Fault> duplicates(FilledBid bid) {
    Map<Same, Integer> first = new HashMap<>();
    return Line.all(bid)
        .filter(line -> line.filled().isCounted())
        .flatMap(
            line -> {
              int row = line.filled().line().row();
              Integer before = first.putIfAbsent(Same.of(line), row);
              return before == null
                  ? Stream.empty()
                  : Stream.of(
                      line.fault(
                          ROOM,
                          "row " + row,
                          "row " + before,
                          ("Room, surface, dimensions and coating of row %s are those of row %s; delete one"
                                  + " or name the rooms apart.")
                              .formatted(row, before)));
            });
  }

  private static Stream<Fault> floors(FilledBid bid) {
    return bid.sheets().stream().flatMap(sheet -> floors(bid, sheet));
  }

  private static Stream<Fault> floors(FilledBid bid, FilledBid.FilledSheet sheet) {
    Rooms rooms = new Rooms();
    sheet.lines().forEach(filled -> rooms.add(filled.work(), filled.isCounted()));
    return sheet.lines().stream()
        .filter(FilledLine::isFilled)
        .filter(filled -> rooms.of(filled.line()).isCoveredOn(filled.line()))
        .filter(filled -> rooms.of(filled.line()).floorOf(filled.line()) == null)
        .map(filled -> new Line(bid.bid().catalogue(), filled))
        .map(
            line ->
                line.fault(
                    LENGTH,
                    "empty",
                    "",
                    "The floor of this room is not known, so covering it is not counted; state"
                        + " length and width once."));
  }

  private static Stream<Fault> masking(FilledBid bid) {
    boolean any = Line.all(bid).anyMatch(line -> line.filled().isFilled());
    boolean masked = Line.all(bid).anyMatch(line -> line.has(MASK_EDGE) || line.has(MASK_OPENINGS));
    return !any || masked
        ? Stream.empty()
        : Stream.of(
            Fault.ofJob(
                "empty",
                "",
                "No line states any masking, so none is in these hours; state Mask edge or Mask"
                    + " openings."));
  }

  private static Stream<Fault> notLive(FilledBid bid) {
    return bid.sheets().stream()
        .flatMap(
            sheet ->
                Arrays.stream(InputColumn.values())
                    .filter(column -> !CHOOSING.contains(column))
                    .filter(sheet.sheet()::has)
                    .flatMap(column -> notLive(bid, sheet, column)));
  }

  private static Stream<Fault> notLive(
      FilledBid bid, FilledBid.FilledSheet sheet, InputColumn column) {
    List<Line> lines =
        sheet.lines().stream()
            .filter(filled -> filled.isFilled() && filled.line().has(column))
            .filter(filled -> !filled.line().get(column).isLive())
            .map(filled -> new Line(bid.bid().catalogue(), filled))
            .toList();
    return lines.stream().limit(1).map(line -> notLive(line, column, lines.size() - 1));
  }

  private static Fault notLive(Line line, InputColumn column, int others) {
    String raw = Quoted.of(line.cell(column).raw());
    return line.fault(
        column,
        raw,
        "a plain number",
        "%s is not a plain number, so formulas hold %s and will not follow a change%s; fill again."
            .formatted(
                raw,
                Say.held(column.quantity(), line.number(column), line.system()),
                others == 0 ? "" : " (%s more in this column)".formatted(others)));
  }
}
