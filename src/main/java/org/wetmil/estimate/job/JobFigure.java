package org.wetmil.estimate.job;

import org.wetmil.formula.Place;

/** The figures of a job's hours, in the order in which they build on each other. */
public enum JobFigure implements Place {
  SPRAY("Spraying", true),
  ROLL("Back-rolling", true),
  MASK("Masking", true),
  PREPARE("Preparation", true),
  /** Distinct tips less one. */
  TIP_CHANGES("Tip changes", false),
  /** Distinct coatings and colours less one. */
  COATING_CHANGES("Colour or product changes", false),
  /** The greatest number of guns of a sprayer, else the setting. */
  GUNS("Guns", false),
  CHANGE_TIP("Changing tips", true),
  CHANGE_COATING("Changing colour or product", true),
  /** A share of the spraying. */
  TOUCH_UP("Touch-up", true),
  /** The sum of the tasks above. */
  WORK("Work before set-up and clean-up", false),
  /** Work over crew and hours a day, in whole days. */
  DAYS("Days of work", false),
  /** For each gun and day, as is cleaning up. */
  SET_UP("Set-up", true),
  CLEAN_UP("Clean-up", true),
  TOTAL("Labour of the job", false),
  /** Labour of the job over the crew. */
  DURATION("Duration", false);

  private final String title;
  private final boolean task;

  JobFigure(String title, boolean task) {
    this.title = title;
    this.task = task;
  }

  public String title() {
    return title;
  }

  /** Whether it is a task whose hours are part of the total. */
  public boolean isTask() {
    return task;
  }
}
