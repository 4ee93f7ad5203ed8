package org.wetmil.workbook.start.cobie;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.wetmil.quantity.Unit;
import org.wetmil.workbook.start.rooms.RoomFact;
import org.wetmil.workbook.start.rooms.Sizes;

/**
 * What the Attribute sheet says of rooms: sizes, and finishes. A finish may stand under its own
 * name, or with its label in the value: Finish, "Wall finish: latex".
 */
final class CobieAttributes {
  private final Map<String, Map<RoomFact, Double>> sizes = new HashMap<>();
  private final Map<String, Map<RoomFact, String>> texts = new HashMap<>();
  private final CobieUnits units;

  private CobieAttributes(CobieUnits units) {
    this.units = units;
  }

  static CobieAttributes of(CobieSheet sheet, CobieUnits units) {
    CobieAttributes attributes = new CobieAttributes(units);
    for (CobieSheet.Record row : sheet.records()) {
      if (CobieSheet.key(row.text("SheetName")).equals("space")) {
        attributes.add(row);
      }
    }
    return attributes;
  }

  private void add(CobieSheet.Record row) {
    String value = row.text("Value");
    String room = key(row.text("RowName"));
    Optional<RoomFact> fact = RoomFact.find(row.text("Name"));
    if (value.isEmpty() || room.isEmpty()) {
      return;
    }
    if (fact.isEmpty()) {
      labelled(room, value);
    } else if (fact.get().isMeasure() || fact.get() == RoomFact.VOLUME) {
      double size = size(fact.get(), value, row.text("Unit"));
      if (size > 0) {
        sizes.computeIfAbsent(room, any -> new EnumMap<>(RoomFact.class)).put(fact.get(), size);
      }
    } else if (!Sizes.isNumber(value)) {
      say(room, fact.get(), withoutLabel(value));
    }
  }

  private void labelled(String room, String value) {
    String[] parts = value.split("[:=]", 2);
    if (parts.length == 2) {
      RoomFact.find(parts[0]).ifPresent(fact -> say(room, fact, parts[1].strip()));
    }
  }

  private static String withoutLabel(String value) {
    String[] parts = value.split("[:=]", 2);
    return parts.length == 2 && RoomFact.find(parts[0]).isPresent() ? parts[1].strip() : value;
  }

  private void say(String room, RoomFact fact, String text) {
    texts.computeIfAbsent(room, any -> new EnumMap<>(RoomFact.class)).putIfAbsent(fact, text);
  }

  /**
   * A volume is kept as it stands: its unit is often misstated, and nothing is computed from it.
   */
  private double size(RoomFact fact, String value, String unit) {
    if (fact == RoomFact.VOLUME) {
      return Sizes.number(value);
    }
    Unit stated = Sizes.unit(unit, fact.dimension()).orElse(null);
    return switch (fact.dimension()) {
      case AREA -> Sizes.areaFt2(value, stated == null ? units.area() : stated);
      default -> Sizes.lengthFt(value, stated == null ? units.length() : stated);
    };
  }

  /** A size in feet or ft²; NaN when none is stated. */
  double size(String room, RoomFact fact) {
    return sizes.getOrDefault(key(room), Map.of()).getOrDefault(fact, Double.NaN);
  }

  String text(String room, RoomFact fact) {
    return texts.getOrDefault(key(room), Map.of()).getOrDefault(fact, "");
  }

  private static String key(String room) {
    return room.strip().toLowerCase(Locale.ROOT);
  }
}
