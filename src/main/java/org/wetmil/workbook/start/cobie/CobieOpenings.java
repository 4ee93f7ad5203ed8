package org.wetmil.workbook.start.cobie;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.wetmil.quantity.Unit;
import org.wetmil.workbook.start.rooms.RoomOpening;
import org.wetmil.workbook.start.rooms.RoomOpening.Kind;
import org.wetmil.workbook.start.rooms.Sizes;

/** Doors and windows: components of a type that is one, each in the rooms that it names. */
final class CobieOpenings {
  /** Of a category or name, the last word says what it is: Kitchen casework with doors is none. */
  private static final Pattern DOOR = Pattern.compile("(?iu)(?:.*\\W)?doors?(?: type.*| set)?");

  private static final Pattern WINDOW =
      Pattern.compile("(?iu)(?:.*\\W)?(?:windows?|skylights?|rooflights?)(?: type.*)?");
  private static final Pattern OVERHEAD =
      Pattern.compile("(?iu).*(?:skylight|roof ?(?:window|light)).*");

  private final Map<String, String> roomNames;
  private final Unit unit;
  private final Map<String, CobieSheet.Record> types = new HashMap<>();

  /**
   * @param roomNames names as the bid writes them, by the key of the name on the Space sheet
   * @param unit of nominal sizes
   */
  CobieOpenings(Map<String, String> roomNames, Unit unit, CobieSheet types) {
    this.roomNames = roomNames;
    this.unit = unit;
    types.records().forEach(row -> this.types.putIfAbsent(key(row.text("Name")), row));
  }

  List<RoomOpening> read(CobieSheet components) {
    List<RoomOpening> openings = new ArrayList<>();
    for (CobieSheet.Record row : components.records()) {
      CobieSheet.Record type = types.get(key(row.text("TypeName")));
      kind(type, row).ifPresent(kind -> openings.add(opening(kind, type, row)));
    }
    return openings;
  }

  private RoomOpening opening(Kind kind, CobieSheet.Record type, CobieSheet.Record row) {
    String typeName = row.text("TypeName");
    String about = type == null ? "" : type.text("Category") + " " + type.text("Description");
    Optional<double[]> size = size(type, row);
    return new RoomOpening(
        row.text("Name"),
        typeName,
        kind,
        rooms(row.text("Space", "SpaceNames")),
        size.map(s -> s[0]).orElse(Double.NaN),
        size.map(s -> s[1]).orElse(Double.NaN),
        OVERHEAD.matcher(typeName + " " + about).matches(),
        type == null ? "" : type.text("Color", "Colour"),
        type == null ? "" : type.text("Finish"));
  }

  private static Optional<Kind> kind(CobieSheet.Record type, CobieSheet.Record component) {
    String object =
        (component.text("ExtObject") + " " + (type == null ? "" : type.text("ExtObject")))
            .toLowerCase(Locale.ROOT);
    if (object.contains("ifcdoor")) {
      return Optional.of(Kind.DOOR);
    }
    if (object.contains("ifcwindow")) {
      return Optional.of(Kind.WINDOW);
    }
    if (object.contains("ifc")) {
      return Optional.empty();
    }
    String typeName = component.text("TypeName");
    String category = type == null ? "" : type.text("Category");
    return category.isEmpty() ? named(typeName) : named(category);
  }

  private static Optional<Kind> named(String text) {
    if (DOOR.matcher(text).matches()) {
      return Optional.of(Kind.DOOR);
    }
    return WINDOW.matcher(text).matches() ? Optional.of(Kind.WINDOW) : Optional.empty();
  }

  /** The nominal size where it is one; else the size that a description states. */
  private Optional<double[]> size(CobieSheet.Record type, CobieSheet.Record component) {
    List<String> texts = new ArrayList<>();
    if (type != null) {
      double width = Sizes.lengthFt(type.text("NominalWidth"), unit);
      double length = Sizes.lengthFt(type.text("NominalLength"), unit);
      double height = Sizes.lengthFt(type.text("NominalHeight"), unit);
      for (double wide : new double[] {width, length}) {
        if (Sizes.isOpening(wide) && Sizes.isOpening(height)) {
          return Optional.of(new double[] {wide, height});
        }
      }
      texts.add(type.text("Size"));
      texts.add(type.text("Description"));
      texts.add(type.text("Name"));
    }
    texts.add(component.text("Description"));
    return texts.stream().flatMap(text -> Sizes.within(text, unit).stream()).findFirst();
  }

  /** The rooms that a cell names: one whose name may hold a comma, or several. */
  private List<String> rooms(String cell) {
    String whole = roomNames.get(key(cell));
    if (whole != null) {
      return List.of(whole);
    }
    Set<String> rooms = new LinkedHashSet<>();
    for (String part : cell.split("[,;|\\n]")) {
      String name = roomNames.get(key(part));
      if (name != null) {
        rooms.add(name);
      }
    }
    return List.copyOf(rooms);
  }

  static String key(String name) {
    return name.strip().toLowerCase(Locale.ROOT);
  }
}
