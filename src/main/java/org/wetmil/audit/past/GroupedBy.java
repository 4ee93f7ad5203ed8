package org.wetmil.audit.past;

/** What bids are grouped by; those in the model stand before those that are only listed. */
public enum GroupedBy {
  COATING("Coating"),
  SURFACE("Surface"),
  CREW("Crew"),
  /** A crew at one class of height, where it worked at more than one. */
  CREW_AT_HEIGHT("Crew at height"),
  YEAR("Year"),
  COATING_ON_SURFACE("Coating on surface"),
  HEIGHT("Height"),
  SIZE("Size"),
  ESTIMATOR("Estimator");

  private final String title;

  GroupedBy(String title) {
    this.title = title;
  }

  /** What a list calls it. */
  public String title() {
    return title;
  }

  /** Whether its groups get a factor of their own. */
  public boolean isInModel() {
    return compareTo(YEAR) <= 0;
  }
}
