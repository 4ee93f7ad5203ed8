package org.wetmil.checks;

import static org.wetmil.estimate.InputColumn.AREA;
import static org.wetmil.estimate.InputColumn.COATING;
import static org.wetmil.estimate.InputColumn.SURFACE;
import static org.wetmil.estimate.InputColumn.TIP;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.wetmil.catalogue.Kind;
import org.wetmil.catalogue.Quoted;
import org.wetmil.estimate.Area;
import org.wetmil.estimate.FilledBid;
import org.wetmil.estimate.FilledLine;
import org.wetmil.estimate.InputColumn;
import org.wetmil.estimate.InputValue;
import org.wetmil.trade.TipCode;

/** Cells that are empty, cannot be read, or read as something that cannot be. */
final class ReadingChecks {
  static final List<Check> ALL =
      List.of(
          new Check(
              "missing-input",
              Severity.STOP,
              "An input is missing",
              "Without a coating, a surface and an area a line has no paint and no hours.",
              Kind.HOUSE,
              "an empty cell is never taken as 0",
              "Fill the cell, or state an Area in place of dimensions.",
              Rule.ofCells(ReadingChecks::missing)),
          new Check(
              "unreadable-cell",
              Severity.WARNING,
              "A cell cannot be read",
              "Nothing is taken from a cell that cannot be read.",
              Kind.HOUSE,
              "a cell is read whole or not at all",
              "Type it as the message says; where the line needs the cell this is a stop.",
              Rule.ofCells(ReadingChecks::unreadable)),
          new Check(
              "formula-error",
              Severity.WARNING,
              "A formula gives an error",
              "Nothing is taken from a cell that shows an error.",
              Kind.HOUSE,
              "an error value is no number",
              "Mend the formula; where the line needs the cell this is a stop.",
              Rule.ofCells(ReadingChecks::formulaError)),
          new Check(
              "not-above-zero",
              Severity.WARNING,
              "A size is zero or negative",
              "A size that is not above zero has no area and is taken as not stated.",
              Kind.HOUSE,
              "sizes are above 0, amounts at least 0",
              "Type the size; where the line needs it this is a stop.",
              Rule.ofCells(ReadingChecks::notAboveZero)),
          new Check(
              "no-tip-code",
              Severity.WARNING,
              "The tip is no tip code",
              "A planned tip that cannot be read is not judged.",
              Kind.PRACTICE,
              "common practice: fan digit, then the orifice in thousandths of an inch",
              "Type one code, such as 517, in a cell formatted as text.",
              Rule.ofLine(
                  line ->
                      line.work().tipRead() instanceof TipCode.Refused refused
                              && refused.reason() != TipCode.Reason.EMPTY
                              && line.cell(TIP).state() != InputValue.State.FORMULA_ERROR
                          ? line.found(
                              TIP, Quoted.of(refused.raw()), "a tip code", refused.sentence())
                          : Optional.empty())),
          new Check(
              "no-usable-row",
              Severity.STOP,
              "A sheet has no line that can be computed",
              "A sheet without a single filled line says nothing about the job.",
              Kind.HOUSE,
              "a sheet with no usable row never passes as clean",
              "Mend the lines as their findings say, or take the table off the sheet.",
              Rule.ofBid(ReadingChecks::noUsableRow)));

  private ReadingChecks() {}

  private static Stream<Fault> missing(Line line) {
    if (!line.work().isIncluded()) {
      // it counts nowhere, and waits for somebody to take it in
      return Stream.empty();
    }
    Stream<Fault> names =
        Stream.of(SURFACE, COATING)
            .filter(column -> line.cell(column).raw().isBlank() && !line.cell(column).isFault())
            .map(column -> missingName(line, column));
    return Stream.concat(names, missingSizes(line));
  }

  private static Fault missingName(Line line, InputColumn column) {
    boolean there = line.hasColumn(column);
    String message =
        column == SURFACE
            ? "The surface is missing, so the line cannot be measured; %s, such as walls."
                .formatted(there ? "name one" : "add a column Surface and name it")
            : "The coating is missing, so the line has no tip, paint or hours; %s."
                .formatted(there ? "name one" : "add a column Coating and name it");
    return line.fault(column, "empty", "", message);
  }

  private static Stream<Fault> missingSizes(Line line) {
    Area area = line.filled().area();
    if (area == null || area.isKnown() || isFaulty(line, AREA)) {
      return Stream.empty();
    }
    List<InputColumn> missing =
        area.missing().stream().filter(column -> !isFaulty(line, column)).toList();
    if (missing.isEmpty()) {
      return Stream.empty();
    }
    String names = Say.and(missing.stream().map(ReadingChecks::lowerCase).toList());
    return Stream.of(
        line.fault(
            missing.get(0),
            "empty",
            "",
            "The %s %s missing, so the line has no area; %s."
                .formatted(names, missing.size() > 1 ? "are" : "is", remedy(line, missing))));
  }

