package org.wetmil.workbook.audit;

import org.apache.poi.ss.util.CellReference;
import org.wetmil.audit.past.Measure;

/** The columns of the list of jobs. */
enum JobsColumn {
  JOB("Job", 26, null),
  FILE("File", 24, null),
  DATE("Date", 11, null),
  CREW("Crew", 12, null),
  ESTIMATOR("Estimator", 12, null),
  OUTCOME("Outcome known", 15, null),
  ODD("Far from the rest", 14, null),
  LINES("Lines", 7, null),
  NOT_FILLED("Not filled", 9, null),
  PAINT_BID("Paint bid", 10, Measure.PAINT),
  PAINT_TAKEN("Paint taken", 10, Measure.PAINT),
  PAINT_RATIO("Paint ratio", 9, null),
  PAINT_CHANGED("Paint with the change", 12, Measure.PAINT),
  HOURS_BID("Hours bid", 10, Measure.HOURS),
  HOURS_TAKEN("Hours taken", 10, Measure.HOURS),
  HOURS_RATIO("Hours ratio", 9, null),
  HOURS_CHANGED("Hours with the change", 12, Measure.HOURS),
  PAINT_MISS("Paint off by", 10, null),
  PAINT_MISS_CHANGED("Paint off by, changed", 11, null),
  HOURS_MISS("Hours off by", 10, null),
  HOURS_MISS_CHANGED("Hours off by, changed", 11, null),
  PAINT_LOW("Paint likely from", 11, Measure.PAINT),
  PAINT_HIGH("Paint likely to", 11, Measure.PAINT),
  PAINT_PLACE("Paint in its range", 12, null),
  HOURS_LOW("Hours likely from", 11, Measure.HOURS),
  HOURS_HIGH("Hours likely to", 11, Measure.HOURS),
  HOURS_PLACE("Hours in their range", 12, null),
  PAINT_THEN("Paint by its own tables", 12, Measure.PAINT),
  PAINT_NOW("Paint by today's tables", 12, Measure.PAINT),
  HOURS_THEN("Hours by its own tables", 12, Measure.HOURS),
  HOURS_NOW("Hours by today's tables", 12, Measure.HOURS);

  private final String heading;
  private final int width;
  private final Measure measure;

  JobsColumn(String heading, int width, Measure measure) {
    this.heading = heading;
    this.width = width;
    this.measure = measure;
  }

  String heading() {
    return heading;
  }

  int width() {
    return width;
  }

  /** What an amount in the column measures; null when it holds none. */
  Measure measure() {
    return measure;
  }

  /** The cell of a row, counted from 1, as formulas of the sheet write it. */
  String in(int row) {
    return letters() + row;
  }

  /** The column from the first job to the last, as formulas of other sheets write it. */
  String all(int jobs) {
    return JobsSheet.NAME + "!$" + letters() + "$2:$" + letters() + "$" + (jobs + 1);
  }

  private String letters() {
    return CellReference.convertNumToColString(ordinal());
  }

  /** The columns of a measure. */
  record OfMeasure(
      JobsColumn bid,
      JobsColumn taken,
      JobsColumn ratio,
      JobsColumn changed,
      JobsColumn miss,
      JobsColumn missChanged,
      JobsColumn low,
      JobsColumn high,
      JobsColumn place) {
    static OfMeasure of(Measure measure) {
      return switch (measure) {
        case PAINT ->
            new OfMeasure(
                PAINT_BID,
                PAINT_TAKEN,
                PAINT_RATIO,
                PAINT_CHANGED,
                PAINT_MISS,
                PAINT_MISS_CHANGED,
                PAINT_LOW,
                PAINT_HIGH,
                PAINT_PLACE);
        case HOURS ->
            new OfMeasure(
                HOURS_BID,
                HOURS_TAKEN,
                HOURS_RATIO,
                HOURS_CHANGED,
                HOURS_MISS,
                HOURS_MISS_CHANGED,
                HOURS_LOW,
                HOURS_HIGH,
                HOURS_PLACE);
      };
    }
  }
}
