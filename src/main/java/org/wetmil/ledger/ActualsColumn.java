package org.wetmil.ledger;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The columns of a list of how jobs came out, with the names they go by. */
public enum ActualsColumn {
  JOB("Job", "Job name", "Job number", "Job no", "Project", "Project name", "Bid"),
  COATING("Coating", "Paint", "Product", "Material", "Item"),
  PAINT(
      "Gallons",
      "Gal",
      "Actual paint",
      "Paint used",
      "Gallons used",
      "Actual gallons",
      "Litres",
      "Liters",
      "L"),
  HOURS("Hours", "H", "Actual hours", "Person hours", "Man hours", "Labour", "Labor"),
  DATE("Date", "Date done", "Finished", "Completed", "Closed"),
  CREW("Crew", "Crew name", "Team", "Foreman"),
  ESTIMATOR("Estimator", "Estimated by", "Bid by");

  private final String heading;
  private final List<String> others;

  ActualsColumn(String heading, String... others) {
    this.heading = heading;
    this.others = List.of(others);
  }

  public String heading() {
    return heading;
  }

  /** The column of a heading; what stands in brackets is its unit. */
  static Optional<ActualsColumn> find(String text) {
    String key = LedgerWords.key(text.replaceAll("[(\\[].*", ""));
    return Arrays.stream(values()).filter(column -> column.isCalled(key)).findFirst();
  }

  private boolean isCalled(String key) {
    return LedgerWords.key(heading).equals(key)
        || others.stream().anyMatch(other -> LedgerWords.key(other).equals(key));
  }

  boolean isNumber() {
    return this == PAINT || this == HOURS;
  }
}
