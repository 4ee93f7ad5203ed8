package org.wetmil.workbook.stream;

/** What is stored in a cell; for a formula, the kind of its stored result. */
public enum CellKind {
  NUMBER,
  TEXT,
  BOOLEAN,
  ERROR,
  BLANK
}
