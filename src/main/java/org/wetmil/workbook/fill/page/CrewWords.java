package org.wetmil.workbook.fill.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Setting;
import org.wetmil.catalogue.Tables;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.estimate.FilledLine;
import org.wetmil.estimate.InputColumn;
import org.wetmil.quantity.Quantity;
import org.wetmil.quantity.UnitSystem;
import org.wetmil.trade.FilterMesh;
import org.wetmil.workbook.look.Plain;

/** What a line says to the crew: its words in their language, its figures as a hand takes them. */
final class CrewWords {
  private final Catalogue catalogue;
  private final Wording wording;

  CrewWords(Catalogue catalogue, Wording wording) {
    this.catalogue = catalogue;
    this.wording = wording;
  }

  String surface(FilledLine line) {
    return said(Tables.SURFACES, line.line().text(InputColumn.SURFACE));
  }

  /** The coating with its colour and sheen, which stay as typed: they stand so on the pail. */
  String coating(FilledLine line) {
    if (!line.isSetUp()) {
      return said(Tables.COATINGS, line.line().text(InputColumn.COATING));
    }
    List<String> words = new ArrayList<>();
    words.add(said(Tables.COATINGS, line.work().coating().name()));
    for (InputColumn column : List.of(InputColumn.COLOUR, InputColumn.SHEEN)) {
      if (!line.line().text(column).isEmpty()) {
        words.add(line.line().text(column));
      }
    }
    return String.join(", ", words);
  }

  private String said(Tables table, String typed) {
    return catalogue.said(table, typed, wording.language());
  }

  static String pressure(FilledLine line, UnitSystem system) {
    return number(Quantity.PRESSURE.shown(line.setPsi(), system), 0);
  }

  /** Seconds for 10 ft or 3 m. */
  static String pace(FilledLine line, UnitSystem system) {
    double speedInPerS = line.base(FilledColumn.SPEED);
    double seconds =
        system == UnitSystem.US
            ? 120 / speedInPerS
            : 300 / Quantity.GUN_SPEED.shown(speedInPerS, system);
    return number(seconds, 1);
  }

  static String gauge(FilledLine line, UnitSystem system) {
    double film = Quantity.FILM.shown(line.base(FilledColumn.WET_FILM), system);
    return number(film, system == UnitSystem.US ? 1 : 0);
  }

  static String fanAndOrifice(FilledLine line, UnitSystem system) {
    String fan = shown(line.followed().fanIn(), Quantity.FAN_WIDTH, system, 0);
    int thou = line.followed().tip().orificeThou();
    String orifice =
        system == UnitSystem.US
            ? String.format(Locale.ROOT, "0.%03d in", thou)
            : shown(thou, Quantity.ORIFICE, system, 2);
    return Plain.unbroken(fan) + ", " + Plain.unbroken(orifice);
  }

  String filter(FilledLine line) {
    int thou = line.followed().tip().orificeThou();
    return FilterMesh.coarsestFor(thou, catalogue.number(Setting.FILTER_SHARE))
        .map(mesh -> wording.get("crew.mesh", mesh.number()))
        .orElse("");
  }

  static String shown(double base, Quantity quantity, UnitSystem system, int decimals) {
    return number(quantity.shown(base, system), decimals) + " " + quantity.unit(system).symbol();
  }

  private static String number(double value, int decimals) {
    return String.format(Locale.ROOT, "%." + decimals + "f", value);
  }
}