  /** State what is missing, or an area; where the sheet has no column for it, add one. */
  private static String remedy(Line line, List<InputColumn> missing) {
    List<InputColumn> there = missing.stream().filter(line::hasColumn).toList();
    List<String> absent =
        missing.stream()
            .filter(column -> !line.hasColumn(column))
            .map(InputColumn::heading)
            .toList();
    if (absent.isEmpty()) {
      return "state %s or an area".formatted(missing.size() > 1 ? "them" : "it");
    }
    String state =
        there.isEmpty()
            ? ""
            : "state the %s and "
                .formatted(Say.and(there.stream().map(ReadingChecks::lowerCase).toList()));
    String add = "add %s %s".formatted(absent.size() > 1 ? "columns" : "a column", Say.and(absent));
    return state
        + add
        + (line.hasColumn(AREA) ? ", or state an area" : ", or one for Area in its place");
  }

  private static String lowerCase(InputColumn column) {
    return column.heading().toLowerCase(Locale.ROOT);
  }

  /** Whether another check says what is wrong with the cell. */
  private static boolean isFaulty(Line line, InputColumn column) {
    return line.cell(column).isFault() || isNotTaken(line, column);
  }

  private static Stream<Fault> unreadable(Line line) {
    return faults(line, InputValue.State.UNREADABLE, InputValue.State.DATE)
        .filter(column -> column != TIP)
        .map(
            column -> {
              InputValue cell = line.cell(column);
              String raw = Quoted.of(cell.raw());
              String expected = cell.expected().isBlank() ? "a plain value" : cell.expected();
              boolean stops = isNeeded(line, column);
              String instead = stops ? "" : Instead.of(line, column);
              String message =
                  cell.state() == InputValue.State.DATE
                      ? raw + " is a date" + instead + dateOf(column, expected) + "."
                      : "%s cannot be read%s; expected %s.".formatted(raw, instead, expected);
              return line.fault(column, raw, expected, message).stopping(stops);
            });
  }

  /** What a spreadsheet makes a date of in this column, and how to keep it from that. */
  private static String dateOf(InputColumn column, String expected) {
    return switch (column.quantity()) {
      case LENGTH, GIRTH ->
          "; a spreadsheet makes one of feet and inches typed 12-6, so format the cell as text and"
              + " type 12' 6\"";
      case FILM ->
          "; a spreadsheet makes one of a range such as 4-6, so format the cell as text and type it";
      default -> "; expected " + expected;
    };
  }

  private static Stream<Fault> formulaError(Line line) {
    return faults(line, InputValue.State.FORMULA_ERROR)
        .map(
            column -> {
              String raw = Quoted.of(line.cell(column).raw());
              boolean stops = isNeeded(line, column);
              String instead = stops ? "" : Instead.of(line, column);
              return line.fault(
                      column,
                      raw,
                      "",
                      "The formula gives %s%s; mend it."
                          .formatted(
                              raw,
                              instead.isEmpty() ? ", so nothing is taken from the cell" : instead))
                  .stopping(stops);
            });
  }

  private static Stream<InputColumn> faults(Line line, InputValue.State... states) {
    return line.filled().line().values().entrySet().stream()
        .filter(entry -> entry.getValue().isFault())
        .filter(entry -> Arrays.asList(states).contains(entry.getValue().state()))
        .map(Map.Entry::getKey)
        .sorted();
  }

  private static Stream<Fault> notAboveZero(Line line) {
    return Arrays.stream(InputColumn.values())
        .filter(column -> isNotTaken(line, column))
        .map(
            column -> {
              String measured = line.say(column.quantity(), line.cell(column).number());
              boolean zeroTaken = column.takes(0);
              return line.fault(
                      column,
                      measured,
                      zeroTaken ? "at least 0" : "above 0",
                      "%s is %s, so it counts as not stated; type what it is or empty the cell."
                          .formatted(measured, zeroTaken ? "negative" : "not above 0"))
                  .stopping(isNeeded(line, column));
            });
  }

  private static boolean isNotTaken(Line line, InputColumn column) {
    InputValue cell = line.cell(column);
    return cell.hasNumber() && !column.takes(cell.number());
  }

  /** Whether the line has no figures for want of this cell. */
  static boolean isNeeded(Line line, InputColumn column) {
    FilledLine filled = line.filled();
    Area area = filled.area();
    if (column == COATING || column == SURFACE) {
      return !filled.isSetUp();
    }
    return area != null && !area.isKnown() && (column == AREA || area.missing().contains(column));
  }

  private static Stream<Fault> noUsableRow(FilledBid bid) {
    return bid.sheets().stream()
        .filter(sheet -> sheet.lines().stream().noneMatch(FilledLine::isFilled))
        .map(
            sheet ->
                Fault.at(
                    Spot.ofSheet(sheet.sheet().name()),
                    "0 of " + sheet.lines().size() + " lines",
                    "at least 1",
                    "No line of this sheet could be computed (0 of %s lines); mend them as their findings say."
                        .formatted(sheet.lines().size())));
  }
}
