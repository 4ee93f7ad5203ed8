package org.wetmil.workbook.start.cobie;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.wetmil.catalogue.Names;
import org.wetmil.quantity.Quantity;
import org.wetmil.quantity.Unit;
import org.wetmil.workbook.read.grid.Grid;
import org.wetmil.workbook.start.rooms.Face;
import org.wetmil.workbook.start.rooms.Room;
import org.wetmil.workbook.start.rooms.RoomFact;
import org.wetmil.workbook.start.rooms.RoomList;
import org.wetmil.workbook.start.rooms.RoomOpening;
import org.wetmil.workbook.start.rooms.Several;
import org.wetmil.workbook.start.rooms.Sizes;
import org.wetmil.workbook.stream.SheetPart;

/**
 * Reads COBie, an open standard for handing over the data of a building: the sheets Facility,
 * Space, Type, Component and Attribute.
 */
public final class CobieReader {
  private static final double LEAST_HEIGHT_FT = 6;
  private static final double GREATEST_HEIGHT_FT = 60;

  /** Columns that tell something of a room beside its name. */
  private static final String[] TOLD = {
    "FloorName", "Description", "UsableHeight", "GrossArea", "NetArea"
  };

  private final Map<String, SheetPart> sheets = new HashMap<>();
  private final Function<SheetPart, Grid> grids;

  private CobieReader(List<SheetPart> sheets, Function<SheetPart, Grid> grids) {
    sheets.forEach(sheet -> this.sheets.putIfAbsent(Names.key(sheet.name()), sheet));
    this.grids = grids;
  }

  /** The rooms; empty when the workbook has no Space sheet of this standard. */
  public static Optional<RoomList> read(List<SheetPart> sheets, Function<SheetPart, Grid> grids) {
    return new CobieReader(sheets, grids).read();
  }

  private Optional<RoomList> read() {
    Optional<CobieSheet> spaces = sheet("Space");
    if (spaces.isEmpty() || !spaces.get().has("Name") || !spaces.get().has("FloorName")) {
      return Optional.empty();
    }
    CobieUnits units = CobieUnits.of(orNone("Facility"));
    CobieAttributes attributes = CobieAttributes.of(orNone("Attribute"), units);
    Map<String, String> names = new LinkedHashMap<>();
    List<Room> rooms = new ArrayList<>();
    List<String> nameless = new ArrayList<>();
    List<String> again = new ArrayList<>();
    for (CobieSheet.Record row : spaces.get().records()) {
      String name = row.text("Name");
      if (name.isEmpty()) {
        if (!row.text(TOLD).isEmpty()) {
          nameless.add(row.number());
        }
      } else if (names.containsKey(CobieOpenings.key(name))) {
        again.add("\"" + name + "\" (row " + row.number() + ")");
      } else {
        Room room = room(row, name, units, attributes);
        names.put(CobieOpenings.key(name), room.name());
        rooms.add(room);
      }
    }
    List<RoomOpening> openings =
        new CobieOpenings(names, units.length(), orNone("Type")).read(orNone("Component"));
    List<String> remarks = new ArrayList<>(units.remarks());
    if (!nameless.isEmpty()) {
      remarks.add(
          "sheet Space: not read, as no room is named there: row "
              + Several.of(nameless)
              + ". Type a name in each that is a room.");
    }
    if (!again.isEmpty()) {
      remarks.add(
          "sheet Space: not read, as a row above has the name: "
              + Several.of(again)
              + ". Give each room a name of its own.");
    }
    return Optional.of(
        new RoomList("COBie, sheet Space", units.system(), rooms, openings, remarks));
  }

  private Optional<CobieSheet> sheet(String name) {
    return Optional.ofNullable(sheets.get(Names.key(name))).map(grids).map(CobieSheet::of);
  }

  private CobieSheet orNone(String name) {
    return sheet(name).orElseGet(CobieSheet::none);
  }

  private static Room room(
      CobieSheet.Record row, String number, CobieUnits units, CobieAttributes attributes) {
    double heightFt = Sizes.lengthFt(row.text("UsableHeight"), units.length());
    double areaFt2 = Sizes.areaFt2(row.text("NetArea"), units.area());
    double grossFt2 = Sizes.areaFt2(row.text("GrossArea"), units.area());
    double statedFt2 =
        first(attributes.size(number, RoomFact.AREA), attributes.size(number, RoomFact.GROSS_AREA));
    Map<Face, String> finishes = new EnumMap<>(Face.class);
    for (Face face : Face.values()) {
      String finish = attributes.text(number, face.finish());
      if (!finish.isEmpty()) {
        finishes.put(face, finish);
      }
    }
    double area = first(areaFt2, first(grossFt2, statedFt2));
    double height = first(heightFt, attributes.size(number, RoomFact.HEIGHT));
    return new Room(
        name(number, row.text("Description")),
        row.text("FloorName"),
        attributes.size(number, RoomFact.LENGTH),
        attributes.size(number, RoomFact.WIDTH),
        height,
        attributes.size(number, RoomFact.PERIMETER),
        area,
        attributes.size(number, RoomFact.WALL_AREA),
        finishes,
        hints(height, area, attributes.size(number, RoomFact.VOLUME), units));
  }

  /**
   * Volume over area is the height of a room that has one height: said, never taken. The unit of a
   * volume is often misstated, so that nothing is said unless a room can be so high.
   */
  private static List<String> hints(
      double heightFt, double areaFt2, double volume, CobieUnits units) {
    Unit length = Quantity.LENGTH.unit(units.system());
    double mean = volume / Quantity.AREA.shown(areaFt2, units.system());
    double meanFt = length.to(Unit.FOOT, mean);
    if (!Double.isNaN(heightFt) || !(meanFt >= LEAST_HEIGHT_FT && meanFt <= GREATEST_HEIGHT_FT)) {
      return List.of();
    }
    String shown =
        BigDecimal.valueOf(mean).round(new MathContext(3)).stripTrailingZeros().toPlainString();
    return List.of(
        "Volume over floor area is %s %s, the height if the room has one"
            .formatted(shown, length.symbol()));
  }

  /** Number and name, as they stand on a door. */
  private static String name(String number, String description) {
    String begin = number.toLowerCase(Locale.ROOT);
    String whole = description.toLowerCase(Locale.ROOT);
    boolean same = whole.equals(begin) || whole.startsWith(begin + " ");
    return same ? description : (number + " " + description).strip();
  }

  private static double first(double one, double other) {
    return Double.isNaN(one) ? other : one;
  }
}
