package org.wetmil.estimate.likely;

import org.wetmil.catalogue.Setting;

/** What paint and hours of a job turn on, and what nobody knows before. */
public enum Factor {
  TRANSFER(Setting.TRANSFER_RANGE, "Paint that stays on"),
  FILM(Setting.FILM_RANGE, "Film thickness"),
  KEPT(Setting.KEPT_RANGE, "Paint left in pails and hose"),
  TRIGGER(Setting.TRIGGER_RANGE, "Time with the trigger on");

  private final Setting setting;
  private final String title;

  Factor(Setting setting, String title) {
    this.setting = setting;
    this.title = title;
  }

  /** The setting that holds how far it ranges. */
  public Setting setting() {
    return setting;
  }

  public String title() {
    return title;
  }
}
