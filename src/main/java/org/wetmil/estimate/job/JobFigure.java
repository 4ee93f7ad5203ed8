package org.wetmil.estimate.job;

import org.wetmil.formula.Place;
import org.wetmil.quantity.Quantity;

/** The figures of a job's hours, in the order in which they build on each other. */
public enum JobFigure implements Place {
  SPRAY("Spraying", Quantity.TIME, true, "spraying of all lines that count"),
  ROLL("Back-rolling", Quantity.TIME, true, "back-rolling of all lines that count"),
  MASK("Masking", Quantity.TIME, true, "covering and masking, taking down included"),
  PREPARE("Preparation", Quantity.TIME, true, "preparation of all lines that count"),
  TIP_CHANGES("Tip changes", Quantity.NUMBER, false, "distinct tips less one"),
  COATING_CHANGES(
      "Colour or product changes",
      Quantity.NUMBER,
      false,
      "distinct coatings and colours less one"),
  GUNS("Guns", Quantity.NUMBER, false, "greatest number of guns of a sprayer, else the setting"),
  CHANGE_TIP("Changing tips", Quantity.TIME, true, "tip changes x their time"),
  CHANGE_COATING("Changing colour or product", Quantity.TIME, true, "changes x their time"),
  TOUCH_UP("Touch-up", Quantity.TIME, true, "share of the spraying"),
  WORK("Work before set-up and clean-up", Quantity.TIME, false, "sum of the rows above"),
  DAYS("Days of work", Quantity.NUMBER, false, "work over crew x hours a day, whole days"),
  SET_UP("Set-up", Quantity.TIME, true, "for each gun and day"),
  CLEAN_UP("Clean-up", Quantity.TIME, true, "for each gun and day"),
  TOTAL("Labour of the job", Quantity.TIME, false, "all person-hours"),
  DURATION("Duration", Quantity.TIME, false, "labour of the job over the crew");

  private final String title;
  private final Quantity quantity;
  private final boolean task;
  private final String meaning;

  JobFigure(String title, Quantity quantity, boolean task, String meaning) {
    this.title = title;
    this.quantity = quantity;
    this.task = task;
    this.meaning = meaning;
  }

  public String title() {
    return title;
  }

  public Quantity quantity() {
    return quantity;
  }

  /** Whether it is a task whose hours are part of the total. */
  public boolean isTask() {
    return task;
  }

  public String meaning() {
    return meaning;
  }
}
