package org.wetmil.workbook.stream;

/** Takes the rows of a sheet one by one. */
@FunctionalInterface
public interface RowConsumer {
  /** Takes a row; returns whether to go on with the next. */
  boolean accept(RawRow row);
}
