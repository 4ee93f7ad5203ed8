package org.wetmil.reconcile;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Entry;
import org.wetmil.catalogue.Setting;

/**
 * Which statement of each setting counts: that of the first file that states it, the bookkeeper's
 * own workbook before the bids.
 */
public record SettingsTaken(List<Taken> all) {
  /** The settings that a reconciliation asks for. */
  public static final List<Setting> USED =
      List.of(Setting.USE_TOLERANCE, Setting.USE_TOLERANCE_CONTAINERS, Setting.DUPLICATE_LINES);

  /** Where no file states anything. */
  public static final SettingsTaken BUILT_IN = SettingsTaken.of(List.of());

  public SettingsTaken {
    all = List.copyOf(all);
  }

  /** What one file states. */
  public record Stated(String file, Map<Setting, Entry> entries) {

    /** The settings that the cells of a workbook state. */
    public static Stated in(String file, Catalogue tables) {
      Map<Setting, Entry> entries = new EnumMap<>(Setting.class);
      for (Setting setting : USED) {
        if (tables.entry(setting).origin().isYours()) {
          entries.put(setting, tables.entry(setting));
        }
      }
      return new Stated(file, entries);
    }
  }

  /**
   * A setting as it counts.
   *
   * @param file the file that states it; empty for the built-in value
   * @param others what files after it state otherwise
   */
  public record Taken(Setting setting, Entry entry, String file, List<Other> others) {
    public Taken {
      others = List.copyOf(others);
    }
  }

  /** Another value that does not count. */
  public record Other(String file, String value) {}

  /**
   * Takes each setting from the first file that states it.
   *
   * @param files the bookkeeper's own workbook, then the bids in their order
   */
  public static SettingsTaken of(List<Stated> files) {
    return new SettingsTaken(USED.stream().map(setting -> taken(setting, files)).toList());
  }

  private static Taken taken(Setting setting, List<Stated> files) {
    List<Stated> stating =
        files.stream().filter(file -> file.entries().containsKey(setting)).toList();
    if (stating.isEmpty()) {
      return new Taken(setting, Catalogue.builtIn().entry(setting), "", List.of());
    }
    Entry first = stating.get(0).entries().get(setting);
    List<Other> others =
        stating.stream()
            .filter(file -> !isSame(first, file.entries().get(setting)))
            .map(file -> new Other(file.file(), file.entries().get(setting).text()))
            .toList();
    return new Taken(setting, first, stating.get(0).file(), others);
  }

  private static boolean isSame(Entry one, Entry other) {
    return one.quantity().isNumber()
        ? one.number() == other.number()
        : one.text().equals(other.text());
  }

  /** The settings with a period. */
  public ReconcileSettings over(LocalDate from, LocalDate to) {
    return new ReconcileSettings(
        entry(Setting.USE_TOLERANCE).number(),
        entry(Setting.USE_TOLERANCE_CONTAINERS).number(),
        entry(Setting.DUPLICATE_LINES).text().equals("drop"),
        from,
        to);
  }

  private Entry entry(Setting setting) {
    return all.stream()
        .filter(taken -> taken.setting() == setting)
        .map(Taken::entry)
        .findFirst()
        .orElseThrow();
  }
}
