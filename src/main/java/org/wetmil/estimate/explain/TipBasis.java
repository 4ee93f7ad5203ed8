package org.wetmil.estimate.explain;

import java.util.ArrayList;
import java.util.List;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Row;
import org.wetmil.catalogue.Setting;
import org.wetmil.estimate.EntryPlace;
import org.wetmil.estimate.FilledLine;
import org.wetmil.estimate.Work;

/** The figures that the choice of a tip rests on. */
final class TipBasis {
  private TipBasis() {}

  static List<EntryPlace> of(Catalogue catalogue, FilledLine filled) {
    Work work = filled.work();
    boolean joinery = work.surface().joinery();
    List<EntryPlace> places = new ArrayList<>();
    Row coating = work.coating().row();
    for (String heading :
        List.of(
            "Orifice least",
            joinery ? "Orifice joinery from" : "Orifice from",
            "Orifice to",
            "Wet film min",
            "Wet film max")) {
      places.add(EntryPlace.of(coating, heading));
    }
    List<Setting> settings = new ArrayList<>();
    settings.add(Setting.DISTANCE);
    settings.add(Setting.FINE_STEP);
    settings.add(joinery ? Setting.JOINERY_EASY : Setting.BROAD_EASY);
    settings.add(Setting.FILM_TOLERANCE);
    if (filled.stroke().narrow()) {
      settings.add(Setting.NARROW_WORK);
      settings.add(Setting.NARROW_FIT);
    } else {
      places.add(EntryPlace.of(work.surface().row(), "Widest fan"));
    }
    if (work.sprayer() != null) {
      Row sprayer = work.sprayer().row();
      places.add(EntryPlace.of(sprayer, "Greatest flow"));
      places.add(EntryPlace.of(sprayer, "Greatest orifice"));
      places.add(EntryPlace.of(sprayer, "Guns"));
      settings.add(Setting.PUMP_RESERVE);
    }
    settings.forEach(each -> places.add(EntryPlace.of(catalogue.row(each), "Value")));
    return places;
  }
}
